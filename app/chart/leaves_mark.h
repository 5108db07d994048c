/// @file leaves_mark.h  The arrow on the foot of the queens: an order leaves on that day, which is
/// not the day it is due. No triangle: that is the sign of trouble.
#pragma once
#include <QPainterPath>

namespace tenthday {

/// @param foot  middle of its base
[[nodiscard]] inline QPainterPath leavesMark(const QPointF& foot) {
    constexpr double kHalf = 6;
    constexpr double kHigh = 9;
    constexpr double kShaft = 3;
    const auto at = [&](double x, double up) { return foot + QPointF(x, -up); };
    QPainterPath mark(at(-kHalf, (kHigh + kShaft) / 2));
    mark.lineTo(at(0, (kHigh + kShaft) / 2));
    mark.lineTo(at(0, kHigh));
    mark.lineTo(at(kHalf, kHigh / 2));
    mark.lineTo(at(0, 0));
    mark.lineTo(at(0, (kHigh - kShaft) / 2));
    mark.lineTo(at(-kHalf, (kHigh - kShaft) / 2));
    mark.closeSubpath();
    return mark;
}

}  // namespace tenthday
