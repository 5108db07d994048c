#include "occupancy/nuc_upkeep.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

class NucUpkeep : public ::testing::Test {
protected:
    NucUpkeep() : maker_("2027-07-01") {
        maker_.yard("Mill").yard("Home").builder("Box", "Home");
        maker_.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-05-01", false);
        maker_.box("N2", "Mill", "7", "2027-04-01");
        read(maker_.snapshot());
    }
    void read(const Snapshot& snapshot) { outlook_ = outlookOf(snapshot, memo_); }
    Result<ChangeSet> care(CarePlan plan, const std::string& side = "N1/-") {
        return careForNucs(outlook_->nucs, {maker_.sideId(side)}, plan,
                           [this] { return test::id<NucCare>(++next_).uuid; });
    }
    Result<ChangeSet> takeBack(const char* on) {
        return takeBackCare(outlook_->snapshot, {maker_.sideId("N1/-")}, day(on));
    }
    void apply(const Result<ChangeSet>& changes) {
        ASSERT_TRUE(changes.ok()) << changes.error().text;
        read(applied(outlook_->snapshot, changes.value()).value());
    }
    static CarePlan plan(NucCareKind kind, const char* on, std::optional<int> ml = {},
                         std::optional<int> frames = {}, bool open = false) {
        CarePlan plan;
        plan.kind = kind;
        plan.day = day(on);
        if (ml) plan.beesMl = BeesMl{*ml};
        if (frames) plan.broodFrames = Frames{*frames};
        plan.openBrood = open;
        return plan;
    }
    NucStrength strength(const char* on) {
        return strengthOn(outlook_->snapshot, outlook_->nucs.sides[0], day(on));
    }
    SideDay on(const char* text) {
        return sideOn(outlook_->nucs.sides[0], day(text), outlook_->snapshot.today());
    }

    test::SeasonMaker maker_;
    OutlookMemo memo_;
    OutlookPtr outlook_;
    std::uint64_t next_ = 910'000;
};

// S89, S90: laying workers after 21 to 28 days without open brood.
TEST_F(NucUpkeep, OpenBroodPutInPutsOffTheNeedForIt) {
    EXPECT_FALSE(on("2027-05-21").needsBrood);
    EXPECT_TRUE(on("2027-05-22").needsBrood) << "21 days after bees without brood";
    apply(care(plan(NucCareKind::BroodIn, "2027-05-25", {}, 1, true)));
    EXPECT_TRUE(on("2027-05-25").needsBrood) << "at the start of that day's work";
    EXPECT_FALSE(on("2027-05-26").needsBrood);
    EXPECT_TRUE(on("2027-05-26").ready);
    // Sealed after 9 days (S27), then 21 days more.
    EXPECT_FALSE(on("2027-06-23").needsBrood);
    EXPECT_TRUE(on("2027-06-24").needsBrood);
}

TEST_F(NucUpkeep, SealedBroodAndFeedDoNot) {
    apply(care(plan(NucCareKind::BroodIn, "2027-05-20", {}, 1, false)));
    apply(care(plan(NucCareKind::Feed, "2027-05-20", {}, {}, true)));
    apply(care(plan(NucCareKind::Thin, "2027-05-20", 100, {}, true)));
    EXPECT_TRUE(on("2027-05-22").needsBrood);
}

TEST_F(NucUpkeep, BroodGivenToAHeldNucCountsOnceItIsFree) {
    maker_.batch("9", "2027-05-01", 15, 10, "Box").place("9", "N1/-", "2027-05-11", true);
    maker_.outcome("9", OutcomeKind::NoQueen, "2027-06-20", {}, "N1/-");
    read(maker_.snapshot());
    EXPECT_TRUE(on("2027-06-21").needsBrood) << "her virgin was lost by the 20th of May";
    apply(care(plan(NucCareKind::BroodIn, "2027-06-10", {}, 1, true)));
    EXPECT_FALSE(on("2027-06-21").needsBrood);
    EXPECT_TRUE(on("2027-06-21").ready);
}

TEST_F(NucUpkeep, BeesAreCountedAndWornAfterTheirRounds) {
    EXPECT_EQ(strength("2027-05-01").freshOn, std::nullopt) << "not stocked at the start of work";
    EXPECT_EQ(strength("2027-05-02").freshOn, day("2027-05-01"));
    for (int i = 0; i < 3; ++i) {
        const auto label = std::to_string(i + 1);
        const auto month = "2027-0" + std::to_string(5 + i);
        maker_.batch(label, month + "-01", 15, 10, "Box").place(label, "N1/-", month + "-11", true);
        maker_.outcome(label, OutcomeKind::Catch, month + "-28", {}, "N1/-");
    }
    read(maker_.snapshot());
    EXPECT_EQ(strength("2027-07-11").rounds, 2);
    EXPECT_FALSE(strength("2027-07-11").isWorn());
    EXPECT_EQ(strength("2027-07-12").rounds, 3);
    EXPECT_TRUE(strength("2027-07-12").isWorn()) << "common practice: three rounds";
    apply(care(plan(NucCareKind::Boost, "2027-06-05", 200)));
    EXPECT_EQ(strength("2027-07-12").rounds, 2);
    EXPECT_EQ(strength("2027-07-12").freshOn, day("2027-06-05"));
    EXPECT_FALSE(strength("2027-07-12").isCounted) << "of the first bees no amount is noted";
    apply(care(plan(NucCareKind::Thin, "2027-06-06", 50)));
    EXPECT_EQ(strength("2027-07-12").beesMl, 150);
    EXPECT_EQ(strength("2027-07-12").lastCare, day("2027-06-06"));
}

TEST_F(NucUpkeep, WhatCannotBeIsRefused) {
    EXPECT_FALSE(care(plan(NucCareKind::Boost, "2027-06-01")).ok()) << "nothing is put in";
    EXPECT_FALSE(care(plan(NucCareKind::BroodIn, "2027-06-01", {}, 0)).ok());
    EXPECT_TRUE(care(plan(NucCareKind::Feed, "2027-06-01")).ok());
    EXPECT_FALSE(care(plan(NucCareKind::Feed, "2027-04-30")).ok()) << "not stocked by then";
    EXPECT_FALSE(care(plan(NucCareKind::Feed, "2027-06-01"), "N2/-").ok());
    EXPECT_FALSE(care(plan(NucCareKind::Feed, "2027-03-01")).ok()) << "it stands nowhere then";
}

TEST_F(NucUpkeep, WhatDoesNotBelongToAKindIsNotKept) {
    auto feed = plan(NucCareKind::Feed, "2027-06-01", 300, 2, true);
    feed.donor = "Home";
    apply(care(feed));
    const auto row = *outlook_->snapshot.all<NucCare>().begin();
    EXPECT_FALSE(row->beesMl);
    EXPECT_FALSE(row->broodFrames);
    EXPECT_FALSE(row->openBrood);
    EXPECT_TRUE(row->donor.empty());
}

TEST_F(NucUpkeep, WhatWasNotedByMistakeIsTakenBackOfThatDayAlone) {
    const auto bare = outlook_->snapshot;
    apply(care(plan(NucCareKind::Feed, "2027-05-10")));
    apply(care(plan(NucCareKind::BroodIn, "2027-05-12", {}, 1, true)));
    EXPECT_FALSE(takeBack("2027-05-11").ok());
    apply(takeBack("2027-05-12"));
    EXPECT_EQ(outlook_->snapshot.all<NucCare>().size(), 1U);
    apply(takeBack("2027-05-10"));
    EXPECT_TRUE(outlook_->snapshot.sameContent(bare));
}

}  // namespace
}  // namespace tenthday
