/// @file task_row.h  Rows that name a task (TaskDone, TaskGiven): the name to and fro.
#pragma once
#include "records/snapshot.h"
#include "tasks/task.h"

namespace tenthday {

/// An id as such rows hold it; none is an empty text.
[[nodiscard]] inline std::string idText(const Uuid& uuid) {
    return uuid == Uuid{} ? std::string() : toText(uuid);
}

template <class Row>
void nameTask(Row& row, const TaskKey& key) {
    row.rule = key.rule;
    row.subject = idText(key.subject);
    row.place = idText(key.place);
    row.occurrence = key.occurrence;
}

/// The row that names the task, or null.
template <class Row>
[[nodiscard]] Ptr<Row> rowOfTask(const Snapshot& snapshot, const TaskKey& key) {
    Row wanted;
    nameTask(wanted, key);
    for (const auto& row : snapshot.all<Row>())
        if (row->rule == wanted.rule && row->subject == wanted.subject &&
            row->place == wanted.place && row->occurrence == wanted.occurrence)
            return row;
    return nullptr;
}

}  // namespace tenthday
