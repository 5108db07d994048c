/// @file load_bar.h  One load as a bar: thickness falls from grafted to accepted to sealed.
#pragma once
#include "chart/builder_row.h"

namespace tenthday {

/// @param base  y on which the bar stands
/// @return what the bar covers; null where it is out of sight
QRectF layLoadBar(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load,
                  qreal base, qreal pxPerCell, Sheet& sheet);

/// A sign for each load in trouble, and words where they have room beside the bars.
/// @param bars  of this row, as far as to be seen
void layTrouble(const LaneInput& input, const BuilderRow& row, const QRectF& area,
                const std::vector<QRectF>& bars, Sheet& sheet);

}  // namespace tenthday
