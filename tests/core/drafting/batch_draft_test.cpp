#include "drafting/batch_draft.h"

#include <gtest/gtest.h>

#include "support/draft_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::freshIds;
using test::id;
using test::methodId;
using test::saved;
using test::SeasonMaker;

const auto kNew = id<Batch>(700'000);

SeasonMaker yardAndBuilder() {
    return SeasonMaker("2027-06-01").yard("Home").builder("Box", "Home");
}

/// Batch 9, grafted on 11 June in the builder, with a make-up the day before.
SeasonMaker seasonWithBatch(std::string_view today = "2027-06-01") {
    SeasonMaker maker(today);
    maker.yard("Home").yard("Mill").builder("Box", "Home").builder("Other", "Home");
    maker.makeUp("Box", "2027-06-10", 17, false);
    return maker.batch("9", "2027-06-11", 15, 14, "Box").share("9", "Mill", 10);
}

std::vector<Ptr<MakeUp>> makeUpsOf(const Snapshot& snapshot, Id<Batch> batch) {
    return makeUpsFor(snapshot, *snapshot.find(batch));
}

TEST(NewDraft, InABookWithoutBatchesTakesAMethodThatIsServed) {
    const auto snapshot = yardAndBuilder().snapshot();
    const auto draft = newDraft(snapshot, day("2027-06-11"), kNew);
    EXPECT_EQ(draft.label, "1");
    ASSERT_EQ(draft.bars.size(), 1U);
    ASSERT_FALSE(draft.bars[0].steps.empty());
    for (const auto& builder : draft.bars[0].steps) EXPECT_TRUE(builder.has_value());
    EXPECT_EQ(draft.makeUp, MakeUpPlan::WithoutOpenBrood);
    const auto next = saved(snapshot, draft);
    EXPECT_EQ(makeUpsOf(next, kNew).at(0)->day, day("2027-06-10"));
}

TEST(NewDraft, FollowsTheNewestBatchBefore) {
    const auto maker = seasonWithBatch().batch("20", "2027-07-20", 9, 30, "Other");
    const auto snapshot = maker.snapshot();
    const auto draft = newDraft(snapshot, day("2027-06-15"), kNew);
    EXPECT_EQ(draft.label, "21");
    EXPECT_EQ(draft.day, day("2027-06-15"));
    EXPECT_EQ(draft.hour, Hour{15});
    ASSERT_EQ(draft.bars.size(), 1U);
    EXPECT_EQ(draft.bars[0].cells, Cells{14});
    EXPECT_EQ(draft.bars[0].steps.at(0), maker.builderId("Box"));
    EXPECT_EQ(draft.shares, (std::vector{std::pair{maker.yardId("Mill"), Cells{10}}}));
    EXPECT_EQ(draft.makeUp, MakeUpPlan::WithoutOpenBrood);
}

TEST(NextLabel, CountsOn) {
    const auto after = [](const std::string& label) {
        return nextLabel(yardAndBuilder().batch(label, "2027-06-11", 12, 9, "Box").snapshot());
    };
    EXPECT_EQ(nextLabel(yardAndBuilder().snapshot()), "1");
    EXPECT_EQ(after("9"), "10");
    EXPECT_EQ(after("N07"), "N08");
    EXPECT_EQ(after("N99"), "N100");
    EXPECT_EQ(after("early"), "early 1");
    EXPECT_EQ(after("2027-999999999999"), "2027-1000000000000");
}

TEST(DraftOf, SavedAgainChangesNothing) {
    const auto maker = seasonWithBatch()
                           .bar("9", 2, 20, "Other")
                           .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 11);
    const auto snapshot = maker.snapshot();
    const auto changes = changesOf(snapshot, draftOf(snapshot, maker.batchId("9")), {}, freshIds());
    ASSERT_TRUE(changes);
    EXPECT_TRUE(changes.value().isEmpty());
}

