/// First eggs season by season, beside the mean of all seasons.
#include "mating/season_eggs.h"

#include <gtest/gtest.h>

#include "core/weather/seattle.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;

const DayWindow kYear{day("2027-03-01"), day("2027-11-30")};
const Spread kEmerged(290, 12, 8);

std::shared_ptr<const FlyingSeasons> seattle() {
    return std::make_shared<const FlyingSeasons>(test::seattleFlying({18, 6.7, 1}), kYear, kYear,
                                                 7);
}

TEST(SeasonEggs, TheirMeanIsThatOfTheMatingTable) {
    const Facts facts;
    const MatingTable mating(facts, seattle());
    SeasonEggs seasons(facts, mating);
    EXPECT_EQ(seasons.seasons(), 60U);
    for (const auto* graft : {"2027-04-12T14:00", "2027-05-20T14:00", "2027-08-30T14:00"}) {
        const auto eggs = seasons.eggs(kEmerged, moment(graft));
        ASSERT_EQ(eggs.rows(), 60U);
        const auto laying = mating.laying(kEmerged, moment(graft));
        for (Day on = eggs.first; on <= eggs.last(); on += Days{1}) {
            double mean = 0;
            for (std::size_t season = 0; season < 60; ++season) mean += eggs.by(on, season) / 60;
            const double hour = hoursBetween(moment(graft), Moment{on + Days{1}});
            EXPECT_NEAR(mean, (1 - laying.neverMates) * laying.eggs.by(hour), 1e-5)
                << graft << ' ' << toText(on);
        }
    }
}

TEST(SeasonEggs, NoneComeWhereNoneFly) {
    std::vector<FlyingRecordDay> days;
    for (Day d = day("2025-01-01"); d <= day("2026-12-31"); d += Days{1})
        days.push_back({d, d < day("2026-01-01")});  // the first year all, the second none
    const Facts facts;
    const MatingTable mating(facts, std::make_shared<const FlyingSeasons>(days, kYear, kYear, 0));
    const auto eggs = SeasonEggs(facts, mating).eggs(kEmerged, moment("2027-05-20T14:00"));
    ASSERT_EQ(eggs.rows(), 2U);
    EXPECT_NEAR(eggs.by(eggs.last(), 0), 1, 1e-5);
    EXPECT_EQ(eggs.by(eggs.last(), 1), 0);
    EXPECT_EQ(eggs.by(eggs.first - Days{1}, 0), 0);
    // Out on 1 June, the first fly at 6 days of age and lay 3 days later.
    EXPECT_EQ(eggs.by(day("2027-06-05"), 0), 0);
    EXPECT_GT(eggs.by(day("2027-06-10"), 0), 0.1);
}

TEST(SeasonEggs, AChainIsSharedToo) {
    const Facts facts;
    const MatingTable mating(
        facts,
        std::make_shared<const FlyingChain>(
            kYear.first,
            std::vector<FlyingChainDay>(static_cast<std::size_t>(kYear.size()), {.15, {}}), .6));
    SeasonEggs seasons(facts, mating);
    const auto eggs = seasons.eggs(kEmerged, moment("2027-05-20T14:00"));
    ASSERT_EQ(eggs.rows(), seasons.seasons());
    double mean = 0;
    double least = 1;
    for (std::size_t season = 0; season < eggs.rows(); ++season) {
        mean += eggs.by(eggs.last(), season) / static_cast<double>(eggs.rows());
        least = std::min(least, eggs.by(eggs.last(), season));
    }
    const auto never = mating.laying(kEmerged, moment("2027-05-20T14:00")).neverMates;
    EXPECT_NEAR(mean, 1 - never, .03);
    EXPECT_GT(never, .05);
    EXPECT_EQ(least, 0);  // in some season none flies
}

TEST(SeasonEggs, WithoutWeatherTheFixedFigureServesAllSeasons) {
    const Facts facts;
    const MatingTable mating(facts);
    SeasonEggs seasons(facts, mating);
    EXPECT_EQ(seasons.seasons(), 1U);
    const auto eggs = seasons.eggs(kEmerged, moment("2027-05-20T14:00"));
    ASSERT_EQ(eggs.rows(), 1U);
    EXPECT_EQ(eggs.by(eggs.last(), 5), 1);
    // 290 h and 10.6 d after the graft: 12 June, 02:24 (S61).
    EXPECT_LT(eggs.by(day("2027-06-11"), 0), 0.5);
    EXPECT_GT(eggs.by(day("2027-06-12"), 0), 0.5);
}

TEST(SeasonEggs, OutsideTheWindowOfTheWeatherTheWholeIsTaken) {
    const Facts facts;
    const MatingTable mating(facts, seattle());
    const auto eggs = SeasonEggs(facts, mating).eggs(kEmerged, moment("2027-11-10T14:00"));
    EXPECT_EQ(eggs.rows(), 1U);
}

}  // namespace
}  // namespace tenthday
