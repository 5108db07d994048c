#include "chart/line_room.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace tenthday {

LineRoom::LineRoom(const QRectF& line, const std::vector<QRectF>& taken, qreal air)
    : line_(line), air_(air) {
    for (const auto& rect : taken) close(rect, air_);
}

void LineRoom::close(const QRectF& rect, qreal air) {
    closed_.push_back({rect.left() - air, rect.right() + air});
}

QRectF LineRoom::nearest(qreal x, qreal width) const {
    std::optional<qreal> best;
    const auto offer = [&](qreal left) {
        if (best && std::abs(left - x) >= std::abs(*best - x)) return;
        if (isFree(left, width)) best = left;
    };
    // Nearest to x is x itself, or where something ends.
    offer(x);
    offer(line_.left());
    offer(line_.right() - width);
    for (const auto& [from, until] : closed_) {
        offer(until);
        offer(from - width);
    }
    return best ? QRectF(*best, line_.top(), width, line_.height()) : QRectF();
}

QRectF LineRoom::take(qreal x, qreal width) {
    const auto place = nearest(x, width);
    if (!place.isNull()) close(place, air_);
    return place;
}

QRectF LineRoom::takeFrom(qreal x, qreal width) {
    auto right = *this;
    right.close({line_.left(), 0, x - line_.left(), 0}, 0);
    const auto place = right.nearest(x, width);
    if (!place.isNull()) close(place, air_);
    return place;
}

bool LineRoom::isFree(qreal left, qreal width) const {
    constexpr qreal kTouch = 0.01;
    if (left < line_.left() || left + width > line_.right()) return false;
    return std::none_of(closed_.begin(), closed_.end(), [&](const auto& other) {
        return left + kTouch < other.second && other.first + kTouch < left + width;
    });
}

}  // namespace tenthday
