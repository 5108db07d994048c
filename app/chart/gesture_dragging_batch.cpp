#include "chart/gesture_dragging_batch.h"

#include <cmath>

#include "chart/gesture_resting.h"

namespace tenthday {

Gesture::Next DraggingBatchGesture::moved(ChartHand& hand, QPointF at) {
    hand.setPointer(Qt::ClosedHandCursor);
    const Days days{
        static_cast<int>(std::lround((at.x() - grabbed_.x()) / hand.axis().dayWidth()))};
    if (days == shown_) return nullptr;
    shown_ = days;
    if (days.count() == 0)
        hand.dropPreview();
    else
        hand.showPreview(batch_, start_ + days);
    return nullptr;
}

Gesture::Next DraggingBatchGesture::release(ChartHand& hand, QPointF at) {
    moved(hand, at);
    if (shown_.count() != 0) hand.saveMove(batch_, start_ + shown_);
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

Gesture::Next DraggingBatchGesture::cancel(ChartHand& hand) {
    hand.dropPreview();
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
