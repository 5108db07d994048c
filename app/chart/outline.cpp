#include "chart/outline.h"

namespace tenthday {
namespace {

constexpr qreal kPen = 1.4;
constexpr qreal kDash = 4;
constexpr qreal kGap = 4;

/// Dashes of equal length from one corner to the next, one at each end: corners stay closed.
void addSide(QPainterPath& path, QPointF from, QPointF to) {
    const QPointF along = to - from;
    const qreal length = std::hypot(along.x(), along.y());
    const int gaps = static_cast<int>(std::max(0.0, std::floor((length - kDash) / (kDash + kGap))));
    const qreal dash = gaps > 0 ? (length - gaps * kGap) / (gaps + 1) : length;
    for (int i = 0; i <= gaps && length > 0; ++i) {
        const qreal start = i * (dash + kGap);
        path.moveTo(from + along * (start / length));
        path.lineTo(from + along * ((start + dash) / length));
    }
}

}  // namespace

void layOutline(Layer layer, const QRectF& rect, Sheet& sheet) {
    const auto edge = rect.adjusted(kPen / 2, kPen / 2, -kPen / 2, -kPen / 2);
    QPainterPath path;
    addSide(path, edge.topLeft(), edge.topRight());
    addSide(path, edge.topRight(), edge.bottomRight());
    addSide(path, edge.bottomRight(), edge.bottomLeft());
    addSide(path, edge.bottomLeft(), edge.topLeft());
    sheet.stroke(layer, Role::Ghost, path, kPen);
}

}  // namespace tenthday
