/// @file plain_words.h  Days and moments in plain English, for headless text. The window words its
/// own, translated.
#pragma once
#include <string>

#include "calendar/day.h"

namespace tenthday {

/// Part of a day, for deadlines: morning to 11, midday to 14, afternoon to 18, evening to 22,
/// night.
enum class DayPart : std::uint8_t { Night, Morning, Midday, Afternoon, Evening };
/// The night lasts from 22 to 5.
[[nodiscard]] DayPart dayPartOf(Moment moment);

/// "Sat 19 June".
[[nodiscard]] std::string plainDay(Day day);
/// "Sat 19 June 17:00".
[[nodiscard]] std::string plainMoment(Moment moment);
/// The part of day that holds the moment, to be read after "before": "Tuesday morning".
[[nodiscard]] std::string plainPart(Moment moment);

}  // namespace tenthday
