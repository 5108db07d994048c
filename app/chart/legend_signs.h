/// @file legend_signs.h  The signs of the legend, drawn as the lanes draw them.
#pragma once
#include "chart/sheet.h"
#include "screen_text/legend_text.h"

namespace tenthday {

/// @param box  of the swatch, about 15 by 10 px
void layLegendSign(LegendSign sign, const QRectF& box, Sheet& sheet);

}  // namespace tenthday
