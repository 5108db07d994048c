#include "weather/flying_seasons.h"

#include <gtest/gtest.h>

#include "core/weather/seattle.h"

namespace tenthday {
namespace {

using test::day;

/// Days from one to another; on the named ones nothing flies.
std::vector<FlyingRecordDay> record(std::string_view from, std::string_view until,
                                    const std::vector<Day>& bad = {}) {
    std::vector<FlyingRecordDay> days;
    for (Day d = day(from); d <= day(until); d += Days{1})
        days.push_back({d, std::find(bad.begin(), bad.end(), d) == bad.end()});
    return days;
}

const DayWindow kJune{day("2027-06-01"), day("2027-06-30")};
const DayWindow kSummer{day("2027-04-01"), day("2027-09-30")};

TEST(FlyingSeasons, ArePastYearsByMonthAndDay) {
    const FlyingSeasons seasons(record("2024-01-01", "2025-12-31", {day("2024-06-10")}), kJune,
                                kJune, 0);
    ASSERT_EQ(seasons.size(), 2U);
    EXPECT_EQ(seasons.years(), (std::vector{2024, 2025}));
    EXPECT_FALSE(seasons.flies(0, day("2027-06-10")));
    EXPECT_TRUE(seasons.flies(0, day("2027-06-11")));
    EXPECT_TRUE(seasons.flies(1, day("2027-06-10")));
    EXPECT_EQ(seasons.chance(day("2027-06-10")), 0.5);
    EXPECT_FALSE(seasons.known(day("2027-06-10")));
}

TEST(FlyingSeasons, AreShiftedWithinTheRecord) {
    const FlyingSeasons seasons(record("2025-01-01", "2025-12-31", {day("2025-06-10")}), kJune,
                                kJune, 7);
    ASSERT_EQ(seasons.size(), 15U);
    for (std::size_t i = 0; i < seasons.size(); ++i) {
        const Days shift{static_cast<int>(i) - 7};
        EXPECT_FALSE(seasons.flies(i, day("2027-06-10") - shift)) << i;
        EXPECT_TRUE(seasons.flies(i, day("2027-06-10") - shift + Days{1})) << i;
    }
}

TEST(FlyingSeasons, AShiftThatLeavesTheRecordIsNoSeason) {
    // Of 30 days a shift may lose three.
    const FlyingSeasons seasons(record("2025-06-01", "2025-06-30"), kJune, kJune, 7);
    EXPECT_EQ(seasons.size(), 7U);
}

TEST(FlyingSeasons, WhatIsKnownStandsInAll) {
    auto days = record("2024-01-01", "2026-12-31");
    days.push_back({day("2027-06-05"), false});
    const FlyingSeasons seasons(days, kJune, kJune, 3);
    ASSERT_GT(seasons.size(), 10U);
    for (std::size_t i = 0; i < seasons.size(); ++i)
        EXPECT_FALSE(seasons.flies(i, day("2027-06-05")));
    EXPECT_EQ(seasons.known(day("2027-06-05")), false);
    EXPECT_EQ(seasons.chance(day("2027-06-05")), 0.0);
    EXPECT_EQ(seasons.chance(day("2027-06-06")), 1.0);
}

TEST(FlyingSeasons, AYearWithTooFewDaysDoesNotServe) {
    auto days = record("2025-06-01", "2025-06-26");  // 26 of 30
    EXPECT_EQ(FlyingSeasons(days, kJune, kJune, 0).size(), 0U);
    days = record("2025-06-01", "2025-06-27");
    EXPECT_EQ(FlyingSeasons(days, kJune, kJune, 0).size(), 1U);
    EXPECT_EQ(FlyingSeasons({}, kJune, kJune, 7).size(), 0U);
}

TEST(FlyingSeasons, ADayMissingInAllYearsIsLikeTheOneBefore) {
    auto days = record("2025-06-01", "2025-06-30", {day("2025-06-09")});
    std::erase_if(days, [](const auto& d) { return d.day == day("2025-06-10"); });
    const FlyingSeasons seasons(days, kJune, kJune, 0);
    ASSERT_EQ(seasons.size(), 1U);
    EXPECT_FALSE(seasons.flies(0, day("2027-06-10")));
    EXPECT_TRUE(seasons.flies(0, day("2027-06-11")));
}

TEST(FlyingSeasons, AMissingDayIsTakenFromAnotherYear) {
    auto days = record("2024-06-01", "2024-06-30", {day("2024-06-10")});
    for (const auto& d : record("2025-06-01", "2025-06-30"))
        if (d.day != day("2025-06-10")) days.push_back(d);
    const FlyingSeasons seasons(days, kJune, kJune, 0);
    ASSERT_EQ(seasons.size(), 2U);
    EXPECT_FALSE(seasons.flies(1, day("2027-06-10")));
    EXPECT_TRUE(seasons.flies(1, day("2027-06-09")));
}

TEST(FlyingSeasons, CrossTheNewYear) {
    const DayWindow season{day("2027-09-01"), day("2028-04-30")};
    const FlyingSeasons seasons(record("2020-01-01", "2026-12-31", {day("2024-12-31")}), season,
                                season, 0);
    // 2026's spring would be 2027's, which is not there yet.
    EXPECT_EQ(seasons.years(), (std::vector{2020, 2021, 2022, 2023, 2024, 2025}));
    EXPECT_FALSE(seasons.flies(4, day("2027-12-31")));
    EXPECT_TRUE(seasons.flies(4, day("2028-01-01")));
}

TEST(FlyingSeasons, DaysAroundTheSeasonComeFromTheYearNextToIt) {
    // The record ends with 2026: of its own winter after, nothing; 2024's is there.
    const FlyingSeasons seasons(record("2025-01-01", "2026-12-31", {day("2026-02-10")}), kSummer,
                                {day("2027-02-01"), day("2028-02-28")}, 0);
    ASSERT_EQ(seasons.years(), (std::vector{2025, 2026}));
    EXPECT_FALSE(seasons.flies(0, day("2028-02-10"))) << "2025's own winter";
    EXPECT_FALSE(seasons.flies(1, day("2028-02-10"))) << "the winter of the year before";
    EXPECT_TRUE(seasons.flies(1, day("2028-02-11")));
}

TEST(YearsBefore, KeepsMonthAndDay) {
    EXPECT_EQ(yearsBefore(day("2028-02-29"), 1), day("2027-02-28"));
    EXPECT_EQ(yearsBefore(day("2028-02-29"), 4), day("2024-02-29"));
    EXPECT_EQ(yearsBefore(day("2028-03-01"), 1), day("2027-03-01"));
}

TEST(FlyingSeasons, OfSeattleChanceIsTheShareOfItsYears) {
    const auto days = test::seattleFlying({18, 6.7, 1});
    const FlyingSeasons seasons(days, kSummer, kSummer, 0);
    ASSERT_EQ(seasons.years(), (std::vector{2012, 2013, 2014, 2015}));
    for (Day d = day("2027-04-01"); d <= day("2027-09-30"); d += Days{1}) {
        int flew = 0;
        for (const auto& [on, flying] : days)
            flew += flying && toText(on).substr(5) == toText(d).substr(5);
        EXPECT_EQ(seasons.chance(d), flew / 4.0) << toText(d);
    }
}

}  // namespace
}  // namespace tenthday
