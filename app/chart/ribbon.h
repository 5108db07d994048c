/// @file ribbon.h  The selected batch's way from builder to nucs, as one smooth band.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Needs the ends all lanes have given; leaves the course over the yards in `input.ribbon`.
/// Passes behind other batches' bars, and in front of the yards.
/// @param top  y under the builders, where all bars' bands have come together
void layRibbon(const LaneInput& input, qreal top, Sheet& sheet);

}  // namespace tenthday
