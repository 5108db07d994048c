/// @file nuc_tasks.h  Tasks at a batch's nucs: cells in, looks, catches. Inner to the room, but for
/// hasEnded().
#pragma once
#include <map>
#include <unordered_map>

#include "tasks/task.h"

namespace tenthday {

/// The nucs of one yard that get a batch's cells on one day.
struct Turn {
    std::vector<const SideOutlook*> sides;
    std::vector<const SideRound*> rounds;
};
/// By yard, then by day; nucs of a batch.
using Turns = std::map<std::optional<Id<Yard>>, std::map<Day, Turn>>;
[[nodiscard]] std::unordered_map<Id<Batch>, Turns> turnsOfBatches(const NucOutlook& nucs);

/// The nucs that hold or will hold cells of a batch.
[[nodiscard]] std::vector<const SideOutlook*> sidesOf(const Turns& turns);

/// Nothing of the round is waited for any more: she was caught, stays for the winter, is not there,
/// or lays drones.
[[nodiscard]] bool hasEnded(const SideRound& round);

/// Cells into the nucs of each yard, turn by turn; looks and catch for all nucs of a yard together.
[[nodiscard]] std::vector<Task> nucTasks(const Snapshot& snapshot, const Batch& batch,
                                         const BatchTimeline& line, const Turns& turns);

}  // namespace tenthday
