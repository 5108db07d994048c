#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class PromiseVerb : public ProgramTest {
protected:
    [[nodiscard]] std::string exampleWithOrders() const {
        const auto book = makeExample();
        import(book, "orders",
               "label,kind,count,due,sure\nMoor Farm,mated,6,2027-06-28,90\n"
               "\"Hill, J.\",proven,4,2027-07-20,80\nOwn splits,ripe_cell,3,2027-06-04,90\n");
        return book;
    }
};

TEST_F(PromiseVerb, HasTheColumnsAndWeeksOfTheSeason) {
    const auto text = answer({"promise", makeExample()});
    EXPECT_EQ(text.substr(0, text.find('\n')), "week,ready,owed,can_promise");
    const auto rows = rowsOf(text);
    ASSERT_EQ(rows.size(), 19U);  // 19 April to 29 August
    EXPECT_EQ(rows.front().at("week"), "2027-W16");
    EXPECT_EQ(rows.back().at("week"), "2027-W34");
    double ready = 0;
    double owed = 0;
    for (const auto& row : rows) {
        EXPECT_GE(numberIn(row.at("ready")), ready);
        ready = numberIn(row.at("ready"));
        EXPECT_GE(numberIn(row.at("owed")), owed);
        owed = numberIn(row.at("owed"));
        EXPECT_LE(numberIn(row.at("can_promise")), ready);
    }
    EXPECT_GT(ready, 0);
    EXPECT_EQ(owed, 68);  // the example's open orders for queens
    EXPECT_EQ(numberIn(rows.back().at("can_promise")), ready - owed);
}

TEST_F(PromiseVerb, OrdersTakeFromWhatCanBePromised) {
    const auto free = rowsOf(answer({"promise", makeExample("free.tenthday")}));
    const auto rows = rowsOf(answer({"promise", exampleWithOrders()}));
    ASSERT_EQ(rows.size(), free.size());
    EXPECT_EQ(numberIn(rows.back().at("owed")), numberIn(free.back().at("owed")) + 10)
        << "cells are no queens";
    EXPECT_LT(numberIn(rows.back().at("can_promise")), numberIn(free.back().at("can_promise")));
}

TEST_F(PromiseVerb, TheSurerTheFewer) {
    const auto book = makeExample();
    EXPECT_EQ(answer({"promise", book}), answer({"promise", book, "--sure", "90"}));
    const auto bold = rowsOf(answer({"promise", book, "--sure=50"}));
    const auto sure = rowsOf(answer({"promise", book, "--sure", "99.5"}));
    EXPECT_GT(numberIn(bold.back().at("ready")), numberIn(sure.back().at("ready")));
}

TEST_F(PromiseVerb, AWrongChanceIsWrongUse) {
    const auto book = makeExample();
    for (const std::string sure : {"0", "100", "x", "-5"}) {
        const auto run = runHere({"promise", book, "--sure=" + sure});
        EXPECT_EQ(run.exit, 2) << sure;
        EXPECT_EQ(run.out, "");
        EXPECT_EQ(run.err,
                  "tenthday: promise: option --sure: a chance from 0.1 to 99.9 % is "
                  "needed, not '" +
                      sure + "'\n");
    }
}

TEST_F(PromiseVerb, AnEmptyBookHasNothing) {
    for (const auto& row : rowsOf(answer({"promise", makeNew()}))) {
        EXPECT_EQ(row.at("ready"), "0");
        EXPECT_EQ(row.at("can_promise"), "0");
    }
    EXPECT_EQ(answer({"orders", makeNew("other.tenthday")}),
              "order,kind,count,due,state,chance,short,batches\n");
    EXPECT_EQ(runHere({"orders", "missing.tenthday"}).exit, 1);
}

TEST_F(PromiseVerb, OrdersAreListedInTheOrderOfFilling) {
    const auto rows = rowsOf(answer({"orders", exampleWithOrders()}));
    ASSERT_EQ(rows.size(), 13U);  // ten of the example's are open
    std::string dues;
    for (const auto& row : rows) {
        EXPECT_GE(row.at("due"), dues) << row.at("order");
        dues = row.at("due");
    }
    EXPECT_EQ(rows[1].at("order"), "Own splits");
    const auto& last = rows[11];
    EXPECT_EQ(last.at("order"), "Hill, J.");
    EXPECT_EQ(last.at("kind"), "proven");
    EXPECT_EQ(last.at("due"), "2027-07-20");
    for (const auto& row : rows) {
        const double chance = numberIn(row.at("chance"));
        const bool isLess = row.at("order") == "Hill, J." || row.at("order") == "K-05";
        const double sure = isLess ? 80 : 90;
        EXPECT_EQ(row.at("state") == "met", chance >= sure) << row.at("order");
        EXPECT_EQ(row.at("short") == "0", row.at("state") == "met");
    }
    EXPECT_NE(rows[3].at("batches").find("701 "), std::string::npos) << rows[3].at("batches");
    EXPECT_NE(answer({"orders", at("example.tenthday"), "--json"}).find("\"chance\":"),
              std::string::npos);
}

}  // namespace
}  // namespace tenthday::test
