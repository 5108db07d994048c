#include "weather/climate.h"

#include <gtest/gtest.h>

#include <array>

#include "core/weather/seattle.h"

namespace tenthday {
namespace {

using test::day;

constexpr FlyingLimits kLimits{18, 6.7, 1};

Climate everyMonth(std::optional<double> tmaxC, std::optional<double> rainDays) {
    Climate climate;
    climate.months.fill({tmaxC, rainDays});
    return climate;
}

std::optional<double> chanceOn(const Climate& climate, std::string_view on, double sd = 4,
                               const FlyingLimits& limits = kLimits) {
    return flyingChances(climate, {day(on), day(on)}, limits, sd).at(0);
}

/// Normal upper tails from a table: 0 sd 0.5, 1 sd 0.158655, 2 sd 0.022750.
TEST(FlyingChances, AreTheUpperTailOfTheMaximum) {
    EXPECT_NEAR(*chanceOn(everyMonth(18, 0), "2027-06-10"), 0.5, 1e-12);
    EXPECT_NEAR(*chanceOn(everyMonth(14, 0), "2027-06-10"), 0.158655, 1e-6);
    EXPECT_NEAR(*chanceOn(everyMonth(22, 0), "2027-06-10"), 1 - 0.158655, 1e-6);
    EXPECT_NEAR(*chanceOn(everyMonth(14, 0), "2027-06-10", 2), 0.022750, 1e-6);
    EXPECT_NEAR(*chanceOn(everyMonth(18, 0), "2027-06-10", 4, {20, 6.7, 1}), 0.308538, 1e-6);
    EXPECT_EQ(*chanceOn(everyMonth(18, 0), "2027-06-10", 0), 1) << "at least the limit";
    EXPECT_EQ(*chanceOn(everyMonth(17.9, 0), "2027-06-10", 0), 0);
}

TEST(FlyingChances, GoDownWithTheRainDays) {
    Climate climate;
    climate.months[5] = {18, 12};  // June, 30 days
    // The middle of June is between the 15th and 16th: half a day of 30.5 towards a neighbour.
    climate.months[4] = climate.months[6] = {18, 0};
    const double june = 1 - 12.0 / 30;
    const double towards = 0.5 / 30.5;
    EXPECT_NEAR(*chanceOn(climate, "2027-06-15"), 0.5 * (june + (1 - june) * towards), 1e-12);
    EXPECT_NEAR(*chanceOn(climate, "2027-06-16"), 0.5 * (june + (1 - june) * towards), 1e-12);
    EXPECT_NEAR(*chanceOn(everyMonth(18, {}), "2027-06-16"), 0.5, 1e-12) << "nobody measured";
    EXPECT_EQ(*chanceOn(everyMonth(18, 31), "2027-07-16"), 0);
}

/// By hand: the 16th of a month of 31 days is its middle. From there to the middle of June are
/// 30.5 days, to the 1st of June 16, so on that day the mean is 10 + 16 / 30.5 * 8 °C.
TEST(FlyingChances, MeansGoStraightFromMiddleToMiddle) {
    Climate climate;
    climate.months[4].tmaxC = 10;
    climate.months[5].tmaxC = 18;
    climate.months[3].tmaxC = 10;
    EXPECT_EQ(*chanceOn(climate, "2027-05-16", 0, {10, 6.7, 1}), 1);
    EXPECT_EQ(*chanceOn(climate, "2027-05-16", 0, {10.001, 6.7, 1}), 0);
    const double mean = 10 + 16.0 / 30.5 * 8;
    EXPECT_EQ(*chanceOn(climate, "2027-06-01", 0, {mean - 1e-9, 6.7, 1}), 1);
    EXPECT_EQ(*chanceOn(climate, "2027-06-01", 0, {mean + 1e-9, 6.7, 1}), 0);
    EXPECT_NEAR(*chanceOn(climate, "2027-06-01", 4, {mean, 6.7, 1}), 0.5, 1e-9);
}

TEST(FlyingChances, GoRoundTheYear) {
    Climate climate;
    climate.months[11].tmaxC = 14;
    climate.months[0].tmaxC = 22;
    // 31 days from middle to middle: the 31st of December and the 1st of January lie 15 and 16 on.
    const double before = 14 + 15.0 / 31 * 8;
    const double after = 14 + 16.0 / 31 * 8;
    EXPECT_NEAR(*chanceOn(climate, "2027-12-31", 4, {before, 6.7, 1}), 0.5, 1e-9);
    EXPECT_NEAR(*chanceOn(climate, "2028-01-01", 4, {after, 6.7, 1}), 0.5, 1e-9);
}

TEST(FlyingChances, FebruaryIsAsLongAsItIs) {
    Climate climate;
    climate.months[0] = climate.months[2] = {18, 0};
    climate.months[1] = {18, 14};
    EXPECT_NEAR(*chanceOn(climate, "2028-02-15"), 0.5 * (1 - 14.0 / 29), 1e-12) << "its middle";
    const double towards = 0.5 / 29.5;  // 28 days
    EXPECT_NEAR(*chanceOn(climate, "2027-02-15"), 0.5 * (0.5 + 0.5 * towards), 1e-12);
}

TEST(FlyingChances, AreNothingWhereAMonthLacksItsMaximum) {
    Climate climate = everyMonth(18, 5);
    climate.months[6].tmaxC.reset();  // July
    const auto chances = flyingChances(climate, {day("2027-06-01"), day("2027-08-31")}, kLimits, 4);
    ASSERT_EQ(chances.size(), 92U);
    for (std::size_t i = 0; i < chances.size(); ++i)  // 16 June to 15 August
        EXPECT_EQ(chances[i].has_value(), i < 15 || i >= 76) << i;
    EXPECT_TRUE(flyingChances(climate, {day("2027-06-02"), day("2027-06-01")}, kLimits, 4).empty());
}

/// Twelve means stand in for the record they are made from: by months of the flying season the
/// chances agree with the days counted, to within a tenth of the days.
TEST(FlyingChances, OfSeattlesMeansAreNearTheDaysCounted) {
    const auto days = test::seattle();
    const auto chances =
        flyingChances(test::seattleClimate(), {days.front().first, days.back().first}, kLimits,
                      Facts()[Fact::TmaxSdC]);
    ASSERT_EQ(chances.size(), days.size());
    std::array<double, 13> flew{}, expected{}, count{};
    for (std::size_t i = 0; i < days.size(); ++i) {
        const auto month = unsigned{date::year_month_day{days[i].first}.month()};
        flew[month] += isFlyingDay(days[i].second, kLimits).value() ? 1 : 0;
        expected[month] += chances[i].value();
        count[month] += 1;
    }
    for (std::size_t m = 4; m <= 9; ++m)
        EXPECT_NEAR(expected[m] / count[m], flew[m] / count[m], 0.1) << m;
}

}  // namespace
}  // namespace tenthday
