/// @file day.h  Calendar days and wall-clock moments at the apiary: no time zone, no daylight
/// saving.
#pragma once
#include <date/date.h>

#include <chrono>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace tenthday {

/// A calendar day on the wall. Day + Day does not compile; Day - Day is a span of days.
using Day = date::local_days;
using Days = date::days;
/// A moment on the local wall clock, to the minute. Hours are added without any clock shift.
using Moment = date::local_time<std::chrono::minutes>;

/// Hour of the day, 0..23.
struct Hour {
    std::int32_t value = 12;
    friend constexpr auto operator<=>(const Hour&, const Hour&) = default;
};
/// The hour meant when none was given.
inline constexpr Hour kHourNotGiven{12};

/// The range every day must lie in; outside it nothing is read or stored.
inline constexpr Day kFirstDay{date::local_days{date::year{1900} / 1 / 1}};
inline constexpr Day kLastDay{date::local_days{date::year{2199} / 12 / 31}};

[[nodiscard]] constexpr Moment momentOf(Day day, std::optional<Hour> hour = std::nullopt) {
    return Moment{day} + std::chrono::hours{hour.value_or(kHourNotGiven).value};
}
[[nodiscard]] constexpr Day dayOf(Moment moment) { return date::floor<Days>(moment); }
[[nodiscard]] constexpr Hour hourOf(Moment moment) {
    return Hour{static_cast<std::int32_t>(
        std::chrono::duration_cast<std::chrono::hours>(moment - Moment{dayOf(moment)}).count())};
}

/// Moment so many hours (fractions allowed, may be negative) after another, to the nearest minute.
[[nodiscard]] Moment hoursAfter(Moment from, double hours);
[[nodiscard]] Moment hoursAfterDown(Moment from, double hours);  ///< rounds down to the minute
[[nodiscard]] Moment hoursAfterUp(Moment from, double hours);    ///< rounds up to the minute
[[nodiscard]] constexpr double hoursBetween(Moment from, Moment to) {
    return static_cast<double>((to - from).count()) / 60.0;
}

/// `YYYY-MM-DD`.
[[nodiscard]] std::string toText(Day day);
/// `YYYY-MM-DDTHH:MM`.
[[nodiscard]] std::string toText(Moment moment);
/// Reads `YYYY-MM-DD` strictly; a day that is not in the calendar (29 February 2027) is refused,
/// and so is one outside kFirstDay..kLastDay.
[[nodiscard]] std::optional<Day> dayFromText(std::string_view text);
/// Reads `YYYY-MM-DDTHH:MM`, or a day alone, which then means 12:00.
[[nodiscard]] std::optional<Moment> momentFromText(std::string_view text);

}  // namespace tenthday
