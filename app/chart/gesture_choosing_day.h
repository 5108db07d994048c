/// @file gesture_choosing_day.h  The chosen day follows the pointer along the head.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class ChoosingDayGesture : public Gesture {
public:
    Next moved(ChartHand& hand, QPointF at) override;
    Next release(ChartHand& hand, QPointF at) override;
    Next cancel(ChartHand& hand) override;
};

}  // namespace tenthday
