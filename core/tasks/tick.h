/// @file tick.h  Ticking a task as done, and taking the tick back.
#pragma once
#include "records/change_set.h"
#include "tasks/task.h"

namespace tenthday {

/// Ticks the task as done on a day, or takes its tick back (no day). Empty when nothing changes.
/// @param fresh  id of the row, should it be a new one
[[nodiscard]] ChangeSet tick(const Snapshot& snapshot, const Task& task, std::optional<Day> day,
                             Id<TaskDone> fresh);

}  // namespace tenthday
