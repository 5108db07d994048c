#include "tasks/given.h"

#include <set>

#include "records/validity.h"
#include "tasks/task_row.h"

namespace tenthday {
namespace {

std::string trimmed(const std::string& text) {
    const auto from = text.find_first_not_of(" \t");
    if (from == std::string::npos) return {};
    return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

}  // namespace

std::string givenTo(const Snapshot& snapshot, const TaskKey& task) {
    const auto row = rowOfTask<TaskGiven>(snapshot, task);
    return row ? row->who : std::string();
}

std::vector<std::string> everybody(const Snapshot& snapshot) {
    std::set<std::string> all;
    for (const auto& row : snapshot.all<TaskGiven>()) all.insert(row->who);
    return {all.begin(), all.end()};
}

Result<ChangeSet> giveTasks(const Snapshot& snapshot, const std::vector<Task>& tasks,
                            const std::string& who, const IdSource& newId) {
    ChangeSet changes{Verb::GiveTask, tasks.size() == 1 ? tasks.front().subjectLabel : "", {}, {}};
    const auto initials = trimmed(who);
    for (const auto& task : tasks) {
        const auto before = rowOfTask<TaskGiven>(snapshot, task.key);
        if (initials.empty()) {
            if (before) changes.erase(before);
            continue;
        }
        TaskGiven row;
        row.id = before ? before->id : Id<TaskGiven>{newId()};
        nameTask(row, task.key);
        row.who = initials;
        if (const auto valid = checkRow(row); !valid) return valid.error();
        if (before)
            changes.edit(before, row);
        else
            changes.add(row);
    }
    return changes;
}

}  // namespace tenthday
