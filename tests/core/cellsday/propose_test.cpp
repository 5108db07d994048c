#include "core/cellsday/cells_day_fixture.h"

namespace tenthday {
namespace {

class ProposeTest : public test::CellsDayTest {};

TEST_F(ProposeTest, FewestYardsThenLongestReady) {
    open();
    propose();
    // Eight cells: Home with six and Mill with four, rather than all three yards.
    EXPECT_EQ(draft_.left(), 0);
    EXPECT_EQ(walk(), "M2 M3 M4 H2 H3 H4 H5 H6");
}

TEST_F(ProposeTest, WhatIsDraftedByHandStays) {
    open();
    give(draft_, 0, side("F1"));
    draft_.batches[0].others[static_cast<std::size_t>(CellTarget::Sold)] = 3;
    propose();
    EXPECT_EQ(other(CellTarget::Sold), 3);
    EXPECT_EQ(draft_.left(), 0);
    EXPECT_EQ(walk(), "H3 H4 H5 H6 F1") << "one yard more, and there the longest ready";
}

TEST_F(ProposeTest, TheYardsABatchNamesComeFirst) {
    maker_.share("9", "Fell", 3).share("9", "Mill", 1);
    rebuild();
    open();
    propose({});
    EXPECT_EQ(walk(), "M4 F1 F2 F3");
    EXPECT_EQ(draft_.left(), 4) << "no way was given for the rest";
    propose({{Way::Sold, 1}, {Way::OtherYards, 2}, {Way::Culled, {}}});
    EXPECT_EQ(other(CellTarget::Sold), 1);
    EXPECT_EQ(draft_.toNucs(), 6);
    EXPECT_EQ(walk(), "M2 M3 M4 F1 F2 F3") << "nearest: what is left of a yard he stops at";
    EXPECT_EQ(other(CellTarget::Culled), 1);
    EXPECT_EQ(draft_.left(), 0);
}

TEST_F(ProposeTest, TooFewNucsFollowTheOrderOfWays) {
    rebuild();
    count("9", 20);
    open();
    ASSERT_EQ(draft_.ripe(), 20);
    propose({{Way::OtherYards, {}}, {Way::Caged, 4}, {Way::Split, 2}});
    EXPECT_EQ(draft_.toNucs(), 13);
    EXPECT_EQ(other(CellTarget::Caged), 4);
    EXPECT_EQ(other(CellTarget::Split), 2);
    EXPECT_EQ(draft_.left(), 1) << "every way is full";
    propose({{Way::GivenAway, {}}});
    EXPECT_EQ(other(CellTarget::GivenAway), 1);
}

TEST_F(ProposeTest, SeveralBatchesShareTheFewestYards) {
    maker_.batch("10", "2027-06-11", 16, 30, "Box");
    rebuild();
    count("10", 2);
    count("9", 4);
    open();
    ASSERT_EQ(draft_.ripe(), 6);
    propose();
    EXPECT_EQ(walk(), "H1 H2 H3 H4 H5 H6") << "six cells of two batches fill one yard";
    EXPECT_EQ(draft_.batches[0].nucs.size(), 4U);
    EXPECT_EQ(draft_.batches[1].nucs.size(), 2U);
}

}  // namespace
}  // namespace tenthday
