/// @file wild_clock.h  When wild cells of open brood run: the clock behind looks and warnings.
#pragma once
#include "occupancy/builders.h"

namespace tenthday {

/// The clock that runs from a dequeening, or from open brood put in, at `start`. Wild queens come
/// from the oldest brood there is: larvae of 96 h, of 36 h where none is older, or eggs, of which
/// the oldest hatch at once (from hatching to a queen: derived from S1, S2). No look is ticked yet.
[[nodiscard]] WildClock wildClockFrom(Uuid cause, Moment start, const Facts& facts,
                                      BroodAge age = BroodAge::All);

/// Its bees have no queen, so that open brood put in starts wild cells: a starter, a box that also
/// finishes, and whatever was made up. Brood over a queenright finisher, or in an incubator, starts
/// none.
[[nodiscard]] bool isQueenless(const Snapshot& snapshot, const Builder& builder);

}  // namespace tenthday