TEST(ChangesOf, SavesAllThatIsTyped) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    auto draft = newDraft(before, day("2027-06-25"), kNew);
    draft.larvaFromH = 18;
    draft.larvaToH = 20;
    draft.mating = Mating::Station;
    draft.catchRule = CatchRule::Eggs;
    draft.note = "second graft";
    draft.bars.push_back(draft.bars[0]);
    draft.bars[1].cells = Cells{7};
    draft.bars[1].steps = {maker.builderId("Other")};
    draft.shares = {{maker.yardId("Home"), Cells{5}}, {maker.yardId("Mill"), Cells{0}}};
    draft.makeUp = MakeUpPlan::WithOpenBrood;
    const auto after = saved(before, draft);
    auto read = draftOf(after, kNew);
    draft.shares.pop_back();  // a yard with no cells is none
    draft.bars[0].number = 1;
    draft.bars[1].number = 2;
    EXPECT_EQ(read, draft);
    EXPECT_EQ(makeUpsOf(after, kNew).size(), 2U);
}

TEST(ChangesOf, TakenBackLeavesTheBookAsItWas) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.day = day("2027-06-18");
    draft.bars[0].steps = {maker.builderId("Other")};
    draft.bars.push_back({0, {}, Cells{5}, {maker.builderId("Box")}, {}});
    draft.shares.clear();
    const auto changes = changesOf(before, draft, {Days{4}, 3}, freshIds());
    ASSERT_TRUE(changes);
    const auto after = applied(before, changes.value());
    ASSERT_TRUE(after);
    const auto back = applied(after.value(), changes.value().inverse());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back.value().sameContent(before));
}

TEST(ChangesOf, AMovedBatchTakesItsMakeUpAlong) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.day = day("2027-06-18");
    const auto made = makeUpsOf(saved(before, draft), draft.id);
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made[0]->day, day("2027-06-17"));
    EXPECT_EQ(made[0]->hour, Hour{17});
}

TEST(ChangesOf, AnotherBuilderIsMadeUpInsteadOfTheFirst) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.bars[0].steps = {maker.builderId("Other")};
    const auto after = saved(before, draft);
    const auto made = makeUpsOf(after, draft.id);
    ASSERT_EQ(made.size(), 1U);
    EXPECT_EQ(made[0]->builder, maker.builderId("Other"));
    EXPECT_EQ(after.all<MakeUp>().size(), 1U);
}

TEST(ChangesOf, NoMakeUpTakesThePlannedOneOut) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.makeUp = MakeUpPlan::None;
    EXPECT_TRUE(saved(before, draft).all<MakeUp>().empty());
    const auto late = seasonWithBatch("2027-06-11").snapshot();
    EXPECT_EQ(saved(late, draft).all<MakeUp>().size(), 1U) << "what is done stays";
}

TEST(ChangesOf, RepeatsInOneEdit) {
    const auto maker = seasonWithBatch();
    const auto before = maker.snapshot();
    const auto draft = draftOf(before, maker.batchId("9"));
    const auto after = saved(before, draft, {Days{4}, 3});
    std::vector<std::string> batches;
    for (const auto& label : {"9", "10", "11", "12"}) {
        const auto batch = findByLabel<Batch>(after, label);
        ASSERT_TRUE(batch) << label;
        batches.push_back(toText(batch->day));
        EXPECT_EQ(makeUpsOf(after, batch->id).size(), 1U) << label;
    }
    EXPECT_EQ(batches,
              (std::vector<std::string>{"2027-06-11", "2027-06-15", "2027-06-19", "2027-06-23"}));
}

TEST(ChangesOf, CountsATakeForEachBar) {
    const auto maker = seasonWithBatch("2027-06-12").bar("9", 2, 20, "Other");
    const auto before = maker.snapshot();
    auto draft = draftOf(before, maker.batchId("9"));
    draft.bars[0].taken = Cells{12};
    draft.bars[1].taken = Cells{0};
    const auto after = saved(before, draft);
    EXPECT_EQ(draftOf(after, draft.id), draft);
    const auto first = takeCountOf(after, draft.id, 1, false);
    ASSERT_TRUE(first);
    EXPECT_EQ(first->day, day("2027-06-12"));
    auto corrected = draft;
    corrected.bars[0].taken = Cells{13};
    corrected.bars[1].taken.reset();
    const auto again = saved(after, corrected);
    EXPECT_EQ(again.all<Outcome>().size(), 1U);
    EXPECT_EQ(takeCountOf(again, draft.id, 1, false)->count, Cells{13});
}

struct RefusedCase {
    const char* name;
    void (*spoil)(BatchDraft&);
    Repeat repeat;
    const char* why;
};
void PrintTo(const RefusedCase& c, std::ostream* out) { *out << c.name; }
class ChangesOfRefused : public ::testing::TestWithParam<RefusedCase> {};

