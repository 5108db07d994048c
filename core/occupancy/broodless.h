/// @file broodless.h  Days on which a queenless builder holds no open brood, or no brood at all.
#pragma once
#include "occupancy/builders.h"

namespace tenthday {

/// From an egg to its sealing, worker brood: all brood of a dequeened colony is sealed by then
/// (S1, S2, S27).
inline constexpr Days kWorkerSealed{9};

struct BroodlessSpan {
    Day from;                  ///< all open brood is sealed by then
    std::optional<Day> until;  ///< the day before new open brood; none: as far as is noted, still
    std::optional<Day>
        noneFrom;  ///< all workers are out of their cells: no brood at all, in `until`
};

/// By time; none before the first make-up: only from then on a queen is known to be gone. What is
/// noted alone counts: a queen, wild or given, or laying workers end a span unseen. Brood of
/// earlier make-ups is taken to be still there, brood frames not counted are taken to be some.
/// Worker brood (fact worker_d): drones come out later.
[[nodiscard]] std::vector<BroodlessSpan> broodlessSpans(const Snapshot& snapshot,
                                                        const BuilderOutlook& outlook);

}  // namespace tenthday
