#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class PlanVerb : public ProgramTest {};

TEST_F(PlanVerb, ListsWhatToGraftAndKeepsIt) {
    const auto book = makeExample();
    import(book, "orders", "label,kind,count,due\nK-30,mated,20,2027-08-06\n");
    const auto text = answer({"plan", book});
    EXPECT_EQ(text.substr(0, text.find('\n')),
              "graft,bar,breeder,builder,grafts,cells,yard,order,ready");
    const auto proposed = rowsOf(text);
    ASSERT_FALSE(proposed.empty());
    const auto before = rowsOf(answer({"export", book, "bars"})).size();
    EXPECT_EQ(answer({"plan", book, "--keep"}), text) << "what is kept is what was proposed";
    EXPECT_EQ(rowsOf(answer({"export", book, "bars"})).size(), before + proposed.size());
}

TEST_F(PlanVerb, TellsNoOrderShortThatIsSureEnough) {
    const auto book = makeExample();
    import(book, "orders", "label,kind,count,due\nK-30,mated,20,2027-08-06\n");
    std::map<std::string, double> chance;
    std::map<std::string, double> mustBe;
    const auto sums = rowsOf(answer({"plan", book, "--sums"}));
    for (const auto& row : sums) {
        const auto& what = row.at("what");
        if (what == "chance") chance[row.at("order")] = numberIn(row.at("after"));
        if (what == "must_be") mustBe[row.at("order")] = numberIn(row.at("after"));
    }
    ASSERT_TRUE(chance.contains("Splits") && chance.contains("K-30"));
    EXPECT_GT(chance["Splits"], 99);
    EXPECT_FALSE(mustBe.contains("Splits")) << "it is sure enough";
    for (const auto& [order, sure] : mustBe) EXPECT_LT(chance[order], sure) << order;
    EXPECT_GE(chance["K-30"], 90) << "more grafts make it sure enough";
    EXPECT_FALSE(mustBe.contains("K-30"));
    EXPECT_TRUE(mustBe.contains("K-04")) << "due before anything grafted now is ready";
}

TEST_F(PlanVerb, KeepsToTheHoursADay) {
    // As in the tests above, where the same book gets grafts. Twelve minutes are less than any work
    // takes: no day is left.
    const auto book = makeExample();
    import(book, "orders", "label,kind,count,due\nK-30,mated,20,2027-08-06\n");
    EXPECT_TRUE(rowsOf(answer({"plan", book, "--hours", "0.2"})).empty());
    const auto sums = rowsOf(answer({"plan", book, "--hours", "0.2", "--sums"}));
    const auto least = std::find_if(sums.begin(), sums.end(), [](const auto& row) {
        return row.at("what") == "least_graft_days";
    });
    ASSERT_NE(least, sums.end());
    EXPECT_EQ(least->at("after"), "0") << "hours are on the safe side: nothing is proven";
}

TEST_F(PlanVerb, AsksForOneThingAtATime) {
    const auto book = makeExample();
    const auto two = runHere({"plan", book, "--keep", "--ways"});
    EXPECT_EQ(two.exit, 2);
    EXPECT_NE(two.err.find("only one of"), std::string::npos) << two.err;
    const auto order = runHere({"plan", book, "--from", "2027-07-01", "--to", "2027-06-01"});
    EXPECT_EQ(order.exit, 2);
    EXPECT_NE(order.err.find("before --from"), std::string::npos) << order.err;
}

}  // namespace
}  // namespace tenthday::test
