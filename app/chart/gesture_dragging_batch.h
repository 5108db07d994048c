/// @file gesture_dragging_batch.h  A batch is dragged along days; all that follows is shown live.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class DraggingBatchGesture : public Gesture {
public:
    /// @param grabbed  where the button went down  @param start  the batch's start as saved
    DraggingBatchGesture(QPointF grabbed, Id<Batch> batch, Day start)
        : grabbed_(grabbed), batch_(batch), start_(start) {}
    /// Whole days only: nothing is asked for until the next day is reached.
    Next moved(ChartHand& hand, QPointF at) override;
    /// Saves, unless the batch is back where it was.
    Next release(ChartHand& hand, QPointF at) override;
    Next cancel(ChartHand& hand) override;

private:
    QPointF grabbed_;
    Id<Batch> batch_;
    Day start_;
    Days shown_{0};  ///< moved by so many days in the preview
};

}  // namespace tenthday
