/// @file dates.h  Days, hours and weeks as the reader writes them.
#pragma once
#include <QDate>
#include <QString>

#include "calendar/iso_week.h"

namespace tenthday {

[[nodiscard]] QDate toQDate(Day day);
[[nodiscard]] Day fromQDate(const QDate& date);

/// "17 Jun", in the order of the locale's own short date.
[[nodiscard]] QString shortDay(Day day);
/// "Thu 17 Jun".
[[nodiscard]] QString weekdayAndDay(Day day);
/// "Thursday 17 June".
[[nodiscard]] QString longDay(Day day);
/// "Thu".
[[nodiscard]] QString weekdayName(Day day);
/// "17".
[[nodiscard]] QString dayNumber(Day day);
/// "June".
[[nodiscard]] QString monthName(Day day);
/// "January 2028".
[[nodiscard]] QString monthAndYear(Day day);
/// "2027".
[[nodiscard]] QString yearNumber(Day day);
/// "W20".
[[nodiscard]] QString weekLabel(Day day);
/// "9:00".
[[nodiscard]] QString clock(Moment moment);
/// "9:00", of a whole hour, 0..23.
[[nodiscard]] QString hourOfDay(int hour);
/// "Thu 17 Jun 14:00".
[[nodiscard]] QString dayAndClock(Moment moment);
/// "17 Jun 14:00".
[[nodiscard]] QString shortDayAndClock(Moment moment);
/// The part of the day a moment falls in, with its day, for "before ...": "Fri 18 Jun, morning".
/// Morning ends at 11, midday at 14, afternoon at 18, evening at 22.
[[nodiscard]] QString dayAndPart(Moment moment);

}  // namespace tenthday
