#include "weather/flying_day.h"

namespace tenthday {

FlyingLimits flyingLimits(const Facts& facts) {
    return {facts[Fact::FlyTmaxC], facts[Fact::FlyWindMs], facts[Fact::FlyRainMm]};
}

std::optional<bool> isFlyingDay(const DayWeather& day, const FlyingLimits& limits) {
    if (day.flew) return day.flew;
    if (!day.tmaxC) return std::nullopt;
    return *day.tmaxC >= limits.tmaxC && day.windMs.value_or(0) <= limits.windMs &&
           day.rainMm.value_or(0) < limits.rainMm;
}

}  // namespace tenthday
