/// @file own_task.h  Tasks of the user's own: added, changed, deleted.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// What an own task says.
struct OwnTaskWords {
    Day day;
    std::optional<Id<Yard>> yard;
    std::string text;   ///< refused when there is none but blanks
    bool must = false;  ///< on that very day
};

/// @param fresh  id of the new row
[[nodiscard]] Result<ChangeSet> addOwnTask(const OwnTaskWords& words, Id<OwnTask> fresh);

/// Empty when nothing changes. Refused when the task is gone.
[[nodiscard]] Result<ChangeSet> changeOwnTask(const Snapshot& snapshot, Id<OwnTask> task,
                                              const OwnTaskWords& words);

/// The task and its tick. Refused when the task is gone.
[[nodiscard]] Result<ChangeSet> deleteOwnTask(const Snapshot& snapshot, Id<OwnTask> task);

}  // namespace tenthday
