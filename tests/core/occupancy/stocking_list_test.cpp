#include "occupancy/stocking_list.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

/// Batch 9, cells out on Mon 21 June 2027, eight of them counted; five nucs at Mill, two stocked.
class StockingListTest : public ::testing::Test {
protected:
    StockingListTest() : maker_("2027-06-16") {
        maker_.yard("Mill", 1).yard("Home", 2).yard("Heath", 3).builder("Box", "Home");
        for (int i = 1; i <= 5; ++i)
            maker_.box("N" + std::to_string(i), "Mill", "3+3", "2027-04-01");
        maker_.batch("9", "2027-06-11", 15, 30, "Box");
        maker_.outcome("9", OutcomeKind::Ripe, "2027-06-16", 5);
    }
    StockingList list() {
        outlook_ = outlookOf(maker_.snapshot(), memo_);
        return stockingList(outlook_->snapshot, outlook_->nucs, outlook_->snapshot.today());
    }
    StockingList list(const Snapshot& snapshot) {
        outlook_ = outlookOf(snapshot, memo_);
        return stockingList(snapshot, outlook_->nucs, snapshot.today());
    }

    test::SeasonMaker maker_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
};

// S85: queenless before the cell; 24 h in use. With days only it means the day before.
TEST_F(StockingListTest, CellsWithoutANucWantBeesTheDayBeforeAtTheLatest) {
    maker_.stock("N1/A", "2027-06-10").stock("N1/B", "2027-06-10");
    const auto needs = list().needs;
    ASSERT_EQ(needs.size(), 3U) << "five cells, two nucs are ready";
    EXPECT_EQ(needs[0].side->box->label, "N2");
    for (const auto& need : needs) {
        EXPECT_EQ(need.why, StockingWhy::CellsDay);
        EXPECT_EQ(need.dayBy, day("2027-06-20"));
        EXPECT_FALSE(need.late);
        EXPECT_EQ(need.cellsDay, day("2027-06-21"));
        EXPECT_EQ(need.bees, BeesMl{300}) << "S86: about 300 ml where nothing else is said";
    }
}

TEST_F(StockingListTest, AStockingPlannedIsListedAndNotAskedForTwice) {
    maker_.stock("N1/A", "2027-06-10").stock("N1/B", "2027-06-18");
    const auto needs = list().needs;
    ASSERT_EQ(needs.size(), 4U) << "one is planned, three more are wanted";
    EXPECT_EQ(needs[0].why, StockingWhy::Planned);
    EXPECT_EQ(needs[0].dayBy, day("2027-06-18"));
}

TEST_F(StockingListTest, NothingIsWantedBeyondAWeekNorWhereAllAreReady) {
    for (const char* side : {"N1/A", "N1/B", "N2/A", "N2/B", "N3/A"})
        maker_.stock(side, "2027-06-10");
    EXPECT_TRUE(list().needs.empty());
    test::SeasonMaker early("2027-06-11");
    early.yard("Mill", 1).yard("Home", 2).builder("Box", "Home");
    early.box("N1", "Mill", "7", "2027-04-01").batch("9", "2027-06-11", 15, 30, "Box");
    EXPECT_TRUE(list(early.snapshot()).needs.empty()) << "the cells are ten days off";
}

TEST_F(StockingListTest, WhatCannotBeStockedInTimeIsWithoutANuc) {
    maker_ = test::SeasonMaker("2027-06-16");
    maker_.yard("Mill", 1).yard("Home", 2).builder("Box", "Home");
    maker_.box("N1", "Mill", "3+3", "2027-04-01").batch("9", "2027-06-11", 15, 30, "Box");
    maker_.outcome("9", OutcomeKind::Ripe, "2027-06-16", 5);
    const auto short_ = list();
    EXPECT_EQ(short_.needs.size(), 2U);
    EXPECT_EQ(short_.withoutNuc, 3);
}

TEST_F(StockingListTest, ANucThatWantsBroodGetsAFrame) {
    maker_ = test::SeasonMaker("2027-06-16");
    maker_.yard("Mill", 1).yard("Home", 2).builder("Box", "Home");
    maker_.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-05-01", false);
    maker_.batch("9", "2027-06-11", 15, 30, "Box");
    maker_.outcome("9", OutcomeKind::Ripe, "2027-06-16", 1);
    const auto needs = list().needs;
    ASSERT_EQ(needs.size(), 1U);
    EXPECT_EQ(needs[0].why, StockingWhy::OpenBrood);
    EXPECT_EQ(needs[0].brood, Frames{1});
    EXPECT_FALSE(needs[0].bees);
    EXPECT_EQ(needs[0].dayBy, day("2027-06-20"));
}

