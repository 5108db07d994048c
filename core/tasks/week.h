/// @file week.h  The tasks of a week by their numbers, and what is still open from before.
#pragma once
#include "calendar/iso_week.h"
#include "tasks/task.h"

namespace tenthday {

/// A task with its number in its week: the same on paper, in the window and in listings.
struct NumberedTask {
    std::int32_t number = 0;  ///< from 1 on, through the whole week
    Task task;
};

/// Those planned in a week, numbered in the order of tasksOf().
[[nodiscard]] std::vector<NumberedTask> ofWeek(const std::vector<Task>& tasks, IsoWeek week);

/// Those planned before a day and not done, each with its number in its own week.
[[nodiscard]] std::vector<NumberedTask> stillOpen(const std::vector<Task>& tasks, Day today);

}  // namespace tenthday
