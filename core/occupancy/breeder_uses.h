/// @file breeder_uses.h  When each breeder queen is confined, how long she then lays freely, and
/// who could stand in for her.
#pragma once
#include <vector>

#include "calendar/window.h"
#include "records/snapshot.h"

namespace tenthday {

/// When the breeder queens of a batch are confined to comb or cups, until they are freed. As the
/// batch's own dates have it; has no meaning where there is no graft.
[[nodiscard]] MomentSpan confinementOf(const Snapshot& snapshot, const Batch& batch);

/// One stay on the comb: of batches whose spans overlap it is one.
struct BreederUse {
    MomentSpan confined;
    std::vector<Ptr<Batch>> batches;  ///< by graft
    std::optional<Days> free;         ///< since she was freed before, this season; none: her first
    bool tooSoon = false;             ///< fewer than fact confine_rest_d
    std::vector<Ptr<Queen>> reserve;  ///< breeder queens of her line, not confined then; by label
};

struct BreederSeason {
    Ptr<Queen> queen;
    std::vector<BreederUse> uses;  ///< by time
};

/// Queens that are breeder queens or have a bar, in order of label; of the season shown, with the
/// batches that start up to kLeadIn before it.
[[nodiscard]] std::vector<BreederSeason> breederSeasons(const Snapshot& snapshot);

}  // namespace tenthday
