#include "chart/gesture_panning.h"

#include "chart/gesture_resting.h"

namespace tenthday {

Gesture::Next PanningGesture::moved(ChartHand& hand, QPointF at) {
    hand.setPointer(Qt::ClosedHandCursor);
    hand.showAxis(axis_.scrolledBy(grabbed_.x() - at.x()), scrollY_ + grabbed_.y() - at.y());
    return nullptr;
}

Gesture::Next PanningGesture::release(ChartHand& hand, QPointF /*at*/) {
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

Gesture::Next PanningGesture::cancel(ChartHand& hand) {
    hand.showAxis(axis_, scrollY_);
    return release(hand, grabbed_);
}

}  // namespace tenthday
