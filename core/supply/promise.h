/// @file promise.h  What can be promised beside what is owed.
#pragma once
#include <array>
#include <optional>
#include <vector>

#include "calendar/iso_week.h"
#include "supply/season_supply.h"

namespace tenthday {

/// How sure a promise is unless another level is asked for (common practice).
inline constexpr double kPromiseLevel = 0.9;

/// Counts since the season began, at the end of the week.
struct PromiseWeek {
    IsoWeek week;
    std::int32_t ready = 0;  ///< queens in hand by then, or more, with the chance asked for
    std::int32_t owed = 0;   ///< of orders for queens due by then
    /// More queens, of any line, that can be promised for the end of that week; none for one that
    /// is over.
    std::int32_t canPromise = 0;
};

/// By ISO week of the season. A promise is good when with the chance asked for the queens in hand
/// are enough for it and for all that is owed, on its own day and on every later due day: so it
/// takes nothing from an order that is sure, and there is none while a later one is short.
/// @param level  0..1
[[nodiscard]] std::vector<PromiseWeek> promiseByWeek(SeasonSupply& supply, double level);

/// First day, from today on, for which so many queens (>= 1) of any line can be promised whole;
/// nothing in the season and its last queens.
[[nodiscard]] std::optional<Day> firstPromise(SeasonSupply& supply, std::int32_t queens,
                                              double level);

/// The same were all batches caught by one rule, in the order of CatchRule: what each costs.
[[nodiscard]] std::array<std::optional<Day>, kTokenCount<CatchRule>> firstPromiseByRule(
    const SeasonSupply& supply, std::int32_t queens, double level);

}  // namespace tenthday
