// Queens left in their nucs for the winter: there in the season of their batch and in the next.
#include "occupancy/winter.h"

#include <gtest/gtest.h>

#include "occupancy/mite_spans.h"
#include "records/queen_verbs.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::id;

/// Batch 9 of 2027: its queen in N1 was left there on 10 August. N2 is empty.
class WinterTest : public ::testing::Test {
protected:
    WinterTest() {
        test::SeasonMaker maker("2027-08-20");
        maker.yard("Mill", 1).yard("Home", 2).builder("Box", "Home");
        maker.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-06-18");
        maker.box("N2", "Mill", "7", "2027-04-01");
        maker.batch("9", "2027-06-11", 15, 12, "Box").place("9", "N1/-", "2027-06-21", true);
        maker.outcome("9", OutcomeKind::FirstEggs, "2027-07-05", {}, "N1/-");
        side_ = maker.sideId("N1/-");
        Line hill{id<Line>(5), 1, "Hill"};
        Queen queen;
        queen.id = id<Queen>(7);
        queen.label = "27-014";
        queen.line = hill.id;
        CaughtQueen raised;
        raised.id = id<CaughtQueen>(8);
        raised.queen = queen.id;
        raised.batch = maker.batchId("9");
        raised.side = side_;
        raised.day = day("2027-08-10");
        Season next{id<Season>(2028), 1, "2028", day("2028-01-01"), day("2028-12-31")};
        book_ = test::with(maker.snapshot(), hill, queen, raised, next);
        stay(QueenPlace::Nuc, "2027-08-10");
    }
    void stay(QueenPlace place, const char* from) {
        QueenStay stay;
        stay.id = id<QueenStay>(++stays_);
        stay.queen = id<Queen>(7);
        stay.place = place;
        stay.from = day(from);
        book_ = test::with(book_, stay);
    }
    /// The book as it is read with the next season: without the batches of this one.
    [[nodiscard]] Snapshot inSpring(const char* today) const {
        auto next = book_;
        next.setAll(Table<Batch>());
        next.setAll(Table<BatchBar>());
        next.setAll(Table<BatchLoad>());
        next.setAll(Table<Placement>());
        next.setAll(Table<Outcome>());
        next.setSeason(id<Season>(2028));
        next.setToday(day(today));
        return next;
    }
    SideDay on(const Snapshot& snapshot, const char* when) {
        kept_ = test::freshOutlook(snapshot);
        for (const auto& side : kept_->nucs.sides)
            if (side.side->id == side_) return sideOn(side, day(when), snapshot.today());
        throw std::invalid_argument("no such nuc");
    }
    /// What the yard counts on a day in a state.
    [[nodiscard]] int counted(NucState state, const char* when) const {
        const auto at = (day(when) - kept_->season.first).count();
        return kept_->nucs.yards.at(0)
            .days.at(static_cast<std::size_t>(at))
            .stack.at(static_cast<std::size_t>(state));
    }

    Snapshot book_;
    Id<NucSide> side_;
    OutlookPtr kept_;
    std::uint64_t stays_ = 10;
};

TEST_F(WinterTest, InHerOwnSeasonHerNucIsHeldWithoutANote) {
    const auto is = on(book_, "2027-12-01");
    EXPECT_EQ(is.state, NucState::JudgedGood);
    EXPECT_FALSE(is.ready);
    EXPECT_FALSE(is.readyFrom);
}

TEST_F(WinterTest, InSpringSheIsThereWithHerNumber) {
    const auto spring = inSpring("2028-04-10");
    for (const char* when : {"2028-01-01", "2028-04-10", "2028-07-01"}) {
        const auto is = on(spring, when);
        EXPECT_EQ(is.state, NucState::JudgedGood) << when;
        EXPECT_EQ(is.chance, 1) << when;
        EXPECT_FALSE(is.ready) << when;
        EXPECT_FALSE(is.needsBrood) << when;
        EXPECT_FALSE(is.canStock) << when;
        EXPECT_EQ(is.likely, 0) << when;
        EXPECT_EQ(is.reason, NotReady::Laying) << when;
        EXPECT_FALSE(is.readyFrom) << when;
        ASSERT_NE(is.wintered, nullptr) << when;
        EXPECT_EQ(is.wintered->queen->label, "27-014") << when;
        EXPECT_EQ(counted(NucState::JudgedGood, when), 1) << when;
    }
    const auto& day = kept_->nucs.yards.at(0).days.at(100);
    EXPECT_EQ(day.numbers.ready, 0);
    EXPECT_EQ(day.numbers.needsBrood, 0);
}

