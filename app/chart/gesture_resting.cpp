#include "chart/gesture_resting.h"

#include "chart/gesture_pressed.h"

namespace tenthday {

Gesture::Next RestingGesture::press(ChartHand& hand, QPointF at) {
    return std::make_unique<PressedGesture>(at, hand.under(at));
}

Gesture::Next RestingGesture::moved(ChartHand& hand, QPointF at) {
    const auto key = hand.under(at);
    const bool movable = key.hit == Hit::Load && hand.savedStart(key.batch).has_value();
    const bool pressable = key.hit == Hit::YardName || key.hit == Hit::LaneName ||
                           key.hit == Hit::LegendName || key.hit == Hit::Strip ||
                           key.hit == Hit::Trouble || key.hit == Hit::LanesAbove ||
                           key.hit == Hit::LanesBelow;
    hand.setPointer(key.hit == Hit::Grafts ? Qt::SizeVerCursor
                    : movable              ? Qt::OpenHandCursor
                    : pressable            ? Qt::PointingHandCursor
                                           : Qt::ArrowCursor);
    hand.hover(at);
    return nullptr;
}

}  // namespace tenthday