TEST_P(ChangesOfRefused, SaysWhy) {
    const auto maker = seasonWithBatch();
    const auto snapshot = maker.snapshot();
    auto draft = newDraft(snapshot, day("2027-06-25"), kNew);
    GetParam().spoil(draft);
    const auto changes = changesOf(snapshot, draft, GetParam().repeat, freshIds());
    ASSERT_FALSE(changes);
    EXPECT_NE(changes.error().text.find(GetParam().why), std::string::npos) << changes.error().text;
}

// clang-format off
INSTANTIATE_TEST_SUITE_P(Drafts, ChangesOfRefused, ::testing::Values(
    RefusedCase{"NoBar", [](BatchDraft& d) { d.bars.clear(); }, {}, "one bar at least"},
    RefusedCase{"HalfAnAge", [](BatchDraft& d) { d.larvaFromH = 12; }, {}, "both ages"},
    RefusedCase{"AgesTurned", [](BatchDraft& d) { d.larvaFromH = 24, d.larvaToH = 12; }, {}, "larva_to_h"},
    RefusedCase{"NoMethod", [](BatchDraft& d) { d.method = {}; }, {}, "a method is needed"},
    RefusedCase{"LabelTaken", [](BatchDraft& d) { d.label = "9"; }, {}, "is there already"},
    RefusedCase{"NoLabel", [](BatchDraft& d) { d.label.clear(); }, {}, "a label is needed"},
    RefusedCase{"NoGrafts", [](BatchDraft& d) { d.bars[0].cells = Cells{0}; }, {}, "cells"},
    RefusedCase{"SameDay", [](BatchDraft&) {}, {Days{0}, 2}, "a day apart"},
    RefusedCase{"TooMany", [](BatchDraft&) {}, {Days{1}, 61}, "0 to 60"}),
    [](const auto& test) { return std::string(test.param.name); });
// clang-format on

TEST(ChangesOf, AGraftedBatchKeepsItsGraft) {
    const auto maker =
        seasonWithBatch("2027-06-12").outcome("9", OutcomeKind::Graft, "2027-06-11", 14);
    const auto snapshot = maker.snapshot();
    auto draft = draftOf(snapshot, maker.batchId("9"));
    draft.hour = Hour{9};
    EXPECT_FALSE(changesOf(snapshot, draft, {}, freshIds()));
    draft = draftOf(snapshot, maker.batchId("9"));
    draft.shares = {{maker.yardId("Home"), Cells{4}}};
    draft.note = "told the neighbour";
    EXPECT_EQ(draftOf(saved(snapshot, draft), draft.id), draft);
}

TEST(DeleteBatch, TakesAllOfItAndGivesItBack) {
    const auto maker = seasonWithBatch()
                           .box("N1", "Mill", "7", "2027-04-01")
                           .stock("N1/-", "2027-06-18")
                           .place("9", "N1/-", "2027-06-21", false)
                           .outcome("9", OutcomeKind::TakeCount, "2027-06-12", 11);
    const auto before = maker.snapshot();
    const auto gone = deleteBatch(before, maker.batchId("9"));
    ASSERT_TRUE(gone);
    const auto after = applied(before, gone.value());
    ASSERT_TRUE(after) << after.error().text;
    EXPECT_TRUE(after.value().all<Batch>().empty());
    EXPECT_TRUE(after.value().all<Placement>().empty());
    EXPECT_TRUE(after.value().all<Outcome>().empty());
    EXPECT_TRUE(after.value().all<MakeUp>().empty());
    EXPECT_EQ(after.value().all<Stocking>().size(), 1U);
    const auto back = applied(after.value(), gone.value().inverse());
    ASSERT_TRUE(back);
    EXPECT_TRUE(back.value().sameContent(before));
}

TEST(DeleteBatch, LeavesAMakeUpThatServesAnother) {
    // Both grafts come within the days a make-up serves; it was for the first.
    const auto maker = seasonWithBatch().batch("10", "2027-06-14", 15, 14, "Box");
    const auto gone = deleteBatch(maker.snapshot(), maker.batchId("10"));
    ASSERT_TRUE(gone);
    EXPECT_EQ(applied(maker.snapshot(), gone.value()).value().all<MakeUp>().size(), 1U);
}

}  // namespace
}  // namespace tenthday
