#include "tasks/tick.h"

#include "tasks/task_row.h"

namespace tenthday {

ChangeSet tick(const Snapshot& snapshot, const Task& task, std::optional<Day> day,
               Id<TaskDone> fresh) {
    ChangeSet changes{Verb::TickTask, task.subjectLabel, {}, {}};
    const auto before = rowOfTask<TaskDone>(snapshot, task.key);
    if (!day) {
        if (before) changes.erase(before);
        return changes;
    }
    TaskDone row;
    row.id = fresh;
    nameTask(row, task.key);
    row.day = *day;
    if (before)
        changes.edit(before, row);
    else
        changes.add(row);
    return changes;
}

}  // namespace tenthday
