/// @file gesture_jumping.h  The strip of the whole season: pressed or dragged, the days there are
/// shown.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class JumpingGesture : public Gesture {
public:
    explicit JumpingGesture(const DayAxis& before, qreal scrollY)
        : before_(before), scrollY_(scrollY) {}
    Next moved(ChartHand& hand, QPointF at) override;
    Next release(ChartHand& hand, QPointF at) override;
    /// Back to the days shown before.
    Next cancel(ChartHand& hand) override;

private:
    DayAxis before_;
    qreal scrollY_;
};

}  // namespace tenthday
