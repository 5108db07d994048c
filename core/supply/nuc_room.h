/// @file nuc_room.h  How many of a batch's cells find a nuc. Inner to the room.
#pragma once
#include <limits>
#include <unordered_map>
#include <utility>
#include <vector>

#include "occupancy/nucs.h"

namespace tenthday {

/// A cell's stay in a nuc, by record or by plan.
struct NucRound {
    Id<NucSide> side;
    const SideRound* round = nullptr;
};

/// The nucs of one batch.
struct BatchNucs {
    std::vector<NucRound> rounds;
    /// Cells there is room for, those of `rounds` among them; no bound where all found a nuc, for
    /// then there are others too.
    std::int32_t room = std::numeric_limits<std::int32_t>::max();
    bool isSettled = false;  ///< its cells day is over and recorded: no more cells come
};

/// By batch. Cells that found no nuc may still have one that stands there unstocked from the
/// transfer to the catch and can be stocked by the day before, the earliest batch first. A book
/// that keeps no nucs is reckoned as if there were enough.
[[nodiscard]] std::unordered_map<Id<Batch>, BatchNucs> batchNucs(const Snapshot& snapshot,
                                                                 const Timelines& timelines,
                                                                 const NucOutlook& nucs);

/// Cells of a batch that go elsewhere than into nucs, done or planned.
struct CellsElsewhere {
    std::int32_t sold = 0;
    std::int32_t kept = 0;   ///< caged or in an incubator: virgins
    std::int32_t other = 0;  ///< splits, given away, culled

    [[nodiscard]] std::int32_t all() const { return sold + kept + other; }
};
[[nodiscard]] CellsElsewhere cellsElsewhere(const Snapshot& snapshot, Id<Batch> batch);

}  // namespace tenthday
