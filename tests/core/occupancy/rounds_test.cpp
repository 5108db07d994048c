// What was seen in single nucs, cells bought in, cells given in turns.
#include <gtest/gtest.h>

#include "records/verbs.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// Ten stocked nucs; batch 1 of ten grafts (seven ripe) on 10 May.
SeasonMaker tenNucs(std::string_view today) {
    SeasonMaker maker(today);
    maker.yard("East").builder("Box", "East");
    for (int i = 1; i <= 10; ++i)
        maker.box("N" + std::to_string(i), "East", "7", "2027-04-01")
            .stock("N" + std::to_string(i) + "/-", "2027-05-15");
    maker.batch("1", "2027-05-10", 14, 10, "Box");
    return maker;
}

SideDay on(const Outlook& outlook, const std::string& box, std::string_view asked) {
    for (const auto& side : outlook.nucs.sides)
        if (side.box->label == box) return sideOn(side, day(asked), outlook.snapshot.today());
    throw std::out_of_range(box);
}

Snapshot withStart(const SeasonMaker& maker, Start start, std::string_view begin, int cells) {
    auto snapshot = maker.snapshot();
    ChangeSet changes;
    const auto batch = snapshot.find(maker.batchId("1"));
    auto edited = *batch;
    edited.start = start;
    edited.day = day(begin);
    changes.edit(batch, edited);
    const auto bar = snapshot.all<BatchBar>().of(batch->id.uuid)[0];
    auto filled = *bar;
    filled.cells = Cells{cells};
    changes.edit(bar, filled);
    return applied(snapshot, changes).value();
}

OutlookPtr afresh(const Snapshot& snapshot) {
    OutlookMemo memo;
    return outlookOf(snapshot, memo);
}

TEST(BoughtIn, RipeCellsAreCountedAsTheyCome) {
    const auto maker = tenNucs("2027-05-18");
    const auto outlook = afresh(withStart(maker, Start::Ripe, "2027-05-20", 14));
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 1U);
    EXPECT_EQ(outlook->nucs.cellsDays[0].ripe, 14);
    EXPECT_EQ(outlook->nucs.cellsDays[0].left(), -4);
    ASSERT_FALSE(outlook->findings.empty());
    EXPECT_EQ(outlook->findings[0].severity, Severity::Danger);
}

TEST(BoughtIn, NothingStandsInABuilderBeforeItCame) {
    const auto maker = tenNucs("2027-05-18");
    for (const auto start : {Start::Ripe, Start::Virgin})
        EXPECT_TRUE(afresh(withStart(maker, start, "2027-05-20", 14))->builders[0].loads.empty());
    const auto found = afresh(withStart(maker, Start::SealedFound, "2027-05-20", 14));
    ASSERT_EQ(found->builders[0].loads.size(), 1U);
    const auto& load = *found->builders[0].loads[0].span;
    EXPECT_EQ(dayOf(load.span.from), day("2027-05-20"));
    for (const auto& piece : load.thickness) EXPECT_TRUE(piece.sealed);
    EXPECT_TRUE(found->builders[0].overfull.empty());
}

TEST(FirstFit, LeavesNucsThatEndBeforeTheCatch) {
    SeasonMaker maker("2027-05-12");
    maker.yard("East").builder("Box", "East");
    maker.box("N1", "East", "3+3", "2027-04-01").stock("N1/A", "2027-05-15");
    maker.box("N2", "East", "7", "2027-04-01").stock("N2/-", "2027-05-15");
    maker.layOut("N1", "7", "2027-05-25").batch("1", "2027-05-10", 14, 2, "Box");
    const auto outlook = maker.outlook();
    EXPECT_EQ(on(*outlook, "N2", "2027-05-21").state, NucState::Cell);
    for (const auto& side : outlook->nucs.sides)
        EXPECT_EQ(side.rounds.size(), side.box->label == "N2" ? 1U : 0U);
}

TEST(NucNotFree, ACellPlannedByNameIntoAHeldNucIsTold) {
    auto maker = tenNucs("2027-05-22");
    maker.place("1", "N1/-", "2027-05-20", true).batch("2", "2027-05-15", 14, 4, "Box");
    maker.place("2", "N1/-", "2027-05-25", false).place("2", "N2/-", "2027-05-25", false);
    std::vector<std::string> texts;
    const auto outlook = maker.outlook();
    for (const auto& finding : outlook->findings)
        if (finding.kind == FindingKind::NucNotFree) texts.push_back(englishText(finding));
    ASSERT_EQ(texts.size(), 1U);
    EXPECT_EQ(texts[0], "its cell is planned into N1 on Tue 25 May, which holds a virgin then");
}

