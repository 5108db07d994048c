/// @file counted_day.h  The day whose ready nucs are counted in words.
#pragma once
#include "chart/chart_options.h"
#include "outlook/outlook.h"

namespace tenthday {

/// The chosen day; today where none is chosen and the season has it.
[[nodiscard]] inline std::optional<Day> countedDay(const Outlook& outlook,
                                                   const ChartOptions& options) {
    if (options.chosenDay) return options.chosenDay;
    const Day today = outlook.snapshot.today();
    return outlook.season.contains(today) ? std::optional(today) : std::nullopt;
}

}  // namespace tenthday
