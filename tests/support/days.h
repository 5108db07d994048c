/// @file days.h  Days and moments written as text in tests; a wrong text fails at once.
#pragma once
#include <stdexcept>
#include <string>

#include "calendar/day.h"

namespace tenthday::test {

inline Day day(std::string_view text) {
    const auto read = dayFromText(text);
    if (!read) throw std::invalid_argument("no day: " + std::string(text));
    return *read;
}

/// `YYYY-MM-DDTHH:MM`, or a day alone (12:00).
inline Moment moment(std::string_view text) {
    const auto read = momentFromText(text);
    if (!read) throw std::invalid_argument("no moment: " + std::string(text));
    return *read;
}

}  // namespace tenthday::test
