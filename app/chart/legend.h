/// @file legend.h  What the colours, textures and marks mean, along the foot.
#pragma once
#include "chart/sheet.h"

namespace tenthday {

/// Height it takes at a width: as many lines as it needs.
[[nodiscard]] qreal legendHeight(qreal width, const TextRuler& ruler);
void layLegend(const QRectF& area, Sheet& sheet);

}  // namespace tenthday
