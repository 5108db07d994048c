/// @file task_marks.h  What hangs on a task by name: its tick, and to whom it is given.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// Takes the marks of all tasks of a subject along: its row goes.
inline void eraseTaskMarks(const Snapshot& snapshot, const Uuid& subject, ChangeSet& changes) {
    const auto text = toText(subject);
    for (const auto& tick : snapshot.all<TaskDone>())
        if (tick->subject == text) changes.erase(tick);
    for (const auto& given : snapshot.all<TaskGiven>())
        if (given->subject == text) changes.erase(given);
}

}  // namespace tenthday
