/// @file season_tasks.h  Tasks that hang on yards and days for mating, not on one date of a batch.
/// Inner to the room.
#pragma once
#include "occupancy/drone_needs.h"
#include "tasks/task.h"

namespace tenthday {

/// Drone comb in time for a yard's first flights (S18); none once it is too late for them. Done by
/// the first comb, brood or drones noted there.
[[nodiscard]] std::vector<Task> droneCombTasks(const Snapshot& snapshot,
                                               const std::vector<DroneNeed>& drones);

/// Nucs of a batch there and back, stay by stay; or its insemination. `sides` are those that hold
/// its cells.
[[nodiscard]] std::vector<Task> matingTasks(const Snapshot& snapshot, const Batch& batch,
                                            const std::vector<const SideOutlook*>& sides);

/// Feed for each builder of a batch that rears in a dearth (S15): from the make-up on, at the
/// latest on the day of the graft. Done by a feed in the builder's diary.
[[nodiscard]] std::vector<Task> feedTasks(const Snapshot& snapshot, const Batch& batch,
                                          const BatchTimeline& timeline);

}  // namespace tenthday