TEST(StateSince, IsTheFirstDayOfWhatItIsNowNotOfTheCell) {
    auto maker = tenNucs("2027-05-22");
    maker.place("1", "N1/-", "2027-05-20", true);
    const auto outlook = maker.outlook();
    for (const auto& side : outlook->nucs.sides) {
        if (side.box->label != "N1") continue;
        const auto since = [&](const char* asked) {
            return stateSince(side, day(asked), outlook->snapshot.today());
        };
        EXPECT_EQ(since("2027-05-21"), day("2027-05-20"));
        const auto virgin = since("2027-05-26");
        ASSERT_TRUE(virgin);
        EXPECT_GT(*virgin, day("2027-05-20"));
        EXPECT_EQ(sideOn(side, *virgin, day("2027-05-22")).state, NucState::Virgin);
        EXPECT_EQ(sideOn(side, *virgin - Days{1}, day("2027-05-22")).state, NucState::Cell);
        EXPECT_EQ(since("2027-05-01"), day("2027-04-01")) << "not stocked";
    }
}

TEST(Seen, AVirginMayStillFail) {
    auto maker = tenNucs("2027-06-09");
    maker.place("1", "N1/-", "2027-05-20", true);
    maker.outcome("1", OutcomeKind::Emergence, "2027-05-23", {}, "N1/-");
    const auto is = on(*maker.outlook(), "N1", "2027-06-10");
    EXPECT_NEAR(is.likely, 1 - .80, 1e-6);
}

TEST(BoughtIn, VirginsHaveEmergedAlready) {
    const auto maker = tenNucs("2027-05-18");
    const auto outlook = afresh(withStart(maker, Start::Virgin, "2027-05-20", 10));
    const auto& timeline = outlook->batches[0]->timeline;
    EXPECT_EQ(timeline.counts.emerged, 10);
    EXPECT_NEAR(timeline.hold.layingShare, .80, 1e-9);
}

TEST(SeenInANuc, EggsSeenLateCarryTheCatch) {
    auto maker = tenNucs("2027-06-14");
    maker.place("1", "N1/-", "2027-05-20", true);
    maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-14", {}, "N1/-");
    const auto state = on(*maker.outlook(), "N1", "2027-06-15");
    EXPECT_EQ(state.likely, 0);
    EXPECT_EQ(state.readyFrom,
              day("2027-06-24"));  // 14 June + 9 d to sealed brood, caught that day
}

TEST(SeenInANuc, WhatEndsARoundCountsWhateverOrderItWasTypedIn) {
    for (const bool catchFirst : {true, false}) {
        auto maker = tenNucs("2027-06-13");
        maker.place("1", "N1/-", "2027-05-20", true);
        const auto first = catchFirst ? OutcomeKind::Catch : OutcomeKind::JudgedGood;
        const auto second = catchFirst ? OutcomeKind::JudgedGood : OutcomeKind::Catch;
        maker.outcome("1", first, "2027-06-12", {}, "N1/-");
        maker.outcome("1", second, "2027-06-12", {}, "N1/-");
        const auto state = on(*maker.outlook(), "N1", "2027-06-14");
        EXPECT_EQ(state.state, NucState::Caught) << catchFirst;
        EXPECT_TRUE(state.ready) << catchFirst;
    }
}

TEST(SeenInANuc, WithoutAPlacementTheCellIsTakenToHaveGoneThere) {
    auto maker = tenNucs("2027-06-09");
    maker.outcome("1", OutcomeKind::Catch, "2027-06-08", {}, "N9/-");
    const auto outlook = maker.outlook();
    EXPECT_TRUE(on(*outlook, "N9", "2027-06-10").ready);
    EXPECT_EQ(outlook->nucs.cellsDays[0].placed, 7);  // N9 and six by first fit
}

TEST(CellsDay, WhatWasNotRecordedThenIsNotComing) {
    auto maker = tenNucs("2027-05-25");
    for (int i = 1; i <= 5; ++i)
        maker.place("1", "N" + std::to_string(i) + "/-", "2027-05-20", true);
    const auto outlook = maker.outlook();
    EXPECT_TRUE(on(*outlook, "N6", "2027-05-26").ready);
    EXPECT_EQ(outlook->nucs.cellsDays[0].placed, 5);
}

