/// @file ribbon.h  The selected batch's way from builder to nucs, as one smooth band.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// @param top  y under the builders, where all bars' bands have come together
void layRibbon(const LaneInput& input, qreal top, Sheet& sheet);

}  // namespace tenthday
