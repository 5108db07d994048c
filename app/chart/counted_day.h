/// @file counted_day.h  The day whose ready nucs are counted in words, and how many they are.
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

/// Of all mating yards on a day; none outside the season.
[[nodiscard]] inline ReadyNumbers readyInAllYards(const Outlook& outlook, Day day) {
    ReadyNumbers all;
    const auto index = (day - outlook.season.first).count();
    for (const auto& yard : outlook.nucs.yards)
        if (index >= 0 && index < static_cast<int>(yard.days.size()))
            all += yard.days[static_cast<std::size_t>(index)].numbers;
    return all;
}

}  // namespace tenthday
