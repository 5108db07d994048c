/// @file gesture_dragging_edge.h  The upper edge of a selected batch's bars is dragged: more or
/// fewer grafts, and all that follows from them, live.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class DraggingEdgeGesture : public Gesture {
public:
    /// @param edge  a place of Hit::Grafts
    DraggingEdgeGesture(const ChartHand& hand, QPointF grabbed, const TargetKey& edge);
    Next moved(ChartHand& hand, QPointF at) override;
    /// Saves, unless the count is what it was.
    Next release(ChartHand& hand, QPointF at) override;
    Next cancel(ChartHand& hand) override;
    /// A cell more, and one less.
    [[nodiscard]] std::vector<ChartWish> expected(const ChartHand& hand) const override;

private:
    QPointF grabbed_;
    TargetKey edge_;
    int saved_;
    int shown_;
    qreal pxPerCell_;  ///< as it was when grabbed: it changes with the count
};

}  // namespace tenthday
