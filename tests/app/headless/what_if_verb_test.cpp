#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class WhatIfVerb : public ProgramTest {
protected:
    [[nodiscard]] std::string exampleWithOrders() const {
        const auto book = makeExample();
        import(book, "orders",
               "label,kind,count,due,sure\nMoor Farm,mated,12,2027-06-28,90\n"
               "Late,mated,30,2027-08-20,80\n");
        return book;
    }
};

TEST_F(WhatIfVerb, ShowsOrdersBeforeAndAfterSideBySide) {
    const auto book = exampleWithOrders();
    const auto text = answer({"whatif", book, "--take", "40"});
    EXPECT_EQ(text.substr(0, text.find('\n')),
              "order,kind,count,due,before,after,state_before,state_after,short_after");
    const auto rows = rowsOf(text);
    const auto orders = rowsOf(answer({"orders", book}));
    ASSERT_EQ(rows.size(), orders.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        EXPECT_EQ(rows[i].at("order"), orders[i].at("order"));
        EXPECT_EQ(rows[i].at("before"), orders[i].at("chance"));
        EXPECT_EQ(rows[i].at("state_before"), orders[i].at("state"));
        EXPECT_LE(numberIn(rows[i].at("after")), numberIn(rows[i].at("before")));
        EXPECT_EQ(rows[i].at("short_after") == "0", rows[i].at("state_after") == "met");
    }
}

TEST_F(WhatIfVerb, KeepsNothing) {
    const auto book = exampleWithOrders();
    const auto before = bytesOf(book);
    (void)answer({"whatif", book, "--cold", "2027-06-07..2027-06-20", "--nucs=3"});
    EXPECT_EQ(bytesOf(book), before);
}

TEST_F(WhatIfVerb, WrongUseIsToldInOneLine) {
    const auto book = makeExample();
    const auto refused = [&](const std::vector<std::string>& options) {
        std::vector<std::string> words{"whatif", book};
        words.insert(words.end(), options.begin(), options.end());
        const auto run = runHere(words);
        EXPECT_EQ(run.out, "");
        return std::to_string(run.exit) + " " + run.err;
    };
    EXPECT_EQ(refused({}),
              "2 tenthday: whatif: one of --cold, --builder, --nucs and --take is needed\n");
    EXPECT_EQ(
        refused({"--cold", "2027-06-20..2027-06-07"}),
        "2 tenthday: whatif: option --cold: days FROM..TO are needed, a year at the most, not "
        "'2027-06-20..2027-06-07'\n");
    EXPECT_EQ(refused({"--take", "101"}),
              "2 tenthday: whatif: option --take: a share from 0 to 100 % is needed, not '101'\n");
    EXPECT_EQ(refused({"--nucs", "none"}),
              "2 tenthday: whatif: option --nucs: a number of nucs is needed, not 'none'\n");
    EXPECT_EQ(refused({"--builder", "Nobody"}), "1 tenthday: whatif: no builder 'Nobody'\n");
}

}  // namespace
}  // namespace tenthday::test
