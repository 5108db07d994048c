/// @file gesture_pressed.h  A button is down and nothing has moved yet: a click, or a drag to come.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class PressedGesture : public Gesture {
public:
    PressedGesture(QPointF at, const TargetKey& key) : at_(at), key_(key) {}
    Next moved(ChartHand& hand, QPointF at) override;
    /// A click: selects the batch under it, chooses the day under it.
    Next release(ChartHand& hand, QPointF at) override;
    Next cancel(ChartHand& hand) override;
    [[nodiscard]] std::vector<ChartWish> expected(const ChartHand& hand) const override;

private:
    [[nodiscard]] bool isOnBatch() const;
    /// What a move begins; null: nothing, here.
    [[nodiscard]] Next begun(const ChartHand& hand) const;

    QPointF at_;
    TargetKey key_;
};

}  // namespace tenthday
