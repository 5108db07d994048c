/// @file phone_calendar.h  The season's tasks as a calendar.
#pragma once
#include "book/book_file.h"
#include "exchange/icalendar.h"
#include "options/kept_calendar.h"
#include "outlook/outlook.h"

namespace tenthday {

/// The tasks wished for, in the order of tasksOf(), each with the words of the program's language.
[[nodiscard]] Calendar calendarOf(const Outlook& outlook, const CalendarWish& wish);

/// The outlook a calendar is made of: of the season that today lies in, whichever is shown.
[[nodiscard]] Result<OutlookPtr> outlookOfToday(const OutlookPtr& shown, BookFile& file);

/// Brings a calendar file up to date, or begins it. It appears whole or not at all, and is left
/// untouched when it says all that already. An Error names the file: it cannot be written, or it is
/// none of this book's calendars.
/// @param outlook  of the season that today lies in
/// @param stamp    of what changes now
[[nodiscard]] Result<void> updateCalendarFile(const KeptCalendar& kept, const Outlook& outlook,
                                              UtcSecond stamp);

}  // namespace tenthday
