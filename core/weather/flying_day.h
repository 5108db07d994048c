/// @file flying_day.h  Whether virgins could fly on a day, by its weather.
#pragma once
#include <optional>

#include "facts/facts.h"

namespace tenthday {

/// What is known of one day.
struct DayWeather {
    std::optional<double> tmaxC;   ///< highest temperature, °C
    std::optional<double> rainMm;  ///< rain, mm
    std::optional<double> windMs;  ///< wind, m/s
    std::optional<bool> flew;      ///< somebody looked
};

/// A flying day is as warm as this, as calm, and less wet.
struct FlyingLimits {
    double tmaxC;   ///< °C, at least
    double windMs;  ///< m/s, at most
    double rainMm;  ///< mm, less than
};
/// Defaults: 18 °C (from memory; the strict published figure is 20 °C, S55), 6.7 m/s (24 km/h,
/// S16), 1 mm (from memory).
[[nodiscard]] FlyingLimits flyingLimits(const Facts& facts);

/// What was seen counts before what is reckoned. Wind or rain that nobody measured do not speak
/// against a warm day. Nothing where neither flights nor the highest temperature are known.
[[nodiscard]] std::optional<bool> isFlyingDay(const DayWeather& day, const FlyingLimits& limits);

}  // namespace tenthday
