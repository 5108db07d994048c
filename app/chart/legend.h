/// @file legend.h  What the colours, textures and marks mean, along the foot.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Height it takes at a width: as many lines as it needs. Its entries: see legend_marks.h.
[[nodiscard]] qreal legendHeight(const std::vector<LegendMark>& marks, qreal width,
                                 const TextRuler& ruler);
/// The same where only its head is shown.
[[nodiscard]] qreal foldedLegendHeight(const TextRuler& ruler);
/// Where lanes can be folded, so can it.
void layLegend(const LaneInput& input, const std::vector<LegendMark>& marks, bool folded,
               const QRectF& area, Sheet& sheet);

}  // namespace tenthday
