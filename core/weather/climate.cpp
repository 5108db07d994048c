#include "weather/climate.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tenthday {
namespace {

double daysOf(date::year_month month) {
    const date::year_month_day_last end{month.year(), date::month_day_last{month.month()}};
    return static_cast<double>(unsigned{end.day()});
}

const MonthWeather& monthOf(const Climate& climate, date::year_month month) {
    return climate.months[unsigned{month.month()} - 1];
}

/// Share of the month's days that are dry.
double dryShare(const Climate& climate, date::year_month month) {
    const double rain = monthOf(climate, month).rainDays.value_or(0);
    return std::clamp(1 - rain / daysOf(month), 0.0, 1.0);
}

/// The two months a day lies between, and how far it is from the middle of its own.
struct Between {
    date::year_month own;
    date::year_month other;
    double towardsOther;  ///< 0 (middle of its own month) .. under 1 (middle of the other)
};

Between betweenMonths(Day day) {
    const date::year_month_day ymd{day};
    const date::year_month own{ymd.year(), ymd.month()};
    // A day stands for its noon.
    const double fromMiddle = unsigned{ymd.day()} - 0.5 - daysOf(own) / 2;
    const auto other = own + date::months{fromMiddle < 0 ? -1 : 1};
    return {own, other, std::abs(fromMiddle) / ((daysOf(own) + daysOf(other)) / 2)};
}

/// Normal upper tail from the limit on.
double warmChance(double meanC, double limitC, double sdC) {
    if (sdC <= 0) return meanC >= limitC ? 1 : 0;
    return 0.5 * std::erfc((limitC - meanC) / (sdC * std::numbers::sqrt2));
}

std::optional<double> chanceOn(const Climate& climate, Day day, const FlyingLimits& limits,
                               double tmaxSdC) {
    const auto [own, other, towards] = betweenMonths(day);
    const auto& ownC = monthOf(climate, own).tmaxC;
    const auto& otherC = towards > 0 ? monthOf(climate, other).tmaxC : ownC;
    if (!ownC || !otherC) return std::nullopt;
    const double mean = std::lerp(*ownC, *otherC, towards);
    const double dry = std::lerp(dryShare(climate, own), dryShare(climate, other), towards);
    return warmChance(mean, limits.tmaxC, tmaxSdC) * dry;
}

}  // namespace

std::vector<std::optional<double>> flyingChances(const Climate& climate, const DayWindow& window,
                                                 const FlyingLimits& limits, double tmaxSdC) {
    std::vector<std::optional<double>> chances;
    chances.reserve(static_cast<std::size_t>(window.size()));
    for (Day day = window.first; day <= window.last; day += Days{1})
        chances.push_back(chanceOn(climate, day, limits, tmaxSdC));
    return chances;
}

}  // namespace tenthday