TEST(CellsDay, GivenInTurnsTheLastCellsAreWarnedOf) {
    auto maker = tenNucs("2027-05-15");
    for (int i = 1; i <= 7; ++i)
        maker.place("1", "N" + std::to_string(i) + "/-", i <= 3 ? "2027-05-20" : "2027-05-22",
                    false);
    const auto outlook = maker.outlook();
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 2U);
    EXPECT_EQ(outlook->nucs.cellsDays[0].toNucs, 3);
    EXPECT_EQ(outlook->nucs.cellsDays[1].toNucs, 4);
    ASSERT_EQ(outlook->findings.size(), 1U);
    EXPECT_EQ(outlook->findings[0].kind, FindingKind::QueenOutBeforeMove);
}

TEST(QueenOut, IsToldOnTheDayItselfAndUntilTheCellsAreRecordedAsOut) {
    const auto told = [](std::string_view today, bool moved) {
        auto maker = tenNucs(today);
        if (moved) maker.outcome("1", OutcomeKind::Ripe, "2027-05-20", 7);
        auto snapshot = maker.snapshot();
        ChangeSet changes;
        const auto batch = snapshot.find(maker.batchId("1"));
        auto edited = *batch;
        edited.hour = Hour{10};
        edited.larvaFromH = edited.larvaToH = 54;
        changes.edit(batch, edited);
        std::size_t count = 0;
        const auto outlook = afresh(applied(snapshot, changes).value());
        for (const auto& f : outlook->findings) count += f.kind == FindingKind::QueenOutBeforeMove;
        return count;
    };
    EXPECT_EQ(told("2027-05-18", false), 1U);
    EXPECT_EQ(told("2027-05-20", false), 1U);
    EXPECT_EQ(told("2027-05-21", false), 1U);
    EXPECT_EQ(told("2027-05-21", true), 0U);
    EXPECT_EQ(told("2027-06-10", false), 0U);
}

TEST(MoveBatch, TakesItsOwnMakeUpAlongAndNoOther) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East").makeUp("Box", "2027-05-09", 12, true);
    maker.batch("1", "2027-05-10", 14, 10, "Box").batch("2", "2027-05-12", 14, 10, "Box");
    const auto snapshot = maker.snapshot();
    const auto later = moveBatch(snapshot, maker.batchId("2"), day("2027-05-13"));
    ASSERT_TRUE(later.ok());
    EXPECT_EQ(later.value().rows.size(), 1U);
    const auto own = moveBatch(snapshot, maker.batchId("1"), day("2027-05-11"));
    ASSERT_TRUE(own.ok());
    EXPECT_EQ(own.value().rows.size(), 2U);
}

TEST(MoveBatch, OfAConfinedQueenMovesTheMakeUpBeforeItsGraft) {
    auto maker = tenNucs("2027-05-01");
    maker.makeUp("Box", "2027-05-09", 12, true);
    const auto snapshot = withStart(maker, Start::Confined, "2027-05-06", 10);
    const auto moved = moveBatch(snapshot, maker.batchId("1"), day("2027-05-08"));
    ASSERT_TRUE(moved.ok());
    const auto next = applied(snapshot, moved.value()).value();
    EXPECT_EQ((*next.all<MakeUp>().begin())->day, day("2027-05-11"));
}

TEST(FirstFit, ABoxThatComesBackToItsYardTakesOneCell) {
    SeasonMaker maker("2027-05-18");
    maker.yard("East").yard("West", 1).builder("Box", "East");
    maker.box("N1", "East", "7", "2027-04-01").stock("N1/-", "2027-05-25");
    const auto made = maker.batch("1", "2027-05-20", 14, 10, "Box").snapshot();
    ChangeSet moves;
    const auto box = (*made.all<Box>().begin())->id;
    const auto yard = [&](const std::string& label) {
        for (const auto& row : made.all<Yard>())
            if (row->label == label) return row->id;
        throw std::out_of_range(label);
    };
    moves.add(BoxStay{test::id<BoxStay>(910'000), 1, box, yard("West"), day("2027-05-02")});
    moves.add(BoxStay{test::id<BoxStay>(910'001), 1, box, yard("East"), day("2027-05-12")});
    const auto outlook = afresh(applied(made, moves).value());
    ASSERT_EQ(outlook->nucs.sides.size(), 1U);
    EXPECT_EQ(outlook->nucs.sides[0].rounds.size(), 1U) << "it is one nuc";
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 1U);
    EXPECT_EQ(outlook->nucs.cellsDays[0].placed, 1);
}

}  // namespace
}  // namespace tenthday
