/// @file gesture.h  What the pointer is doing, as a small state machine: one state per file.
///
///   resting --press--> pressed --moved past the drag distance--> dragging_batch, dragging_edge
///      ^                  |                                      choosing_day, panning, jumping
///      +---- release, Esc +---------------------------------------------+
#pragma once
#include <QPointF>
#include <memory>
#include <optional>
#include <vector>

#include "chart/chart_item.h"
#include "chart/chart_options.h"
#include "chart/chart_wish.h"

namespace tenthday {

/// What a gesture may ask of the chart and do to it.
class ChartHand {
public:
    virtual ~ChartHand() = default;
    [[nodiscard]] virtual TargetKey under(QPointF at) const = 0;
    /// The topmost place of that kind at a point, whatever else lies over it.
    [[nodiscard]] virtual TargetKey placeAt(QPointF at, Hit hit) const = 0;
    [[nodiscard]] virtual const DayAxis& axis() const = 0;
    [[nodiscard]] virtual qreal scrollY() const = 0;
    [[nodiscard]] virtual qreal pxPerCell() const = 0;   ///< in a builder
    [[nodiscard]] virtual int dragDistance() const = 0;  ///< px, from the desktop's settings
    /// The key that adds to what is selected is held.
    [[nodiscard]] virtual bool addsToSelection() const = 0;
    /// Day on which a batch starts as saved; none when it cannot be moved.
    [[nodiscard]] virtual std::optional<Day> savedStart(Id<Batch> batch) const = 0;
    /// The batches that move with one: all that are selected where it is among them.
    [[nodiscard]] virtual std::vector<Id<Batch>> movingWith(Id<Batch> batch) const = 0;
    /// The cells that stand at a place, moved to another builder; none where that cannot take them.
    [[nodiscard]] virtual std::optional<LoadMove> loadMove(const TargetKey& load,
                                                           Id<Builder> to) const = 0;
    /// Grafts of a bar as saved.
    [[nodiscard]] virtual int savedGrafts(Id<Batch> batch, std::int32_t bar) const = 0;

    virtual void choose(Day day) = 0;
    virtual void select(Id<Batch> batch) = 0;
    /// Adds it to what is selected, or takes it out.
    virtual void selectAlso(Id<Batch> batch) = 0;
    /// Shows a yard nuc by nuc, or as a stack only.
    virtual void openOrClose(Id<Yard> yard) = 0;
    /// The batch in trouble is selected and comes into sight, with what is wrong with it.
    virtual void goToTrouble(const TargetKey& trouble) = 0;
    virtual void foldOrUnfold(LaneName lane) = 0;
    virtual void foldOrUnfoldLegend() = 0;
    /// The lanes below come into sight (by > 0) or those above, as many as the plot holds.
    virtual void scrollLanes(int by) = 0;
    virtual void showAxis(const DayAxis& axis, qreal scrollY) = 0;
    virtual void hover(QPointF at) = 0;
    virtual void setPointer(Qt::CursorShape shape) = 0;

    /// A drag along days begins: days on which the batch clashes with nothing are looked for.
    virtual void beginMagnet(Id<Batch> batch) = 0;
    virtual void endMagnet() = 0;
    /// Whole days for so many days of a drag: drawn to clear days, unless the freeing key is held.
    [[nodiscard]] virtual Days drawn(Day start, qreal days) const = 0;

    /// Shows the season as if it were so; not saved.
    virtual void showPreview(const ChartWish& wish) = 0;
    virtual void dropPreview() = 0;
    /// Saves it in one step; ends the preview.
    virtual void save(const ChartWish& wish) = 0;
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
    /// Days or lanes scroll on their own where the pointer comes near an edge.
    [[nodiscard]] virtual bool scrollsAtEdges() const { return false; }
    /// What it is likely to wish next, the likelier first.
    [[nodiscard]] virtual std::vector<ChartWish> expected(const ChartHand& /*hand*/) const {
        return {};
    }
    /// Esc means something here.
    [[nodiscard]] virtual bool isBusy() const { return true; }
};

}  // namespace tenthday
