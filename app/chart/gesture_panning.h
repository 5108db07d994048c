/// @file gesture_panning.h  The ground is dragged: days and lanes scroll with the pointer.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class PanningGesture : public Gesture {
public:
    PanningGesture(QPointF grabbed, const DayAxis& axis, qreal scrollY)
        : grabbed_(grabbed), axis_(axis), scrollY_(scrollY) {}
    Next moved(ChartHand& hand, QPointF at) override;
    Next release(ChartHand& hand, QPointF at) override;
    /// Back to what was seen before.
    Next cancel(ChartHand& hand) override;

private:
    QPointF grabbed_;
    DayAxis axis_;
    qreal scrollY_;
};

}  // namespace tenthday
