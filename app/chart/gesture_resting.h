/// @file gesture_resting.h  No button is down: the pointer only looks.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class RestingGesture : public Gesture {
public:
    Next press(ChartHand& hand, QPointF at) override;
    Next moved(ChartHand& hand, QPointF at) override;
    [[nodiscard]] bool isBusy() const override { return false; }
};

}  // namespace tenthday
