/// @file yard_days.h  From sides to each yard's days. Inner to the room.
#pragma once
#include "occupancy/sides.h"

namespace tenthday {

/// Stacks, numbers and blocks of every yard with a side in the season, in driving order.
[[nodiscard]] std::vector<YardOutlook> yardOutlooks(const Snapshot& snapshot,
                                                    const Timelines& timelines,
                                                    const std::vector<SideOutlook>& sides);

}  // namespace tenthday
