#include "core/cellsday/cells_day_fixture.h"

namespace tenthday {
namespace {

using test::day;

class CellsVerbsTest : public test::CellsDayTest {};

TEST_F(CellsVerbsTest, APlanNamesEachNucAndIsReplacedByTheNext) {
    open();
    propose();
    const auto walked = walk();
    keep(CellsKept::Planned);
    EXPECT_EQ(placements(), 8U);
    EXPECT_EQ(walk(), walked);
    EXPECT_EQ(draft_.left(), 0);
    for (const auto& row : outlook_->snapshot.all<Placement>()) {
        EXPECT_FALSE(row->done);
        EXPECT_EQ(row->hour, Hour{15}) << "with the batch's own hour no date of it moves";
    }
    // One nuc less, one cell sold: seven rows are the same rows.
    takeOut(draft_, draft_.batches[0].nucs[0]);
    ++draft_.batches[0].others[static_cast<std::size_t>(CellTarget::Sold)];
    const auto changes = changesOf(*outlook_, draft_, CellsKept::Planned, ids());
    ASSERT_TRUE(changes.ok());
    EXPECT_EQ(changes.value().rows.size(), 2U);
    keep(CellsKept::Planned);
    EXPECT_EQ(placements(), 8U);
    EXPECT_EQ(other(CellTarget::Sold), 1);
}

TEST_F(CellsVerbsTest, APlanKeptAgainChangesNothing) {
    open();
    propose();
    keep(CellsKept::Planned);
    const auto changes = changesOf(*outlook_, draft_, CellsKept::Planned, ids());
    ASSERT_TRUE(changes.ok());
    EXPECT_TRUE(changes.value().isEmpty());
}

TEST_F(CellsVerbsTest, APlanMayLeaveCellsWithoutAPlaceAndARecordMayNot) {
    open();
    give(draft_, 0, side("M1"));
    EXPECT_EQ(refusal(CellsKept::Done), "9: 7 cells have no place yet");
    EXPECT_EQ(refusal(CellsKept::Planned), "");
    draft_.batches[0].others[static_cast<std::size_t>(CellTarget::Culled)] = 9;
    EXPECT_EQ(refusal(CellsKept::Planned), "9: 2 cells more are given away than are ripe");
}

TEST_F(CellsVerbsTest, DoneIsRecordedAndNeverTouchedAgain) {
    open();
    propose({{Way::Culled, {}}});
    keep(CellsKept::Planned);
    keep(CellsKept::Done);
    ASSERT_EQ(placements(), 8U);
    EXPECT_EQ(draft_.batches[0].done(), 8);
    EXPECT_EQ(draft_.batches[0].drafted(), 0);
    EXPECT_EQ(draft_.left(), 0);
    const auto before = outlook_->snapshot;
    give(draft_, 0, draft_.batches[0].doneNucs[0]);
    EXPECT_EQ(draft_.batches[0].drafted(), 0) << "a cell is in it already";
    keep(CellsKept::Planned);
    EXPECT_TRUE(outlook_->snapshot.sameContent(before));
    for (const auto& stop : placementList(draft_, nucs_)) EXPECT_EQ(stop.nuc->fit, NucFit::Held);
}

TEST_F(CellsVerbsTest, CellsThatAllHaveAPlaceAreCountedByIt) {
    read(maker_.snapshot());  // nobody has counted
    open();
    EXPECT_FALSE(draft_.batches[0].wasCounted);
    propose();
    const auto ripe = draft_.ripe();
    keep(CellsKept::Planned);
    EXPECT_TRUE(outlook_->snapshot.all<Outcome>().empty()) << "a plan counts nothing";
    keep(CellsKept::Done);
    ASSERT_EQ(outlook_->snapshot.all<Outcome>().size(), 1U);
    EXPECT_EQ((*outlook_->snapshot.all<Outcome>().begin())->count, Cells{ripe});
    EXPECT_TRUE(draft_.batches[0].wasCounted);
    EXPECT_EQ(draft_.left(), 0);
}

TEST_F(CellsVerbsTest, WhatIsStillToComeCannotBeDone) {
    auto snapshot = outlook_->snapshot;
    snapshot.setToday(day("2027-06-20"));
    read(snapshot);
    open();
    propose();
    EXPECT_EQ(refusal(CellsKept::Done), "9: that day is still to come");
    EXPECT_EQ(refusal(CellsKept::Planned), "");
    draft_.batches[0].counted = 8;
    EXPECT_EQ(refusal(CellsKept::Planned), "9: that day is still to come") << "nobody has counted";
}

TEST_F(CellsVerbsTest, ANucWithAnotherCellIsRefused) {
    maker_.batch("8", "2027-06-01", 15, 30, "Box").place("8", "M1/-", "2027-06-11", true);
    rebuild();
    open();
    give(draft_, 0, side("M1"));
    EXPECT_EQ(refusal(CellsKept::Planned), "9: another cell or queen is in nuc M1/-");
}

TEST_F(CellsVerbsTest, ANewCountIsKeptWithThePlaces) {
    open();
    draft_.batches[0].counted = 5;
    propose();
    EXPECT_EQ(draft_.toNucs(), 5);
    keep(CellsKept::Done);
    EXPECT_EQ(draft_.ripe(), 5);
    EXPECT_EQ(outlook_->snapshot.all<Outcome>().size(), 1U) << "in place of the count before";
    EXPECT_NEAR(outlook_->batches[0]->timeline.counts.ripe, 5, 1e-9);
    draft_.batches[0].counted = 4;
    EXPECT_EQ(refusal(CellsKept::Done), "9: 5 cells of the day are recorded already");
}

TEST_F(CellsVerbsTest, APlanOfADayThatIsOverGoesOverToToday) {
    open();
    propose();
    keep(CellsKept::Planned);
    auto snapshot = outlook_->snapshot;
    snapshot.setToday(day("2027-06-22"));
    read(snapshot);
    open("2027-06-22");
    ASSERT_EQ(draft_.batches.size(), 1U);
    EXPECT_EQ(draft_.left(), 0);
    keep(CellsKept::Done);
    EXPECT_EQ(placements(), 8U);
    for (const auto& row : outlook_->snapshot.all<Placement>()) {
        EXPECT_TRUE(row->done);
        EXPECT_EQ(row->day, day("2027-06-22"));
    }
    EXPECT_EQ(draft_.left(), 0);
}

TEST_F(CellsVerbsTest, ThePlanIsWhatTheChartTells) {
    open();
    propose();
    keep(CellsKept::Planned);
    ASSERT_FALSE(outlook_->nucs.cellsDays.empty());
    const auto& cells = outlook_->nucs.cellsDays.front();
    EXPECT_EQ(cells.day, day("2027-06-21"));
    EXPECT_EQ(cells.ripe, 8);
    EXPECT_EQ(cells.placed, 8);
    EXPECT_EQ(cells.left(), 5);
    for (const auto& stop : placementList(draft_, nucs_)) {
        ASSERT_EQ(stop.nuc->side->rounds.size(), 1U);
        EXPECT_TRUE(stop.nuc->side->rounds[0].named);
    }
}

}  // namespace
}  // namespace tenthday
