/// @file fitted_nucs.h  A season's nucs with all that first fit and the yards' days hung on, so
/// that another season can be told from it by what differs. Inner to the room.
#pragma once
#include <unordered_map>

#include "occupancy/first_fit.h"
#include "occupancy/nuc_memo.h"
#include "occupancy/yard_days.h"

namespace tenthday {

struct FittedNucs {
    Snapshot snapshot;
    std::shared_ptr<const BareSides> bare;
    std::shared_ptr<const void> owner;  ///< keeps the timelines alive
    YardsOfSides yards;
    SharedList<SideOutlook> sides;
    std::vector<BatchFit> fits;                               ///< in the order of serving
    std::unordered_map<Id<Batch>, std::size_t> places;        ///< in `fits`
    std::vector<YardSums> sums;                               ///< by yard
    std::unordered_map<std::int32_t, std::int32_t> recorded;  ///< cells placed by record, by day
};

/// What became of the nucs of another season.
struct RefittedNucs {
    SharedList<SideOutlook> sides;
    std::vector<std::size_t> changed;  ///< sides that are others than before
    std::vector<PlacedCells> placed;   ///< by place in the timelines
    NucMemo::Differing differing;
};

/// The same as first fit from the start, by following only what differs from an earlier one: sides
/// that other batches take, and batches that find other sides free. Nothing where rows differ that
/// are no batch, bar, load, share or make-up; where a batch that differs has a nuc of its own,
/// named or seen; where many batches differ, or so many sides that it is not worth while.
[[nodiscard]] std::optional<RefittedNucs> refit(const FittedNucs& before, const Snapshot& snapshot,
                                                const Timelines& timelines);

}  // namespace tenthday