TEST_F(StockingListTest, YardsTheBatchNamesComeFirst) {
    maker_.box("H1", "Heath", "3+3", "2027-04-01").share("9", "Heath", 2);
    const auto needs = list().needs;
    ASSERT_EQ(needs.size(), 5U);
    EXPECT_EQ(std::count_if(needs.begin(), needs.end(),
                            [](const auto& need) { return need.side->box->label == "H1"; }),
              2);
}

TEST_F(StockingListTest, TheDonorIsOneThatGaveLeastIsNotHeldAndNotTheNucsOwnYard) {
    const auto donors = [](Snapshot snapshot) {
        ChangeSet changes;
        for (const auto& yard : snapshot.all<Yard>()) {
            auto donor = *yard;
            donor.roles = "donor";
            changes.edit(yard, donor);
        }
        return applied(snapshot, changes).value();
    };
    auto snapshot = donors(maker_.snapshot());
    Stocking given;
    given.id = test::id<Stocking>(7);
    given.side = maker_.sideId("N5/A");
    given.day = day("2027-06-10");
    given.beesMl = BeesMl{1000};
    given.donor = "Home";
    snapshot = test::with(snapshot, given);
    auto needs = list(snapshot).needs;
    ASSERT_EQ(needs.size(), 4U);
    EXPECT_EQ(needs[0].donor, "Heath") << "Home gave a litre, and Mill's own bees fly back";
    EXPECT_EQ(needs[0].bees, BeesMl{1000}) << "as nucs were stocked last";
    EXPECT_EQ(needs[2].donor, "Home") << "by turns: Heath has given two by then";
    YardNote hold;
    hold.id = test::id<YardNote>(8);
    hold.yard = maker_.yardId("Heath");
    hold.kind = YardNoteKind::Disease;
    hold.from = day("2027-06-01");
    hold.until = day("2027-08-01");
    snapshot = test::with(snapshot, hold);
    for (const auto& need : list(snapshot).needs) EXPECT_EQ(need.donor, "Home");
    const auto gifts = donorGifts(snapshot, day("2027-06-16"));
    ASSERT_EQ(gifts.size(), 3U);
    EXPECT_FALSE(gifts.back().mayGive());
    EXPECT_EQ(gifts.back().donor, "Heath");
    EXPECT_EQ(gifts[1].beesMl, 1000);
}

// Common practice: two brood frames and a litre of bees in one brood cycle, of one colony.
TEST_F(StockingListTest, AColonyGivesNoMoreThanItMayInACycle) {
    maker_.stock("N1/A", "2027-06-01");
    auto row = *maker_.snapshot().all<Stocking>().begin();
    Stocking given = *row;
    given.donor = "Heath 4";
    given.beesMl = BeesMl{700};
    given.broodFrames = Frames{1};
    ChangeSet changes;
    changes.edit(row, given);
    NucCare thinned;
    thinned.id = test::id<NucCare>(3);
    thinned.side = given.side;
    thinned.day = day("2027-06-09");
    thinned.kind = NucCareKind::Thin;
    thinned.donor = "Heath 4";
    thinned.beesMl = BeesMl{300};
    changes.add(thinned);
    const auto book = applied(maker_.snapshot(), changes).value();
    const auto gifts = donorGifts(book, day("2027-06-16"));
    ASSERT_EQ(gifts.size(), 1U);
    EXPECT_EQ(gifts[0].beesMl, 700) << "thinned bees came out of the nuc, not of a donor";
    const auto left = mayStillGive(gifts[0], book.facts());
    EXPECT_EQ(left.bees, BeesMl{300});
    EXPECT_EQ(left.brood, Frames{1});
    const auto needs = list(book).needs;
    ASSERT_FALSE(needs.empty());
    for (const auto& need : needs)
        EXPECT_EQ(need.donor, "") << "as nucs were stocked last, 700 ml: it may not give so much";
    const auto later = donorGifts(book, day("2027-07-16"));
    EXPECT_EQ(mayStillGive(later[0], book.facts()).bees, BeesMl{1000}) << "a new cycle";
    auto yard = gifts[0];
    yard.isYard = true;
    EXPECT_EQ(mayStillGive(yard, book.facts()).bees, BeesMl{1000}) << "each of its colonies";
    yard.hold = std::make_shared<const YardNote>();
    EXPECT_EQ(mayStillGive(yard, book.facts()).brood, Frames{0});
}

TEST(Donors, StandWithCommasOrSemicolonsBetween) {
    EXPECT_EQ(donorsIn("Mill 3, Heath;  Home 1 ;"),
              (std::vector<std::string>{"Mill 3", "Heath", "Home 1"}));
    EXPECT_TRUE(donorsIn(" ").empty());
}

}  // namespace
}  // namespace tenthday
