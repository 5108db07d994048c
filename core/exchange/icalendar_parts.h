/// @file icalendar_parts.h  Fixed words, times and durations in iCalendar text. Inner to the room.
#pragma once
#include <string_view>

#include "exchange/icalendar.h"

namespace tenthday {

inline constexpr std::string_view kProductId = "-//Tenthday//Tenthday//EN";

/// `20270614` (RFC 5545, 3.3.4).
[[nodiscard]] std::string icalDate(Day day);
/// `20270614T140000` (3.3.5, form 1).
[[nodiscard]] std::string icalTime(Moment moment);
/// `20270614T120000Z` (3.3.5, form 2).
[[nodiscard]] std::string icalUtc(UtcSecond moment);
/// Whole minutes: `-PT1H`, `P2DT7H`, `PT0S` (3.3.6).
[[nodiscard]] std::string icalDuration(std::int32_t minutes);

[[nodiscard]] std::optional<Day> dayFromIcal(std::string_view text);
[[nodiscard]] std::optional<Moment> momentFromIcal(std::string_view text);
[[nodiscard]] std::optional<UtcSecond> utcFromIcal(std::string_view text);
[[nodiscard]] std::optional<std::int32_t> minutesFromIcal(std::string_view text);

}  // namespace tenthday
