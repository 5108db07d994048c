#include "app/headless/program.h"

namespace tenthday::test {
namespace {

class RatesVerb : public ProgramTest {};

TEST_F(RatesVerb, GivesPriorOwnRecordAndResultByStage) {
    const auto text = answer({"rates", makeNew()});
    EXPECT_EQ(text.substr(0, text.find('\n')),
              "stage,prior,prior_low,prior_high,own,own_low,own_high,rate,rate_low,rate_high,"
              "spread,batches,left_out");
    const auto rows = rowsOf(text);
    ASSERT_EQ(rows.size(), 5U);
    std::string stages;
    for (const auto& row : rows) {
        stages += row.at("stage") + " ";
        EXPECT_EQ(row.at("own"), "") << "an empty book has no record";
        EXPECT_EQ(row.at("rate"), row.at("prior"));
        EXPECT_LT(numberIn(row.at("prior_low")), numberIn(row.at("prior_high")));
    }
    EXPECT_EQ(stages, "accepted sealed emerged mated judged_good ");
    EXPECT_EQ(rows[0].at("prior"), "75.0");
}

TEST_F(RatesVerb, OwnCountsDrawTheRateToThem) {
    const auto book = makeExample();
    const auto before = rowsOf(answer({"rates", book}))[0];
    import(book, "leftout", "batch,reason\n701,chilled on the road\n");
    const auto after = rowsOf(answer({"rates", book}))[0];
    EXPECT_EQ(after.at("left_out"), "1");
    EXPECT_EQ(numberIn(after.at("batches")), numberIn(before.at("batches")) - 1);
    EXPECT_NE(before.at("own"), "");
    const double own = numberIn(before.at("own"));
    const double prior = numberIn(before.at("prior"));
    const double rate = numberIn(before.at("rate"));
    EXPECT_GE(rate, std::min(own, prior));
    EXPECT_LE(rate, std::max(own, prior));
}

}  // namespace
}  // namespace tenthday::test
