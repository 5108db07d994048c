#include "chart/bar_shape.h"

#include <QLineF>

namespace tenthday {
namespace {

QPointF at(const QLineF& piece, qreal x) {
    return piece.dx() <= 0 ? piece.p1() : piece.pointAt((x - piece.x1()) / piece.dx());
}

void push(BarEdge& edge, QPointF point) {
    if (edge.points.empty() || edge.points.back() != point) edge.points.push_back(point);
}

}  // namespace

BarEdge BarEdge::between(qreal from, qreal to) const {
    BarEdge part;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
        const QLineF piece(points[i], points[i + 1]);
        const qreal left = std::max(piece.x1(), from);
        const qreal right = std::min(piece.x2(), to);
        if (left > right || piece.x1() >= to) continue;
        push(part, at(piece, left));
        push(part, at(piece, right));
    }
    return part;
}

QPainterPath BarEdge::closedAt(qreal base) const {
    QPainterPath path;
    if (points.empty()) return path;
    path.moveTo(points.front().x(), base);
    for (const auto& point : points) path.lineTo(point);
    path.lineTo(points.back().x(), base);
    path.closeSubpath();
    return path;
}

qreal BarEdge::lowestY() const {
    qreal y = points.empty() ? 0 : points.front().y();
    for (const auto& point : points) y = std::max(y, point.y());
    return y;
}

qreal BarEdge::highestY() const {
    qreal y = points.empty() ? 0 : points.front().y();
    for (const auto& point : points) y = std::min(y, point.y());
    return y;
}

std::pair<qreal, qreal> BarShape::inSight(const DayAxis& axis) const {
    return {std::max(left, axis.left()), std::min(right, axis.right())};
}

BarShape barShape(const LaneInput& input, const LoadSpan& span, qreal base, qreal pxPerCell,
                  const Snap& snap) {
    const auto& axis = input.axis;
    BarShape shape{{}, snap(axis.xOf(span.span.from)), 0, snap(axis.xOf(span.span.until)), 0};
    shape.sealedAt = shape.right;
    // Few cells are seen too; where rows are very low, as much lower.
    const qreal least = std::min(3.0, 30 * pxPerCell);
    const qreal slope = std::min(axis.dayWidth() * 0.6, 9.0);
    qreal y = base;
    for (std::size_t i = 0; i < span.thickness.size(); ++i) {
        const auto& part = span.thickness[i];
        const qreal x =
            std::clamp(i == 0 ? shape.left : axis.xOf(part.from), shape.left, shape.right);
        const qreal next =
            snap(base - std::max(part.cells > 0 ? least : 0.0, part.cells * pxPerCell));
        if (i > 0) {
            const qreal before = shape.edge.points.back().x();
            shape.edge.points.push_back({std::max(before, x - slope), y});
        }
        shape.edge.points.push_back({x, next});
        if (part.sealed && shape.sealedAt == shape.right) shape.sealedAt = snap(x);
        y = next;
        shape.lastCells = part.cells;
    }
    if (!shape.edge.points.empty()) shape.edge.points.push_back({shape.right, y});
    return shape;
}

}  // namespace tenthday
