/// @file fly_fit.h  The warmth limit of a flying day that agrees best with what was seen.
#pragma once
#include <optional>
#include <span>

#include "weather/flying_day.h"

namespace tenthday {

/// What ticks of "flew" and "did not fly" say about the limit.
struct FlyFit {
    double tmaxC = 0;  ///< the limit that gets fewest ticks wrong, °C, in whole tenths
    int ticks = 0;     ///< days with a tick and their highest temperature
    int wrong = 0;     ///< ticks that the fitted limit gets wrong
    int wrongNow = 0;  ///< ticks that the limit in force gets wrong
};

/// Fewer ticks say nothing: days with a tick and a highest temperature, in all and each way.
inline constexpr int kFitTicks = 20;
inline constexpr int kFitTicksEachWay = 3;

/// Fits the limit of warmth; those of wind and rain stay as they are in force. Of limits that get
/// equally many wrong it is the one nearest to the default of the book's facts, of two as near the
/// lower; never one that a fact could not take.
/// @param days  in any order; those without a tick or a highest temperature do not count
/// @return nothing with fewer ticks than needed
[[nodiscard]] std::optional<FlyFit> fitFlyingLimit(std::span<const DayWeather> days,
                                                   const Facts& facts);

}  // namespace tenthday
