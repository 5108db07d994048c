#include "tasks/own_task.h"

namespace tenthday {
namespace {

std::string trimmed(const std::string& text) {
    constexpr auto kBlanks = " \t\n\r";
    const auto first = text.find_first_not_of(kBlanks);
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

Result<OwnTask> rowOf(Id<OwnTask> id, const OwnTaskWords& words) {
    OwnTask row{id, 1, words.day, words.yard, trimmed(words.text), words.must};
    if (row.text.empty()) return Error{"task: a text is needed"};
    return row;
}

Error gone() { return Error{"task: there is none with this id"}; }

}  // namespace

Result<ChangeSet> addOwnTask(const OwnTaskWords& words, Id<OwnTask> fresh) {
    const auto row = rowOf(fresh, words);
    if (!row) return row.error();
    ChangeSet changes{Verb::AddRow, row.value().text, {}, {}};
    changes.add(row.value());
    return changes;
}

Result<ChangeSet> changeOwnTask(const Snapshot& snapshot, Id<OwnTask> task,
                                const OwnTaskWords& words) {
    const auto before = snapshot.find(task);
    if (!before) return gone();
    const auto row = rowOf(task, words);
    if (!row) return row.error();
    ChangeSet changes{Verb::EditRow, row.value().text, {}, {}};
    changes.edit(before, row.value());
    return changes;
}

Result<ChangeSet> deleteOwnTask(const Snapshot& snapshot, Id<OwnTask> task) {
    const auto before = snapshot.find(task);
    if (!before) return gone();
    ChangeSet changes{Verb::DeleteRow, before->text, {}, {}};
    const auto id = toText(task.uuid);
    for (const auto& tick : snapshot.all<TaskDone>())
        if (tick->rule == TaskRule::Own && tick->subject == id) changes.erase(tick);
    changes.erase(before);
    return changes;
}

}  // namespace tenthday
