/// @file gesture.h  What the pointer is doing, as a small state machine: one state per file.
///
///   resting --press--> pressed --moved past the drag distance--> dragging_batch
///      ^                  |                                      choosing_day, panning
///      +---- release, Esc +---------------------------------------------+
#pragma once
#include <QPointF>
#include <memory>
#include <optional>

#include "chart/chart_item.h"

namespace tenthday {

/// What a gesture may ask of the chart and do to it.
class ChartHand {
public:
    virtual ~ChartHand() = default;
    [[nodiscard]] virtual TargetKey under(QPointF at) const = 0;
    [[nodiscard]] virtual const DayAxis& axis() const = 0;
    [[nodiscard]] virtual qreal scrollY() const = 0;
    [[nodiscard]] virtual int dragDistance() const = 0;  ///< px, from the desktop's settings
    /// Day on which a batch starts as saved; none when it cannot be moved.
    [[nodiscard]] virtual std::optional<Day> savedStart(Id<Batch> batch) const = 0;

    virtual void choose(Day day) = 0;
    virtual void select(Id<Batch> batch) = 0;
    /// Shows a yard nuc by nuc, or as a stack only.
    virtual void openOrClose(Id<Yard> yard) = 0;
    virtual void showAxis(const DayAxis& axis, qreal scrollY) = 0;
    virtual void hover(QPointF at) = 0;
    virtual void setPointer(Qt::CursorShape shape) = 0;

    /// Shows the batch as if it started on `day`; not saved.
    virtual void showPreview(Id<Batch> batch, Day day) = 0;
    virtual void dropPreview() = 0;
    /// Saves the move; ends the preview.
    virtual void saveMove(Id<Batch> batch, Day day) = 0;
};

/// One state. Each call gives the next state, or null to stay.
class Gesture {
public:
    using Next = std::unique_ptr<Gesture>;
    virtual ~Gesture() = default;
    virtual Next press(ChartHand& /*hand*/, QPointF /*at*/) { return nullptr; }
    virtual Next moved(ChartHand& /*hand*/, QPointF /*at*/) { return nullptr; }
    virtual Next release(ChartHand& /*hand*/, QPointF /*at*/) { return nullptr; }
    /// Esc, or the pointer taken away: whatever is not saved goes.
    virtual Next cancel(ChartHand& /*hand*/) { return nullptr; }
    /// Esc means something here.
    [[nodiscard]] virtual bool isBusy() const { return true; }
};

}  // namespace tenthday
