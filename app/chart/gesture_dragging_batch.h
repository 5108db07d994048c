/// @file gesture_dragging_batch.h  Batches are dragged: along days, to another builder, to another
/// yard. All that follows is shown live.
#pragma once
#include "chart/gesture.h"

namespace tenthday {

class DraggingBatchGesture : public Gesture {
public:
    /// @param grabbed  where the button went down  @param place  what was there: a batch's
    /// @param start  the batch's start as saved
    DraggingBatchGesture(const ChartHand& hand, QPointF grabbed, const TargetKey& place, Day start);
    /// Whole days only: nothing is asked for until the next day, builder or yard is reached.
    Next moved(ChartHand& hand, QPointF at) override;
    /// Saves, unless all is back where it was.
    Next release(ChartHand& hand, QPointF at) override;
    Next cancel(ChartHand& hand) override;
    [[nodiscard]] bool scrollsAtEdges() const override { return true; }
    /// As far the way the hand goes as it went last, then the day behind, then further the same
    /// way.
    [[nodiscard]] std::vector<ChartWish> expected(const ChartHand& hand) const override;

private:
    [[nodiscard]] qreal daysAt(const ChartHand& hand, QPointF at) const;
    [[nodiscard]] ChartWish wishAt(const ChartHand& hand, QPointF at) const;
    [[nodiscard]] ChartWish wishAhead(const ChartHand& hand, int way, Days beyond,
                                      qreal further) const;
    Next end(ChartHand& hand);

    TargetKey place_;
    std::vector<Id<Batch>> batches_;  ///< the grabbed one first
    Day start_;
    qreal grabbedDays_;           ///< days from its start to where it was grabbed
    qreal grabbedY_;              ///< px, in lanes that are not scrolled
    bool hasGoneAcross_ = false;  ///< some way up or down: it may go to another builder or yard
    qreal days_ = 0;              ///< dragged so far, with the part of a day
    int towards_ = 1;             ///< later days, or earlier: -1
    qreal stride_ = 1;            ///< days from the wish before to the one shown
    ChartWish shown_;
    bool begun_ = false;
};

}  // namespace tenthday
