#include "weather/fly_fit.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <vector>

namespace tenthday {
namespace {

std::int32_t tenths(double value) { return static_cast<std::int32_t>(std::lround(value * 10)); }

std::vector<DayWeather> tickedDays(std::span<const DayWeather> days) {
    std::vector<DayWeather> ticked;
    for (const auto& day : days)
        if (day.flew && day.tmaxC) ticked.push_back(day);
    return ticked;
}

int wrongWith(const FlyingLimits& limits, const std::vector<DayWeather>& ticked) {
    return static_cast<int>(std::count_if(ticked.begin(), ticked.end(), [&](DayWeather day) {
        const bool flew = *day.flew;
        day.flew.reset();
        return isFlyingDay(day, limits) != flew;
    }));
}

/// In tenths of °C. A limit's ticks change only from one highest temperature to the next: of each
/// stretch between two, what lies nearest to the default.
std::vector<std::int32_t> limitsToTry(const std::vector<DayWeather>& ticked,
                                      const FactEntry& entry) {
    const auto bounds = boundsOf(entry);
    const auto preferred = tenths(entry.value);
    auto from = static_cast<std::int32_t>(std::ceil(bounds.least * 10));
    const auto most = static_cast<std::int32_t>(std::floor(bounds.most * 10));
    std::set<std::int32_t> ends{most};
    for (const auto& day : ticked)
        if (const auto end = tenths(*day.tmaxC); end >= from && end < most) ends.insert(end);
    std::vector<std::int32_t> limits;
    for (const auto end : ends) {
        limits.push_back(std::clamp(preferred, from, end));
        from = end + 1;
    }
    return limits;
}

}  // namespace

std::optional<FlyFit> fitFlyingLimit(std::span<const DayWeather> days, const Facts& facts) {
    const auto ticked = tickedDays(days);
    const auto count = static_cast<int>(ticked.size());
    const auto flew = static_cast<int>(
        std::count_if(ticked.begin(), ticked.end(), [](const auto& day) { return *day.flew; }));
    if (count < kFitTicks || std::min(flew, count - flew) < kFitTicksEachWay) return std::nullopt;
    const auto& entry = facts.entry(Fact::FlyTmaxC);
    const auto now = flyingLimits(facts);
    FlyFit fit{now.tmaxC, count, count + 1, wrongWith(now, ticked)};
    const auto away = [&](double limit) { return std::abs(tenths(limit) - tenths(entry.value)); };
    for (const auto limit : limitsToTry(ticked, entry)) {
        const double tmaxC = limit / 10.0;
        const int wrong = wrongWith({tmaxC, now.windMs, now.rainMm}, ticked);
        if (wrong > fit.wrong || (wrong == fit.wrong && away(tmaxC) >= away(fit.tmaxC))) continue;
        fit.tmaxC = tmaxC;
        fit.wrong = wrong;
    }
    return fit;
}

}  // namespace tenthday
