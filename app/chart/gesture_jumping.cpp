#include "chart/gesture_jumping.h"

#include "chart/gesture_resting.h"
#include "chart/season_strip.h"

namespace tenthday {

Gesture::Next JumpingGesture::moved(ChartHand& hand, QPointF at) {
    hand.showAxis(hand.axis().centredOn(stripDayAt(hand.axis(), at.x())), scrollY_);
    return nullptr;
}

Gesture::Next JumpingGesture::release(ChartHand& hand, QPointF at) {
    moved(hand, at);
    return std::make_unique<RestingGesture>();
}

Gesture::Next JumpingGesture::cancel(ChartHand& hand) {
    hand.showAxis(before_, scrollY_);
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
