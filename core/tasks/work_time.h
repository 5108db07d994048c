/// @file work_time.h  How long work takes: minutes of kinds of tasks, of the ways between yards,
/// and what that makes of a day.
#pragma once
#include <optional>
#include <span>
#include <vector>

#include "base/id_source.h"
#include "records/change_set.h"
#include "tasks/task.h"

namespace tenthday {

/// Minutes of a kind of task.
struct TaskMinutes {
    std::int32_t once = 0;  ///< to begin and end it
    Tenths each;            ///< more for each graft, cell, queen or nuc
    bool own = false;       ///< set in the book; else common practice
};
/// As the book says; else from common practice, for two hands that know the work: nobody has
/// measured it.
[[nodiscard]] TaskMinutes taskMinutes(const Snapshot& snapshot, TaskRule rule);

/// Of common practice, whatever the book says.
[[nodiscard]] TaskMinutes usualMinutes(TaskRule rule);

/// Minutes of a kind of task with so many pieces, rounded up.
[[nodiscard]] std::int32_t workMinutes(const Snapshot& snapshot, TaskRule rule,
                                       std::int32_t pieces);
/// Of a task; a task about nucs has as many pieces as it counts, at least its nucs.
[[nodiscard]] std::int32_t workMinutes(const Snapshot& snapshot, const Task& task);

/// Minutes between two places, either way; none where the book does not say. @param from  none:
/// home
[[nodiscard]] std::optional<std::int32_t> driveMinutes(const Snapshot& snapshot,
                                                       std::optional<Id<Yard>> from, Id<Yard> to);

/// One day's work and driving.
struct DayWork {
    std::int32_t work = 0;         ///< min
    std::int32_t drive = 0;        ///< min: home, the yards in driving order, home
    std::int32_t unknownWays = 0;  ///< ways of the round without a time: they count nothing
    std::vector<Id<Yard>> round;   ///< yards with work, in driving order
    [[nodiscard]] std::int32_t minutes() const { return work + drive; }
};

/// The round through these yards (each once is enough), without work.
[[nodiscard]] DayWork roundThrough(const Snapshot& snapshot, std::vector<Id<Yard>> yards);

/// Of tasks of one day; those done count like the others, so that the day's sum does not shrink
/// while one works.
[[nodiscard]] DayWork dayWork(const Snapshot& snapshot, std::span<const Task> tasks);

/// Keeps times: of each rule and each pair of places the row that is there changes, else a new one
/// comes. Refused where one is out of range or a way leads nowhere.
[[nodiscard]] Result<ChangeSet> setTimes(const Snapshot& snapshot,
                                         const std::vector<WorkTime>& works,
                                         const std::vector<DriveTime>& drives,
                                         const IdSource& newId);
/// Between two places, either way; from nowhere: home.
struct DrivenWay {
    std::optional<Id<Yard>> from;
    Id<Yard> to;
};
/// Takes times of the user's own back: those of common practice count again, and nothing for ways.
/// What has none of its own is passed over.
[[nodiscard]] ChangeSet dropTimes(const Snapshot& snapshot, const std::vector<TaskRule>& rules,
                                  const std::vector<DrivenWay>& ways);

}  // namespace tenthday
