/// @file ripe_for_nucs.h  How many cells of a batch want a nuc.
#pragma once
#include <algorithm>
#include <cmath>

#include "records/snapshot.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// Ripe cells of a batch, expected or counted, rounded, but those that stored placements give
/// elsewhere. Below 0 where more are given elsewhere than ripen.
[[nodiscard]] inline std::int32_t ripeForNucs(const Snapshot& snapshot, Id<Batch> batch,
                                              const BatchTimeline& timeline) {
    const auto placements = snapshot.all<Placement>().of(batch.uuid);
    const auto elsewhere = std::count_if(placements.begin(), placements.end(), [](const auto& p) {
        return p->target != CellTarget::Nuc;
    });
    return static_cast<std::int32_t>(std::lround(timeline.counts.ripe)) -
           static_cast<std::int32_t>(elsewhere);
}

}  // namespace tenthday
