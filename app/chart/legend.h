/// @file legend.h  What the colours, textures and marks mean, along the foot.
#pragma once
#include "chart/sheet.h"
#include "outlook/outlook.h"

namespace tenthday {

/// Height it takes at a width: as many lines as it needs. Marks of weather, drones and the season's
/// limits are named only where the season has them.
[[nodiscard]] qreal legendHeight(const Outlook& outlook, qreal width, const TextRuler& ruler);
void layLegend(const Outlook& outlook, const QRectF& area, Sheet& sheet);

}  // namespace tenthday
