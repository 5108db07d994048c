/// @file clock.h  Which day it is: given, or the book's own, or the machine's.
#pragma once
#include <functional>
#include <optional>

#include "calendar/day.h"
#include "records/rows.h"

namespace tenthday {

/// The machine's local day.
[[nodiscard]] Day machineDay();

/// Asked for every "today". A day given on the command line (`--today`) comes first, then the day
/// stored in the book (the example's clock stands still), then the machine's.
class Clock {
public:
    explicit Clock(std::optional<Day> given = std::nullopt,
                   std::function<Day()> machine = machineDay);

    [[nodiscard]] Day today(const Book& book) const;
    /// The day of the machine whatever was given; names backups.
    [[nodiscard]] Day realDay() const { return machine_(); }

private:
    std::optional<Day> given_;
    std::function<Day()> machine_;
};

}  // namespace tenthday
