/// @file climate.h  Twelve months in place of a daily record: how likely a day is a flying day.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "calendar/window.h"
#include "weather/flying_day.h"

namespace tenthday {

/// What is known of one month, as the mean of many years.
struct MonthWeather {
    std::optional<double> tmaxC;     ///< mean of the daily maxima, °C
    std::optional<double> rainDays;  ///< days with rain, 0..days of the month
};

/// A place's months, January first.
struct Climate {
    std::array<MonthWeather, 12> months;
};

/// Chance that a day is a flying day, 0..1, for each day of a window from its first on: that its
/// maximum reaches `limits.tmaxC`, times the share of dry days. Daily maxima are taken as normal
/// around the monthly mean, warmth and rain as independent. Means and shares stand for the middle
/// of their month; between two middles they go in a straight line, over the new year too.
///
/// Wind is not in a climate: `limits.windMs` does not count, so windy places come out too well.
/// Rain days are those of the climate (commonly 1 mm or more), whatever `limits.rainMm` is. A month
/// without its rain days counts as dry, as a day does on which nobody measured rain.
/// @param tmaxSdC  spread (standard deviation) of daily maxima, °C, >= 0 (the fact tmax_sd_c);
///        at 0 a day is warm or not as the mean is
/// @return nothing for a day where one of the months it lies between lacks its maximum
[[nodiscard]] std::vector<std::optional<double>> flyingChances(const Climate& climate,
                                                               const DayWindow& window,
                                                               const FlyingLimits& limits,
                                                               double tmaxSdC);

}  // namespace tenthday
