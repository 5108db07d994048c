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

TEST(DraftEdit, MovedOntoAMakeUpThatServesItGivesItsOwnUp) {
    auto maker = season();
    maker.makeUp("Box", "2027-06-17", 17, false).batch("10", "2027-06-18", 15, 14, "Box");
    auto draft = draftOf(maker.snapshot(), maker.batchId("10"));
    draft.day = day("2027-06-11");
    const auto together = saved(maker.snapshot(), draft);
    EXPECT_EQ(makeUpDays(together), (std::vector{day("2027-06-10")}));
    auto again = draftOf(together, maker.batchId("10"));
    again.day = day("2027-06-18");
    EXPECT_EQ(makeUpDays(saved(together, again)),
              (std::vector{day("2027-06-10"), day("2027-06-17")}));
}

/// Two builders made up for one batch, one with open brood and one without.
SeasonMaker mixedMakeUps() {
    auto maker = season("2027-06-11");
    maker.makeUp("Other", "2027-06-10", 18, true).bar("9", 2, 10, "Other");
    return maker;
}

TEST(DraftEdit, WhatWasMadeUpStaysAsItWas) {
    const auto maker = mixedMakeUps();
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    draft.day = day("2027-06-12");
    draft.bars.push_back({0, {}, Cells{5}, {maker.builderId("Box")}, {}});
    const auto after = saved(maker.snapshot(), draft);
    const auto before = maker.snapshot();
    for (const auto& makeUp : before.all<MakeUp>()) EXPECT_EQ(*after.find(makeUp->id), *makeUp);
    draft.makeUp = MakeUpPlan::WithoutOpenBrood;  // said so: now it counts
    const auto replanned = saved(before, draft);
    for (const auto& makeUp : replanned.all<MakeUp>()) EXPECT_FALSE(makeUp->openBrood);
}

TEST(DraftEdit, ATakeCountsFromTheGraftAsItWas) {
    const auto early =
        season("2027-06-12").outcome("9", OutcomeKind::Graft, "2027-06-10", 14).snapshot();
    auto draft = draftOf(early, (*early.all<Batch>().begin())->id);
    draft.bars[0].taken = Cells{9};
    EXPECT_EQ(takeCountOf(saved(early, draft), draft.id, 1, true)->day, day("2027-06-12"));
    const auto late =
        season("2027-06-20").outcome("9", OutcomeKind::Graft, "2027-06-15", 14).snapshot();
    EXPECT_EQ(takeCountOf(saved(late, draft), draft.id, 1, true)->day, day("2027-06-18"));
}

TEST(DraftEdit, ACountOfTheWholeBecomesThatOfItsBarWhenAnotherComes) {
    const auto maker = season("2027-06-20").outcome("9", OutcomeKind::TakeCount, "2027-06-12", 11);
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    ASSERT_EQ(draft.bars[0].taken, Cells{11});
    draft.bars.push_back({0, {}, Cells{7}, {maker.builderId("Box")}, {}});
    const auto after = saved(maker.snapshot(), draft);
    ASSERT_EQ(after.all<Outcome>().size(), 1U);
    const auto count = *after.all<Outcome>().begin();
    EXPECT_EQ(count->bar, 1);
    EXPECT_EQ(count->day, day("2027-06-12"));
}

TEST(DraftEdit, AClearedTakeDoesNotGiveWayToAnOlderOne) {
    const auto maker = season("2027-06-20")
                           .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 11, {}, 1)
                           .outcome("9", OutcomeKind::TakeCount, "2027-06-14", 10, {}, 1);
    auto draft = draftOf(maker.snapshot(), maker.batchId("9"));
    EXPECT_EQ(draft.bars[0].taken, Cells{10});
    draft.bars[0].taken.reset();
    EXPECT_FALSE(draftOf(saved(maker.snapshot(), draft), draft.id).bars[0].taken);
}

TEST(DraftEdit, OutsideTheSeasonIsRefusedAlsoForRepeats) {
    const auto maker = season();  // the year 2027
    auto draft = newDraft(maker.snapshot(), day("2027-12-20"), kNew);
    EXPECT_TRUE(changesOf(maker.snapshot(), draft, {}, freshIds()));
    const auto repeated = changesOf(maker.snapshot(), draft, {Days{4}, 3}, freshIds());
    ASSERT_FALSE(repeated);
    EXPECT_NE(repeated.error().text.find("outside the season"), std::string::npos);
    draft.day = day("2028-01-02");
    EXPECT_FALSE(changesOf(maker.snapshot(), draft, {}, freshIds()));
    EXPECT_FALSE(moveBatch(maker.snapshot(), maker.batchId("9"), day("2028-01-02")));
}

TEST(DraftEdit, LabelsOfOtherSeasonsAreTaken) {
    auto snapshot = season().snapshot();
    snapshot.setLabelsOfOtherSeasons({"10", "11"});
    EXPECT_EQ(nextLabel(snapshot), "12");
    auto draft = newDraft(snapshot, day("2027-07-20"), kNew);
    draft.label = "11";
    const auto changes = changesOf(snapshot, draft, {}, freshIds());
    ASSERT_FALSE(changes);
    EXPECT_NE(changes.error().text.find("is there already"), std::string::npos);
}

TEST(DraftEdit, AGraftedBatchWithOneAgeCanBeEdited) {
    auto maker = season("2027-06-13").outcome("9", OutcomeKind::Graft, "2027-06-11", 14);
    auto before = maker.snapshot();
    ChangeSet one;
    const auto row = before.find(maker.batchId("9"));
    Batch aged = *row;
    aged.larvaFromH = 12;
    one.edit(row, aged);
    before = applied(before, one).value();
    auto draft = draftOf(before, row->id);
    draft.note = "told";
    EXPECT_EQ(saved(before, draft).find(row->id)->larvaToH, std::nullopt);
    draft.larvaToH = 12;  // as a form reads one age
    EXPECT_EQ(saved(before, draft).find(row->id)->larvaToH, std::nullopt);
}

TEST(NewDraft, LeavesOutWhatIsRetired) {
    auto maker = season();
    auto snapshot = maker.snapshot();
    ChangeSet changes;
    Queen queen{id<Queen>(1), 1, "Rowan", {}, {}, {}, day("2027-03-01"), day("2027-06-30"), {}};
    changes.add(queen);
    const auto bar = *snapshot.all<BatchBar>().begin();
    BatchBar of = *bar;
    of.breeder = queen.id;
    changes.edit(bar, of);
    const auto box = snapshot.find(maker.builderId("Box"));
    Builder gone = *box;
    gone.until = day("2027-06-30");
    changes.edit(box, gone);
    snapshot = applied(snapshot, changes).value();
    EXPECT_EQ(newDraft(snapshot, day("2027-06-20"), kNew).bars[0].breeder, queen.id);
    const auto later = newDraft(snapshot, day("2027-07-20"), kNew);
    EXPECT_FALSE(later.bars[0].breeder);
    EXPECT_EQ(later.bars[0].steps[0], maker.builderId("Other"));
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
