#include "tasks/tick.h"

namespace tenthday {
namespace {

std::string idText(const Uuid& uuid) { return uuid == Uuid{} ? std::string() : toText(uuid); }

}  // namespace

ChangeSet tick(const Snapshot& snapshot, const Task& task, std::optional<Day> day,
               Id<TaskDone> fresh) {
    ChangeSet changes{Verb::TickTask, task.subjectLabel, {}, {}};
    TaskDone row;
    row.id = fresh;
    row.rule = task.key.rule;
    row.subject = idText(task.key.subject);
    row.place = idText(task.key.place);
    row.occurrence = task.key.occurrence;
    Ptr<TaskDone> before;
    for (const auto& tick : snapshot.all<TaskDone>())
        if (tick->rule == row.rule && tick->subject == row.subject && tick->place == row.place &&
            tick->occurrence == row.occurrence)
            before = tick;
    if (!day) {
        if (before) changes.erase(before);
        return changes;
    }
    row.day = *day;
    if (before)
        changes.edit(before, row);
    else
        changes.add(row);
    return changes;
}

}  // namespace tenthday
