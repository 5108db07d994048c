/// @file hatch.h  Textures as lines and dots: vector files know neither clip nor pattern.
#pragma once
#include <QLineF>
#include <QList>
#include <QRectF>

namespace tenthday {

enum class Slope : std::uint8_t { Rising, Falling };

/// Lines at 45 degrees through a rectangle, ending at its edges. They hang on the plane, not on the
/// rectangle: neighbours join without a seam. @param spacing across the lines, px
[[nodiscard]] QList<QLineF> hatchLines(const QRectF& rect, qreal spacing, Slope slope);
/// Dots on a grid that hangs on the plane; each lies wholly inside. @param radius px
[[nodiscard]] QList<QPointF> dotGrid(const QRectF& rect, qreal spacing, qreal radius);

}  // namespace tenthday
