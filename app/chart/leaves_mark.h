/// @file leaves_mark.h  The triangle on the foot of the queens: an order leaves on that day, which
/// is not the day it is due.
#pragma once
#include <QPainterPath>

namespace tenthday {

/// @param foot  middle of its base
[[nodiscard]] inline QPainterPath leavesMark(const QPointF& foot) {
    constexpr double kHalf = 5;
    QPainterPath mark(foot + QPointF(-kHalf, 0));
    mark.lineTo(foot + QPointF(kHalf, 0));
    mark.lineTo(foot + QPointF(0, -1.6 * kHalf));
    mark.closeSubpath();
    return mark;
}

}  // namespace tenthday
