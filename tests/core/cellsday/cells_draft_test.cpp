#include "core/cellsday/cells_day_fixture.h"

namespace tenthday {
namespace {

using test::day;

class CellsDraftTest : public test::CellsDayTest {};

TEST_F(CellsDraftTest, BeginsWithTheRipeCellsAndNoPlace) {
    open();
    ASSERT_EQ(draft_.batches.size(), 1U);
    EXPECT_EQ(draft_.ripe(), 8);
    EXPECT_EQ(draft_.left(), 8);
    EXPECT_TRUE(draft_.batches[0].wasCounted);
    EXPECT_EQ(draft_.toNucs(), 0);
}

TEST_F(CellsDraftTest, OfADayWithoutRipeCellsThereIsNothing) {
    open("2027-06-19");
    EXPECT_TRUE(draft_.batches.empty());
    open("2027-06-22");
    EXPECT_TRUE(draft_.batches.empty()) << "still to come, and the cells come out the day before";
}

TEST_F(CellsDraftTest, CellsWithoutARecordAreOpenUntilTheirQueensAreOut) {
    auto snapshot = outlook_->snapshot;
    snapshot.setToday(day("2027-06-23"));
    read(snapshot);
    open("2027-06-22");
    ASSERT_EQ(draft_.batches.size(), 1U);
    EXPECT_EQ(draft_.left(), 8);
    EXPECT_EQ(std::count_if(nucs_.begin(), nucs_.end(), [](const auto& n) { return n.isOpen(); }),
              13)
        << "first fit of the day before holds no nuc";
    snapshot.setToday(day("2027-07-10"));
    read(snapshot);
    open("2027-07-10");
    EXPECT_TRUE(draft_.batches.empty());
}

TEST_F(CellsDraftTest, NucsStandInWalkingOrder) {
    open();
    std::string boxes;
    for (const auto& nuc : nucs_) boxes += nuc.side->box->label + ' ';
    EXPECT_EQ(boxes, "M1 M2 M3 M4 H1 H2 H3 H4 H5 H6 F1 F2 F3 ");
    for (const auto& nuc : nucs_) EXPECT_EQ(nuc.fit, NucFit::Ready) << nuc.side->box->label;
    EXPECT_LT(nucs_[1].since, nucs_[0].since);
}

TEST_F(CellsDraftTest, ANucIsGivenOneCellAndTakenFromTheOther) {
    maker_.batch("10", "2027-06-11", 16, 30, "Box");
    rebuild();
    open();
    ASSERT_EQ(draft_.batches.size(), 2U);
    give(draft_, 0, side("M1"));
    EXPECT_EQ(draft_.batches[0].left(), 7);
    give(draft_, 0, side("M1"));
    EXPECT_EQ(draft_.batches[0].left(), 7) << "not twice";
    give(draft_, 1, side("M1"));
    EXPECT_EQ(draft_.batches[0].left(), 8);
    EXPECT_EQ(draft_.in(side("M1")), &draft_.batches[1]);
    takeOut(draft_, side("M1"));
    EXPECT_EQ(draft_.in(side("M1")), nullptr);
}

TEST_F(CellsDraftTest, ANumberForAYardIsMetByFirstFit) {
    open();
    const auto mill = maker_.yardId("Mill");
    setCellsIn(draft_, nucs_, 0, mill, 2);
    EXPECT_EQ(walk(), "M3 M4") << "longest ready";
    setCellsIn(draft_, nucs_, 0, mill, 9);
    EXPECT_EQ(cellsIn(draft_, nucs_, 0, mill), 4) << "there are no more nucs";
    setCellsIn(draft_, nucs_, 0, mill, 1);
    EXPECT_EQ(walk(), "M4");
    setCellsIn(draft_, nucs_, 0, mill, 0);
    EXPECT_EQ(walk(), "");
}

TEST_F(CellsDraftTest, NucsThatAreNotReadySayWhy) {
    maker_.batch("8", "2027-06-01", 15, 30, "Box").place("8", "M1/-", "2027-06-11", true);
    maker_.box("X1", "Fell", "7", "2027-04-01");
    rebuild();
    open();
    EXPECT_EQ(nucs_[0].fit, NucFit::Held);
    EXPECT_EQ(nucs_.back().side->box->label, "X1");
    EXPECT_EQ(nucs_.back().fit, NucFit::NotReady);
    EXPECT_EQ(nucs_.back().why, NotReady::NotStocked);
}

TEST_F(CellsDraftTest, WhatLaterBatchesGetByFirstFitBlocksNothing) {
    maker_.batch("10", "2027-06-14", 15, 30, "Box");
    rebuild();
    open();
    EXPECT_EQ(std::count_if(nucs_.begin(), nucs_.end(), [](const auto& n) { return n.isOpen(); }),
              13);
    // What is planned by name does.
    maker_.place("10", "M1/-", "2027-06-24", false);
    rebuild();
    open();
    EXPECT_EQ(nucs_[0].fit, NucFit::NotReady);
    EXPECT_EQ(nucs_[0].why, NotReady::None);
}

}  // namespace
}  // namespace tenthday
