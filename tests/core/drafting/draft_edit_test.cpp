// What an edit of a batch does to the rows around it.
#include <gtest/gtest.h>

#include "records/verbs.h"
#include "support/draft_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::freshIds;
using test::id;
using test::saved;
using test::SeasonMaker;

const auto kNew = id<Batch>(700'000);

/// Batch 9, grafted on 11 June in the builder "Box" that is made up the day before; its ten cells
/// go to N1 on 21 June.
SeasonMaker season(std::string_view today = "2027-06-01") {
    SeasonMaker maker(today);
    maker.yard("Home").yard("Mill").builder("Box", "Home").builder("Other", "Home");
    maker.makeUp("Box", "2027-06-10", 17, false).batch("9", "2027-06-11", 15, 14, "Box");
    maker.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-06-18");
    return maker.place("9", "N1/-", "2027-06-21", false);
}

std::vector<Day> makeUpDays(const Snapshot& snapshot) {
    std::vector<Day> days;
    for (const auto& makeUp : snapshot.all<MakeUp>()) days.push_back(makeUp->day);
    std::sort(days.begin(), days.end());
    return days;
}

Day placedOn(const Snapshot& snapshot) { return (*snapshot.all<Placement>().begin())->day; }

TEST(DraftEdit, WhatIsPlannedMovesWithTheGraftNotWithTheStart) {
    const auto maker = season();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.start = Start::Confined;
    const auto later = saved(maker.snapshot(), draft);  // grafted four days later than before
    EXPECT_EQ(placedOn(later), day("2027-06-25"));
    EXPECT_EQ(makeUpDays(later), (std::vector{day("2027-06-14")}));
    draft.day = day("2027-06-07");
    const auto same = saved(maker.snapshot(), draft);  // the same graft as before
    EXPECT_EQ(placedOn(same), day("2027-06-21"));
    EXPECT_EQ(makeUpDays(same), (std::vector{day("2027-06-10")}));
}

TEST(DraftEdit, RipeCellsBoughtThatDayGoOutThatDay) {
    const auto maker = season();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.start = Start::Ripe;
    EXPECT_EQ(placedOn(saved(maker.snapshot(), draft)), day("2027-06-11"));
    draft.day = day("2027-06-21");
    EXPECT_EQ(placedOn(saved(maker.snapshot(), draft)), day("2027-06-21"));
}

struct Ungrafted : ::testing::TestWithParam<Start> {};
TEST_P(Ungrafted, HasNoMakeUp) {
    const auto maker = season();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.start = GetParam();
    draft.makeUp = MakeUpPlan::WithOpenBrood;
    const auto after = saved(maker.snapshot(), draft);
    EXPECT_TRUE(makeUpDays(after).empty());
    EXPECT_EQ(draftOf(after, draft.id).makeUp, MakeUpPlan::None);
    draft = newDraft(maker.snapshot(), day("2027-07-02"), kNew);
    draft.start = GetParam();
    EXPECT_EQ(makeUpDays(saved(maker.snapshot(), draft)).size(), 1U);
}
INSTANTIATE_TEST_SUITE_P(Starts, Ungrafted,
                         ::testing::Values(Start::SealedFound, Start::Ripe, Start::Virgin),
                         [](const auto& test) {
                             return test.param == Start::SealedFound ? "Found"
                                    : test.param == Start::Ripe      ? "Ripe"
                                                                     : "Virgin";
                         });

/// Bars 1 and 3, as a file may bring them, with counts of both.
SeasonMaker barsOneAndThree() {
    return season("2027-06-13")
        .bar("9", 3, 20, "Other")
        .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 11, {}, 1)
        .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 17, {}, 3);
}

TEST(DraftEdit, BarsKeepTheirNumbers) {
    const auto maker = barsOneAndThree();
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    ASSERT_EQ(draft.bars.size(), 2U);
    EXPECT_EQ(draft.bars[1].number, 3);
    const auto same = changesOf(before, draft, {}, freshIds());
    ASSERT_TRUE(same);
    EXPECT_TRUE(same.value().isEmpty());
    std::swap(draft.bars[0], draft.bars[1]);  // the order is not theirs
    EXPECT_TRUE(changesOf(before, draft, {}, freshIds()).value().isEmpty());
}

TEST(DraftEdit, ABarThatGoesTakesItsCountsAndLeavesTheOthersTheirs) {
    const auto maker = barsOneAndThree();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.bars.erase(draft.bars.begin());
    draft.bars.push_back({0, {}, Cells{7}, {maker.builderId("Box")}, {}});
    const auto after = saved(maker.snapshot(), draft);
    const auto read = draftOf(after, draft.id);
    ASSERT_EQ(read.bars.size(), 2U);
    EXPECT_EQ(read.bars[0].number, 3);
    EXPECT_EQ(read.bars[0].taken, Cells{17});
    EXPECT_EQ(read.bars[1].number, 4) << "no number twice: counts would go to another queen";
    EXPECT_FALSE(read.bars[1].taken);
    EXPECT_EQ(after.all<Outcome>().size(), 1U);
}