// S85: queenless 24 h before a cell, and with days only the next day counts.
TEST_F(WinterTest, CaughtInSpringHerNucIsReadyTheDayAfter) {
    stay(QueenPlace::Bank, "2028-05-02");
    const auto spring = inSpring("2028-05-10");
    EXPECT_EQ(on(spring, "2028-05-02").state, NucState::JudgedGood) << "held on the catch day";
    const auto after = on(spring, "2028-05-03");
    EXPECT_EQ(after.state, NucState::Caught);
    EXPECT_EQ(after.readyFrom, day("2028-05-03"));
    EXPECT_TRUE(after.ready);
    EXPECT_EQ(counted(NucState::Caught, "2028-05-03"), 1);
}

TEST_F(WinterTest, LostInWinterHerBeesWantBroodAtOnce) {
    stay(QueenPlace::Lost, "2028-03-20");
    const auto is = on(inSpring("2028-04-01"), "2028-04-01");
    EXPECT_EQ(is.state, NucState::NoQueen);
    EXPECT_FALSE(is.ready);
    EXPECT_TRUE(is.needsBrood);
    EXPECT_EQ(counted(NucState::NoQueen, "2028-04-01"), 1);
}

TEST_F(WinterTest, BroodGivenAfterSheWasLostMakesHerNucReady) {
    stay(QueenPlace::Lost, "2028-03-20");
    NucCare care;
    care.id = id<NucCare>(40);
    care.side = side_;
    care.day = day("2028-04-01");
    care.kind = NucCareKind::BroodIn;
    care.broodFrames = Frames{1};
    care.openBrood = true;
    book_ = test::with(book_, care);
    const auto is = on(inSpring("2028-04-02"), "2028-04-02");
    EXPECT_EQ(is.state, NucState::NoQueen);
    EXPECT_FALSE(is.needsBrood);
    EXPECT_EQ(counted(NucState::NoQueen, "2028-04-02"), 1);
}

TEST_F(WinterTest, GoneInHerOwnSeasonHerRoundEnds) {
    stay(QueenPlace::Sold, "2027-09-01");
    EXPECT_EQ(on(book_, "2027-09-03").state, NucState::Caught);
    const auto spring = on(inSpring("2028-04-10"), "2028-04-10");
    EXPECT_EQ(spring.wintered, nullptr) << "gone before this season's batches";
    EXPECT_NE(spring.state, NucState::JudgedGood);
}

TEST_F(WinterTest, ACellRecordedInHerNucTakesHerPlace) {
    auto spring = inSpring("2028-06-20");
    test::SeasonMaker other("2028-06-20");
    Placement cell;
    cell.id = id<Placement>(1);
    cell.side = side_;
    cell.day = day("2028-06-10");
    cell.done = true;
    Batch batch;
    batch.id = id<Batch>(1);
    batch.label = "S1";
    batch.day = day("2028-05-31");
    batch.method = (*book_.all<Batch>().begin())->method;
    cell.batch = batch.id;
    spring = test::with(spring, batch, cell);
    EXPECT_EQ(on(spring, "2028-06-09").state, NucState::JudgedGood);
    const auto is = on(spring, "2028-06-11");
    ASSERT_NE(is.round, nullptr);
    EXPECT_EQ(is.round->batch, batch.id);
    EXPECT_EQ(is.wintered, nullptr);
}

TEST_F(WinterTest, NoOpenBroodIsNotClaimedWhileSheIsThere) {
    const auto spring = inSpring("2028-04-10");
    const auto outlook = test::freshOutlook(spring);
    for (const auto& side : outlook->nucs.sides) {
        if (side.side->id != side_) continue;
        for (const auto& span : nucBroodlessSpans(spring, side))
            EXPECT_TRUE((span.until && *span.until < day("2027-08-11")) ||
                        span.from > day("2029-01-01"))
                << toText(span.from);
    }
}

TEST_F(WinterTest, SheGoesBackIntoHerOwnNucOnly) {
    const auto fresh = [] { return id<QueenStay>(99).uuid; };
    const auto back =
        moveQueens(book_, {id<Queen>(7)}, QueenPlace::Nuc, day("2027-08-12"), {}, fresh);
    EXPECT_TRUE(back.ok());
    Queen bought;
    bought.id = id<Queen>(70);
    bought.label = "B";
    const auto refused = moveQueens(test::with(book_, bought), {bought.id}, QueenPlace::Nuc,
                                    day("2027-08-12"), {}, fresh);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("nuc"), std::string::npos) << refused.error().text;
}

}  // namespace
}  // namespace tenthday
