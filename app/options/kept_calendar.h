/// @file kept_calendar.h  Which calendar is wanted for the phone, and where it is kept.
#pragma once
#include <QString>
#include <algorithm>
#include <vector>

#include "records/kinds.h"

namespace tenthday {

struct CalendarWish {
    std::vector<TaskRule> kinds;  ///< tasks of these only; none given: of all
    bool allDay = false;          ///< no hours

    [[nodiscard]] bool wants(TaskRule rule) const {
        return kinds.empty() || std::find(kinds.begin(), kinds.end(), rule) != kinds.end();
    }
    friend bool operator==(const CalendarWish&, const CalendarWish&) = default;
};

/// A calendar file that is written anew when the book has changed.
struct KeptCalendar {
    QString path;  ///< full
    CalendarWish wish;
    friend bool operator==(const KeptCalendar&, const KeptCalendar&) = default;
};

}  // namespace tenthday
