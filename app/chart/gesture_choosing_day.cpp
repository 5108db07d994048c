#include "chart/gesture_choosing_day.h"

#include <algorithm>

#include "chart/gesture_resting.h"

namespace tenthday {

Gesture::Next ChoosingDayGesture::moved(ChartHand& hand, QPointF at) {
    const auto& axis = hand.axis();
    const auto seen = axis.visible();
    hand.choose(std::clamp(axis.dayAt(at.x()), seen.first, seen.last));
    return nullptr;
}

Gesture::Next ChoosingDayGesture::release(ChartHand& hand, QPointF at) {
    moved(hand, at);
    return std::make_unique<RestingGesture>();
}

Gesture::Next ChoosingDayGesture::cancel(ChartHand& /*hand*/) {
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
