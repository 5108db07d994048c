/// @file bar_shape.h  The outline of a load: from grafted to accepted to sealed its edge falls.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// A bar's upper edge over part of its span, left to right.
struct BarEdge {
    std::vector<QPointF> points;

    /// The part between two x, with the height at each end found between points.
    [[nodiscard]] BarEdge between(qreal from, qreal to) const;
    [[nodiscard]] QPainterPath closedAt(qreal base) const;
    [[nodiscard]] qreal lowestY() const;
    [[nodiscard]] qreal highestY() const;
};

struct BarShape {
    BarEdge edge;
    qreal left;
    qreal sealedAt;  ///< x from which its cells are sealed; the right end when none are
    qreal right;
    double lastCells;

    /// Its part in sight, left and right; empty where none is.
    [[nodiscard]] std::pair<qreal, qreal> inSight(const DayAxis& axis) const;
};

/// @param base  y on which the bar stands
[[nodiscard]] BarShape barShape(const LaneInput& input, const LoadSpan& span, qreal base,
                                qreal pxPerCell, const Snap& snap);

}  // namespace tenthday
