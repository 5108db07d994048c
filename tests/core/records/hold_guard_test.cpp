// A hold for disease: nothing is planned out of the yard, what was done can be entered.
#include "records/hold_guard.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

/// Today is 10 June; Mill is held from the 5th to the 20th.
class HoldGuard : public ::testing::Test {
protected:
    HoldGuard() {
        test::SeasonMaker maker("2027-06-10");
        maker.yard("Mill").yard("Home", 2).builder("Box", "Home");
        maker.box("N1", "Mill", "7", "2027-04-01").box("N2", "Home", "7", "2027-04-01");
        side_ = maker.sideId("N2/-");
        builder_ = maker.builderId("Box");
        home_ = maker.yardId("Home");
        mill_ = maker.yardId("Mill");
        book_ = test::with(maker.snapshot(), YardNote{id<YardNote>(1),
                                                      1,
                                                      mill_,
                                                      YardNoteKind::Disease,
                                                      day("2027-06-05"),
                                                      day("2027-06-20"),
                                                      {}});
        for (const auto& box : book_.all<Box>())
            if (box->label == "N1") box_ = box->id;
    }
    template <class Row>
    [[nodiscard]] bool isRefused(const Row& row) const {
        ChangeSet changes;
        changes.add(row);
        return brokenHold(book_, changes).has_value();
    }
    [[nodiscard]] Stocking bees(const char* on, const char* donor) const {
        Stocking row;
        row.id = id<Stocking>(5);
        row.side = side_;
        row.day = day(on);
        row.donor = donor;
        return row;
    }

    Snapshot book_;
    Id<NucSide> side_;
    Id<Builder> builder_;
    Id<Yard> home_, mill_;
    Id<Box> box_;
};

TEST_F(HoldGuard, BeesAreNotPlannedOutOfIt) {
    EXPECT_TRUE(isRefused(bees("2027-06-12", "Mill 3")));
    EXPECT_TRUE(isRefused(bees("2027-06-20", "Home, mill")));
    EXPECT_FALSE(isRefused(bees("2027-06-21", "Mill 3"))) << "the hold is over";
    EXPECT_FALSE(isRefused(bees("2027-06-12", "Home")));
}

TEST_F(HoldGuard, WhatWasDoneIsRecorded) {
    EXPECT_FALSE(isRefused(bees("2027-06-10", "Mill")));
    EXPECT_FALSE(isRefused(bees("2027-06-08", "Mill")));
}

TEST_F(HoldGuard, MakeUpsBroodAndUpkeepToo) {
    MakeUp makeUp;
    makeUp.id = id<MakeUp>(5);
    makeUp.builder = builder_;
    makeUp.day = day("2027-06-12");
    makeUp.donors = "Mill 1, Home";
    EXPECT_TRUE(isRefused(makeUp));
    BuilderNote note;
    note.id = id<BuilderNote>(5);
    note.builder = builder_;
    note.day = day("2027-06-12");
    note.donor = "Mill";
    note.kind = BuilderNoteKind::BroodIn;
    EXPECT_TRUE(isRefused(note));
    note.kind = BuilderNoteKind::Feed;
    EXPECT_FALSE(isRefused(note));
    NucCare care;
    care.id = id<NucCare>(5);
    care.side = side_;
    care.day = day("2027-06-12");
    care.donor = "Mill";
    EXPECT_TRUE(isRefused(care));
    care.kind = NucCareKind::Thin;
    EXPECT_FALSE(isRefused(care)) << "nothing is taken from a donor";
}

TEST_F(HoldGuard, NucsStayThere) {
    BoxStay stay;
    stay.id = id<BoxStay>(99);
    stay.box = box_;
    stay.yard = home_;
    stay.from = day("2027-06-12");
    EXPECT_TRUE(isRefused(stay));
    stay.yard.reset();
    EXPECT_TRUE(isRefused(stay)) << "out of all yards it leaves it too";
    stay.yard = mill_;
    EXPECT_FALSE(isRefused(stay));
    stay.yard = home_;
    stay.from = day("2027-06-21");
    EXPECT_FALSE(isRefused(stay));
    stay.from = day("2027-06-09");
    EXPECT_FALSE(isRefused(stay)) << "it was moved";
}

TEST_F(HoldGuard, APlanThatSaidSoBeforeCanBePutRight) {
    const auto planned = test::with(book_, bees("2027-06-12", "Mill"));
    const auto row = planned.find(id<Stocking>(5));
    auto noted = *row;
    noted.note = "two frames";
    ChangeSet changes;
    changes.edit(row, noted);
    EXPECT_FALSE(brokenHold(planned, changes));
    noted.day = day("2027-06-14");
    changes = {};
    changes.edit(row, noted);
    EXPECT_TRUE(brokenHold(planned, changes));
    changes = {};
    changes.erase(row);
    EXPECT_FALSE(brokenHold(planned, changes));
}

TEST_F(HoldGuard, TheSentenceNamesYardAndDays) {
    ChangeSet changes;
    changes.add(bees("2027-06-12", "Mill"));
    EXPECT_EQ(englishText(*brokenHold(book_, changes)),
              "Mill is held until 2027-06-20 for disease: no bees, brood or nucs may leave it on "
              "2027-06-12; ask the bee inspector");
}

}  // namespace
}  // namespace tenthday
