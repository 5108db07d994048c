#include "look/hatch.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace tenthday {
namespace {

/// The part of the line x + y = sum within the rectangle; null where they only touch.
QLineF risingPart(const QRectF& rect, qreal sum) {
    const qreal fromX = std::max(rect.left(), sum - rect.bottom());
    const qreal toX = std::min(rect.right(), sum - rect.top());
    return fromX < toX ? QLineF(fromX, sum - fromX, toX, sum - toX) : QLineF();
}

}  // namespace

QList<QLineF> hatchLines(const QRectF& rect, qreal spacing, Slope slope) {
    QList<QLineF> lines;
    if (rect.isEmpty() || spacing <= 0) return lines;
    // A falling line is a rising one seen in a mirror.
    const bool mirror = slope == Slope::Falling;
    const QRectF seen =
        mirror ? QRectF(-rect.right(), rect.top(), rect.width(), rect.height()) : rect;
    const qreal step = spacing * std::numbers::sqrt2;
    const qreal last = seen.right() + seen.bottom();
    for (qreal sum = std::ceil((seen.left() + seen.top()) / step) * step; sum < last; sum += step) {
        const auto line = risingPart(seen, sum);
        if (line.isNull()) continue;
        lines.append(mirror ? QLineF(-line.x1(), line.y1(), -line.x2(), line.y2()) : line);
    }
    return lines;
}

QList<QPointF> dotGrid(const QRectF& rect, qreal spacing, qreal radius) {
    QList<QPointF> dots;
    const auto inner = rect.adjusted(radius, radius, -radius, -radius);
    if (inner.isEmpty() || spacing <= 0) return dots;
    for (qreal y = std::ceil(inner.top() / spacing) * spacing; y <= inner.bottom(); y += spacing)
        for (qreal x = std::ceil(inner.left() / spacing) * spacing; x <= inner.right();
             x += spacing)
            dots.append(QPointF(x, y));
    return dots;
}

}  // namespace tenthday
