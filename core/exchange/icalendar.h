/// @file icalendar.h  Calendars as iCalendar text (RFC 5545; what a calendar is called and named
/// by: RFC 7986). Words come in ready-made, and so does the time: nothing here asks a clock.
///
/// Times float (3.3.5, form 1): the wall clock of the apiary, whatever zone the phone is in.
#pragma once
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/id.h"
#include "base/result.h"
#include "calendar/day.h"

namespace tenthday {

/// A moment in UTC, to the second.
using UtcSecond = date::sys_seconds;

struct CalendarEvent {
    std::string uid;  ///< the same for good; never made from a date
    std::string summary;
    std::string description;  ///< may be empty, may have several lines
    std::string location;     ///< may be empty
    std::vector<std::string> categories;
    Day day;
    std::optional<Hour> hour;           ///< without one it lasts all day
    std::int32_t minutes = 60;          ///< how long, where there is an hour; 1 to 1440
    std::optional<std::int32_t> alarm;  ///< minutes after its start, before it when negative
    std::int32_t sequence = 0;          ///< raised with each revision
    UtcSecond stamp{};                  ///< of the last revision
    bool cancelled = false;
    friend bool operator==(const CalendarEvent&, const CalendarEvent&) = default;
};

struct Calendar {
    Uuid book;         ///< whose calendar it is
    std::string name;  ///< as the phone shows it
    std::vector<CalendarEvent> events;
    friend bool operator==(const Calendar&, const Calendar&) = default;
};

/// The whole text: CRLF, folded at 75 octets, UTF-8.
///
/// There is no METHOD: it would make a message of the file, which needs an ORGANIZER (RFC 5546,
/// 3.2.1), and phones take what has one for an invitation.
[[nodiscard]] std::string writeCalendar(const Calendar& calendar);

/// Reads what writeCalendar() wrote, also after another program turned CRLF into LF. An Error says
/// in which line it is not that, or that it was cut off.
[[nodiscard]] Result<Calendar> readCalendar(std::string_view text);

/// Whether two events say the same to their reader: all but revision, its time and cancellation.
[[nodiscard]] bool saySame(const CalendarEvent& a, const CalendarEvent& b);

}  // namespace tenthday
