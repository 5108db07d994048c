/// @file hold_trips.h  Cells and nucs that would leave a yard under a hold for disease. Inner to
/// the room.
#pragma once
#include <vector>

#include "findings/finding.h"

namespace tenthday {

/// Of batches: cells that go from a builder in a held yard into a builder or nuc of another, or are
/// sold or given away; nucs brought from there to a mating station, or fetched back from a station
/// that is held. One finding for each batch, yard and day; `event` says which: ToFinisher or Ripe
/// for cells, DueToFly for nucs. Told as long as the hold lasts. Common practice; what is allowed
/// the bee inspector says.
[[nodiscard]] std::vector<Finding> tripsOutOfHold(const Snapshot& snapshot,
                                                  const Timelines& timelines,
                                                  const NucOutlook& nucs);

}  // namespace tenthday
