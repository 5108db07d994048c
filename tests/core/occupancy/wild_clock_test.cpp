#include "occupancy/wild_clock.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

WildClock clock(BroodAge age) {
    return wildClockFrom({}, momentOf(day("2027-06-01"), Hour{8}), Facts(), age);
}
std::string at(Moment moment) { return toText(moment); }

// Larvae of 96, 72 and 36 h at dequeening: 9, 10 and 11.5 d (S118; derived).
TEST(WildClock, OfAllBroodRunsFromTheOldestLarva) {
    const auto all = clock(BroodAge::All);
    EXPECT_EQ(at(all.oldest), "2027-06-10T08:00");
    EXPECT_EQ(at(all.old), "2027-06-11T08:00");
    EXPECT_EQ(at(all.young), "2027-06-12T20:00");
}

TEST(WildClock, OfYoungBroodAndOfEggsRunsLater) {
    EXPECT_EQ(at(clock(BroodAge::Young).oldest), "2027-06-12T20:00");
    // 16 d from the egg, less the 3 d as one (S1, S2).
    EXPECT_EQ(at(clock(BroodAge::Eggs).oldest), "2027-06-14T08:00");
}

TEST(WildClock, LooksAreOnDays5To7And8To9) {  // common practice
    EXPECT_EQ(clock(BroodAge::Eggs).firstLook, (DayWindow{day("2027-06-06"), day("2027-06-08")}));
    EXPECT_EQ(clock(BroodAge::All).secondLook, (DayWindow{day("2027-06-09"), day("2027-06-10")}));
}

TEST(WildClock, IsTheOneTheOutlookHas) {
    test::SeasonMaker maker("2027-06-01");
    maker.yard("East").builder("Box", "East").makeUp("Box", "2027-06-01", 8, true);
    const auto outlook = maker.outlook();
    ASSERT_EQ(outlook->builders[0].clocks.size(), 1U);
    const auto& its = outlook->builders[0].clocks[0];
    EXPECT_EQ(its.oldest, clock(BroodAge::All).oldest);
    EXPECT_EQ(its.secondLook, clock(BroodAge::All).secondLook);
}

TEST(Queenless, AreStartersAndWhatWasMadeUp) {
    test::SeasonMaker maker("2027-06-01");
    maker.yard("East")
        .builder("Start", "East", BuilderKind::Starter)
        .builder("End", "East", BuilderKind::Finisher)
        .builder("Made", "East", BuilderKind::Finisher)
        .builder("Warm", "East", BuilderKind::Incubator)
        .makeUp("Made", "2027-06-01", 8, false);
    const auto book = maker.snapshot();
    const auto is = [&](const char* label) {
        return isQueenless(book, *book.find(maker.builderId(label)));
    };
    EXPECT_TRUE(is("Start"));
    EXPECT_FALSE(is("End"));
    EXPECT_TRUE(is("Made"));
    EXPECT_FALSE(is("Warm"));
}

}  // namespace
}  // namespace tenthday
