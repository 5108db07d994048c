/// @file task.h  What is to be done, by rules from all that is derived. No words: those stand in
/// app/screen_text.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "occupancy/builders.h"
#include "occupancy/drone_needs.h"
#include "occupancy/nucs.h"
#include "tasks/open_hours.h"

namespace tenthday {

/// Names a task for good: what, of which row, where, and which of several. Never a date, so that a
/// tick survives when the task moves.
struct TaskKey {
    TaskRule rule{};
    Uuid subject;  ///< batch, make-up, brood put in, stocking, stay for mating, yard or own task
    Uuid place;    ///< builder or yard; none where there is none
    std::int32_t occurrence = 0;
    friend auto operator<=>(const TaskKey&, const TaskKey&) = default;
};

struct Task {
    TaskKey key;
    Day day;  ///< on which it is planned
    DayWindow
        window;  ///< days on which it can as well be done; `day` alone when it must be that day
    std::optional<Hour> hour;
    bool must = false;        ///< on that very day
    std::optional<Day> done;  ///< by an outcome or a tick
    std::optional<Id<Batch>> batch;
    std::optional<Id<Builder>> builder;
    std::optional<Id<Yard>> yard;
    std::string subjectLabel;  ///< batch, or builder, or the user's own text
    std::int32_t count = 0;    ///< grafts, cells, queens or nucs; 0 where there is nothing to count
    std::vector<const SideOutlook*> sides;  ///< of the nucs it is about, by box and side
    std::optional<Moment> deadline;         ///< cells out: a queen can be out from here
    std::optional<ShutHours> shut;          ///< hours of its day at which boxes stay shut there
};

/// All tasks of the snapshot's season, in the one order that the week sheet and the evening's
/// entry share: day, yard in driving order (none first), must first, rule, label.
[[nodiscard]] std::vector<Task> tasksOf(const Snapshot& snapshot, const Timelines& timelines,
                                        const SharedList<BuilderOutlook>& builders,
                                        const NucOutlook& nucs,
                                        const std::vector<DroneNeed>& drones,
                                        const MatingTable& mating);

/// Those planned on a day of the window; the order stays.
[[nodiscard]] std::vector<Task> within(const std::vector<Task>& tasks, const DayWindow& days);

}  // namespace tenthday
