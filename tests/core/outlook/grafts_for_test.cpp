/// How many grafts would do, both ways, against the same season with those grafts.
#include "outlook/grafts_for.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Two batches ahead, caught from mid June on.
SeasonMaker twoBatches(int first = 20, int second = 40) {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    maker.batch("1", "2027-05-10", 14, first, "B1").batch("2", "2027-05-20", 14, second, "B2");
    return maker;
}
const Day kBy = day("2027-07-20");

double chanceWith(int first, int second, int queens) {
    return queensInHand(queens, kBy)(*twoBatches(first, second).outlook());
}

TEST(GraftsWanted, TheFewestThatDoAreSplitAsPlanned) {
    const auto wanted = graftsWanted(twoBatches().snapshot(), queensInHand(40, kBy), kBy, 0.9);
    ASSERT_TRUE(wanted.isEnough);
    EXPECT_EQ(wanted.planned(), 60);
    EXPECT_DOUBLE_EQ(wanted.plannedChance, chanceWith(20, 40, 40));
    ASSERT_EQ(wanted.batches.size(), 2U);
    const int first = wanted.batches[0].needed;
    const int second = wanted.batches[1].needed;
    EXPECT_GT(wanted.needed(), 60);
    EXPECT_NEAR(second, 2 * first, 1.5);
    EXPECT_DOUBLE_EQ(wanted.neededChance, chanceWith(first, second, 40));
    EXPECT_GE(wanted.neededChance, 0.9);
    const int fewer = second > 2 * first ? second - 1 : second;
    EXPECT_LT(chanceWith(fewer == second ? first - 1 : first, fewer, 40), 0.9);
}

TEST(GraftsWanted, WherePlannedIsPlentyFewerWouldDo) {
    const auto wanted = graftsWanted(twoBatches().snapshot(), queensInHand(5, kBy), kBy, 0.9);
    ASSERT_TRUE(wanted.isEnough);
    EXPECT_GT(wanted.plannedChance, 0.9);
    EXPECT_LT(wanted.needed(), 60);
    EXPECT_GE(wanted.neededChance, 0.9);
}

TEST(GraftsWanted, ABatchCaughtTooLateHelpsNothing) {
    const Day early = twoBatches().outlook()->batches[1]->timeline.hold.catchDay - Days{1};
    const auto wanted = graftsWanted(twoBatches().snapshot(), queensInHand(20, early), early, 0.9);
    ASSERT_EQ(wanted.batches.size(), 1U) << "the second is caught after that day";
    EXPECT_EQ(wanted.batches[0].batch->label, "1");
}

TEST(GraftsWanted, WhereNothingIsAheadThePlanStands) {
    auto book = twoBatches().snapshot();
    book.setToday(day("2027-07-01"));
    const auto wanted = graftsWanted(book, queensInHand(40, kBy), kBy, 0.9);
    EXPECT_TRUE(wanted.batches.empty());
    EXPECT_DOUBLE_EQ(wanted.neededChance, wanted.plannedChance);
    EXPECT_FALSE(wanted.isEnough);
}

TEST(GraftsWanted, AnOrderCountsThoseBeforeIt) {
    const auto book = with(twoBatches().snapshot(), orderFor(1, 10, "2027-07-10"));
    const auto both = with(book, orderFor(2, 20, "2027-07-20"));
    const auto wanted = graftsWanted(both, orderWhole(id<Order>(2)), kBy, 0.9);
    const auto plain = graftsWanted(twoBatches().snapshot(), queensInHand(30, kBy), kBy, 0.9);
    EXPECT_EQ(wanted.needed(), plain.needed());
    EXPECT_NEAR(wanted.neededChance, plain.neededChance, 1e-9);
}

TEST(GraftsWanted, NoNumberHelpsWhereNoneCanBe) {
    const auto book = with(twoBatches().snapshot(), orderFor(1, 5000, "2027-07-20"));
    const auto wanted = graftsWanted(book, orderWhole(id<Order>(1)), kBy, 0.9);
    EXPECT_FALSE(wanted.isEnough);
    EXPECT_LT(wanted.neededChance, 0.9);
}

}  // namespace
}  // namespace tenthday::test