TEST(DraftEdit, ANewBarIsCountedInTheSameEdit) {
    const auto maker = barsOneAndThree();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.bars.push_back({0, {}, Cells{7}, {maker.builderId("Box")}, Cells{5}});
    const auto read = draftOf(saved(maker.snapshot(), draft), draft.id);
    ASSERT_EQ(read.bars.size(), 3U);
    EXPECT_EQ(read.bars[2].number, 4);
    EXPECT_EQ(read.bars[2].taken, Cells{5});
}

TEST(DraftEdit, WhatWasSeenInANucStaysWhenItsBarGoes) {
    const auto maker = barsOneAndThree();
    auto seen = Outcome{id<Outcome>(800'000),
                        1,
                        maker.batchId("9"),
                        3,
                        maker.sideId("N1/-"),
                        OutcomeKind::NoQueen,
                        day("2027-06-12"),
                        {},
                        {},
                        {}};
    ChangeSet more;
    more.add(seen);
    const auto before = applied(maker.snapshot(), more).value();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.bars.pop_back();
    const auto after = saved(before, draft);
    ASSERT_TRUE(after.find(seen.id));
    EXPECT_FALSE(after.find(seen.id)->bar);
}

TEST(DraftEdit, CountsByBarReplaceOneOfTheWholeBatch) {
    const auto maker = season("2027-06-13")
                           .bar("9", 2, 20, "Other")
                           .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 30);
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.note = "warm day";
    EXPECT_EQ(saved(maker.snapshot(), draft).all<Outcome>().size(), 1U);
    draft.bars[0].taken = Cells{9};
    draft.bars[1].taken = Cells{18};
    const auto after = saved(maker.snapshot(), draft);
    ASSERT_EQ(after.all<Outcome>().size(), 2U);
    for (const auto& outcome : after.all<Outcome>()) EXPECT_TRUE(outcome->bar);
}

TEST(DraftEdit, ATakeIsCountedAfterTheGraft) {
    const auto maker = season("2027-06-11");
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.bars[0].taken = Cells{9};
    const auto early = changesOf(maker.snapshot(), draft, {}, freshIds());
    ASSERT_FALSE(early);
    EXPECT_NE(early.error().text.find("from the day after the graft"), std::string::npos);
    const auto fine = season("2027-06-12").snapshot();
    EXPECT_EQ((*saved(fine, draft).all<Outcome>().begin())->day, day("2027-06-12"));
    const auto late = season("2027-06-19").snapshot();
    EXPECT_EQ((*saved(late, draft).all<Outcome>().begin())->day, day("2027-06-14"));
}

/// A further batch in "Box" on the same day as batch 9, with its own wish for a make-up.
BatchDraft besideNine(const SeasonMaker& maker, MakeUpPlan plan) {
    auto draft = newDraft(maker.snapshot(), day("2027-06-11"), kNew);
    draft.makeUp = plan;
    return draft;
}

TEST(DraftEdit, OneMakeUpServesTwoBatchesOfADay) {
    const auto maker = season();
    const auto draft = besideNine(maker, MakeUpPlan::WithOpenBrood);
    const auto both = saved(maker.snapshot(), draft);
    EXPECT_EQ(makeUpDays(both), (std::vector{day("2027-06-10")}));
    EXPECT_EQ(draftOf(both, maker.batchId("9")).makeUp, MakeUpPlan::WithoutOpenBrood)
        << "the make-up of another batch stays as it is";
    // Neither takes it away from the other: not by going, not by moving, not by another plan.
    for (const auto batch : {kNew, maker.batchId("9")}) {
        EXPECT_EQ(makeUpDays(applied(both, deleteBatch(both, batch).value()).value()).size(), 1U);
        const auto moved = moveBatch(both, batch, day("2027-06-18"));
        EXPECT_EQ(makeUpDays(applied(both, moved.value()).value()),
                  (std::vector{day("2027-06-10")}));
        auto other = draftOf(both, batch);
        other.makeUp = MakeUpPlan::None;
        EXPECT_EQ(makeUpDays(saved(both, other)).size(), 1U);
        other = draftOf(both, batch);
        other.day = day("2027-06-18");
        EXPECT_EQ(makeUpDays(saved(both, other)),
                  (std::vector{day("2027-06-10"), day("2027-06-17")}))
            << "moved in the editor it gets one of its own";
    }
}

TEST(DraftEdit, ABatchWithoutAMakeUpMovedNearOneLeavesIt) {
    auto maker = season();
    maker.batch("10", "2027-07-02", 15, 14, "Box");
    auto draft = draftOf(maker.snapshot(), maker.batchId("10"));
    ASSERT_EQ(draft.makeUp, MakeUpPlan::None);
    draft.day = day("2027-06-11");
    EXPECT_EQ(makeUpDays(saved(maker.snapshot(), draft)).size(), 1U);
}

}  // namespace
}  // namespace tenthday
