/// @file legend.h  What the colours, textures and marks mean, along the foot.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Height it takes at a width: as many lines as it needs. Marks of weather, drones and the season's
/// limits are named only where the season has them.
[[nodiscard]] qreal legendHeight(const Outlook& outlook, const ChartOptions& options, qreal width,
                                 const TextRuler& ruler);
/// The same where only its head is shown.
[[nodiscard]] qreal foldedLegendHeight(const TextRuler& ruler);
/// Where lanes can be folded, so can it.
void layLegend(const LaneInput& input, bool folded, const QRectF& area, Sheet& sheet);

}  // namespace tenthday
