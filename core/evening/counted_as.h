/// @file counted_as.h  What the count of a task is kept as. Inner to the room.
#pragma once
#include "tasks/task.h"

namespace tenthday {

[[nodiscard]] inline OutcomeKind countedAs(const Task& task) {
    return task.key.rule == TaskRule::Graft       ? OutcomeKind::Graft
           : task.key.rule == TaskRule::TakeCount ? OutcomeKind::TakeCount
                                                  : OutcomeKind::Ripe;
}

}  // namespace tenthday
