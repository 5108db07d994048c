/// @file given.h  Tasks given to somebody, by initials.
#pragma once
#include <string>
#include <vector>

#include "base/id_source.h"
#include "records/change_set.h"
#include "tasks/task.h"

namespace tenthday {

/// To whom a task is given; empty: to nobody.
[[nodiscard]] std::string givenTo(const Snapshot& snapshot, const TaskKey& task);

/// Everybody who was ever given a task, each once, in the order of their initials.
[[nodiscard]] std::vector<std::string> everybody(const Snapshot& snapshot);

/// Gives tasks to somebody, or takes them back (empty `who`). Spaces around the initials are cut.
/// Empty when nothing changes; refused above 12 bytes (checked with the row).
[[nodiscard]] Result<ChangeSet> giveTasks(const Snapshot& snapshot, const std::vector<Task>& tasks,
                                          const std::string& who, const IdSource& newId);

}  // namespace tenthday
