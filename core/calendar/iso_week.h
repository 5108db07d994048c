/// @file iso_week.h  ISO 8601 weeks: Monday first, week 1 holds the first Thursday.
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "calendar/window.h"

namespace tenthday {

struct IsoWeek {
    int year = 1970;  ///< the week's year, which may differ from the day's
    int week = 1;     ///< 1..53
    friend constexpr auto operator<=>(const IsoWeek&, const IsoWeek&) = default;
};

[[nodiscard]] IsoWeek isoWeekOf(Day day);
/// Monday to Sunday.
[[nodiscard]] DayWindow daysOf(IsoWeek week);
/// `2027-W20`.
[[nodiscard]] std::string toText(IsoWeek week);
/// Reads `YYYY-Www`; week 53 only in years that have one.
[[nodiscard]] std::optional<IsoWeek> isoWeekFromText(std::string_view text);
/// 1 = Monday .. 7 = Sunday.
[[nodiscard]] constexpr int isoWeekday(Day day) {
    return static_cast<int>(date::weekday{day}.iso_encoding());
}

}  // namespace tenthday
