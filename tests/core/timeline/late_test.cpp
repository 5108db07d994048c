// A batch that waits for flying weather, and the days it waits.
#include "timeline/late.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// Grafted on 11 May 2027 at noon: queens out about 23 May, due to fly from 29 May on; a fine year
/// past.
SeasonMaker fineYear() {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("Box", "Mill").box("N1", "Mill", "7", "2027-04-01");
    maker.stock("N1/-", "2027-05-10").batch("1", "2027-05-11", 12, 20, "Box");
    return maker.weather("2026-01-01", "2026-12-31", 22);
}

std::int32_t lateOf(const SeasonMaker& maker) {
    const auto outlook = maker.outlook();
    return lateByWeather(outlook->batches[0]->timeline, *outlook->mating,
                         outlook->snapshot.facts());
}

TEST(Late, FairWeatherGivesEggsTenDaysAfterEmergence) {
    const auto outlook = fineYear().outlook();
    const auto& timeline = outlook->batches[0]->timeline;
    // First flights at 6, 7 or 8 days of age, as many at 6 as at 8; eggs 3 days later.
    EXPECT_EQ(fairFirstEggs(timeline, outlook->snapshot.facts()),
              timeline.find(Event::Emergence)->likely + std::chrono::hours{240});
}

TEST(Late, CountsTheDaysWithoutFlyingThatWereWaitedFor) {
    // Due to fly from 29 May: of a spell from the 25th to 6 June nine days count.
    EXPECT_EQ(lateOf(fineYear().weather("2027-05-25", "2027-06-06", 12)), 9);
}

TEST(Late, CountsForecastDaysAsRecordedOnes) {
    auto maker = fineYear();
    maker.weather("2027-05-25", "2027-05-30", 12).weather("2027-05-31", "2027-05-31", 21);
    // One day with flying is too short for those that fly a day or two later, or twice.
    EXPECT_EQ(lateOf(maker.weather("2027-06-01", "2027-06-06", 12)), 8);
}

TEST(Late, AShortSpellOrOneBeforeTheyFlyMakesNoneLate) {
    EXPECT_EQ(lateOf(fineYear()), 0);
    EXPECT_EQ(lateOf(fineYear().weather("2027-05-15", "2027-05-28", 12)), 0);
    EXPECT_EQ(lateOf(fineYear().weather("2027-05-29", "2027-05-30", 12)), 0) << "two days";
    EXPECT_EQ(lateOf(fineYear().weather("2027-06-06", "2027-06-20", 12)), 0) << "they have eggs";
}

TEST(Late, WithoutPastYearsNothingIsKnown) {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("Box", "Mill").batch("1", "2027-05-11", 12, 20, "Box");
    EXPECT_EQ(lateOf(maker.weather("2027-05-25", "2027-06-06", 12)), 0);
}

}  // namespace
}  // namespace tenthday
