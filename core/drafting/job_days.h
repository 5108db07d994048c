/// @file job_days.h  Which jobs a batch brings on which days, up to the day its cells leave.
#pragma once
#include <array>

#include "outlook/outlook.h"

namespace tenthday {

/// Days on which nobody wants to work.
struct FreeDays {
    std::array<bool, 7> weekdays{};  ///< Monday first
    std::vector<DayWindow> spans;    ///< days off

    [[nodiscard]] bool contains(Day day) const;
};
/// The weekdays, and the days off of the book.
[[nodiscard]] FreeDays freeDays(const Snapshot& snapshot, const std::array<bool, 7>& weekdays);

struct Job {
    TaskRule rule{};
    std::optional<Id<Builder>> builder;
    Day planned;       ///< as the week sheet says
    DayWindow window;  ///< on any of these days it would do

    /// The planned day; where that is free, the first day of the window that is not. A second look
    /// for wild cells never comes before its planned day: only then are all cells begun.
    [[nodiscard]] Day dayBeside(const FreeDays& free) const;
};

/// The jobs of one batch by day, then as on the week sheet: from the breeder queen's comb and the
/// make-up to the cells out of the builder, with the looks for wild cells in its builders.
/// @param tasks  of the outlook's season
[[nodiscard]] std::vector<Job> jobsOf(const Outlook& outlook, const std::vector<Task>& tasks,
                                      Id<Batch> batch);

}  // namespace tenthday
