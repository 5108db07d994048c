/// @file bands.h  How a band of nucs is painted, and the ink of what stands on it.
#pragma once
#include "chart/sheet.h"
#include "chart/yard_stack.h"

namespace tenthday {

[[nodiscard]] Role groundOf(Band band);
[[nodiscard]] Role inkOn(Band band);

/// A queen, a cell or a virgin stands in these: they are drawn day by day, so days can be counted.
[[nodiscard]] constexpr bool isCounted(Band band) { return band <= Band::Cell; }

/// px left free beside each counted day; none where days are too narrow for it.
[[nodiscard]] qreal dayGap(qreal dayWidth, const Snap& snap);

/// Level lines where no bees are: unlike every slanting hatch.
void layNotStocked(Layer layer, const QRectF& rect, qreal spacing, Sheet& sheet);

/// Fills a band's rectangle with its colour and texture. @param gap px left free on the right
void layBand(Band band, const QRectF& rect, qreal gap, Sheet& sheet, int target);

/// The same in the legend.
void layBandSwatch(Band band, const QRectF& box, Sheet& sheet);

/// A day on which it is not known whether she lays: as high as the chance of it in the colour of
/// laying, above it in that of due to fly. Over the days this makes a slope. @param gap as above
void layUnsureEggs(double share, const QRectF& rect, qreal gap, Sheet& sheet, int target);

}  // namespace tenthday
