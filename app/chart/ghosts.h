/// @file ghosts.h  What is proposed and not planned, in outline: told apart from what stands there
/// by having no filling.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Proposed loads of one builder. @param base  y on which bars stand
void layProposedLoads(const LaneInput& input, Id<Builder> builder, qreal base, qreal pxPerCell,
                      Sheet& sheet);
/// Proposed stays in one yard, hanging from its upper edge. @param mostSides  nucs its height is of
void layProposedStays(const LaneInput& input, Id<Yard> yard, int mostSides, const QRectF& area,
                      Sheet& sheet);

}  // namespace tenthday
