/// @file full_yards.h  Cells planned for a yard that has no nucs for them. Inner to the room.
#pragma once
#include "findings/finding.h"

namespace tenthday {

/// Of each batch whose cells are still to come: the yards it names where fewer cells find a nuc on
/// their day than are planned for it, as first fit places them. Without this nothing would tell
/// why the chart shows them in another yard.
[[nodiscard]] std::vector<Finding> fullYards(const Snapshot& snapshot, const Timelines& timelines,
                                             const NucOutlook& nucs);

}  // namespace tenthday
