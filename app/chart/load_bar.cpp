#include "chart/load_bar.h"

#include "chart/bar_shape.h"

namespace tenthday {
namespace {

constexpr qreal kStub = 6;

/// Dots on the open part, leaving the batch's number free.
void layOpenDots(const QRectF& open, const QRectF& words, Sheet& sheet) {
    constexpr qreal kSpacing = 5;
    constexpr qreal kAcross = 1.8;
    const auto part = [&](qreal left, qreal right) {
        if (right > left)
            sheet.dots(Layer::Body, Role::OpenDots,
                       QRectF(QPointF(left, open.top()), QPointF(right, open.bottom())), kSpacing,
                       kAcross);
    };
    if (words.isNull()) return part(open.left(), open.right());
    part(open.left(), words.left());
    part(words.right(), open.right());
}

bool isLastLoad(const LaneInput& input, const BuilderLoad& load) {
    const auto* batch = input.find(load.batch);
    if (!batch) return false;
    for (const auto& other : batch->timeline.loads)
        if (other.span.until > load.span->span.until) return false;
    return true;
}

void layExit(const LaneInput& input, const BuilderLoad& load, const BarShape& bar, qreal base,
             BuilderTracks& tracks, Sheet& sheet, int target) {
    if (!isLastLoad(input, load)) return;
    if (input.isSelected(load.batch))
        input.ribbon.outs.push_back(
            {{bar.right, base}, bar.lastCells, base - bar.edge.points.back().y()});
    if (tracks.isDense() || input.isSelected(load.batch)) return;
    if (bar.right <= input.axis.left() || bar.right > input.axis.right() + 4) return;
    const auto stub = sheet.snap().rect(bar.right - 4, base, bar.right, base + kStub);
    sheet.fill(Layer::Body, Role::SealedCells, stub, target);
    tracks.addMark(stub);
}

/// The upper edge of a selected batch's bars before they are grafted: dragged, it sets how many
/// are. Where several bars stand there, it is the last one's.
void layGraftsEdge(const LaneInput& input, const BatchOutlook& batch, const BuilderLoad& load,
                   const BarShape& bar, qreal from, qreal to, Sheet& sheet) {
    constexpr qreal kReach = 6;  ///< above the edge, and half of that below
    constexpr qreal kGrip = 12;
    const auto& options = input.options;
    if (!input.isSelected(load.batch) || !options.alsoSelected.empty() || !options.canFold) return;
    if (load.span->step != 1 || load.span->bars.empty() || batch.timeline.grafted) return;
    if (to - from < kGrip || bar.left < input.axis.left()) return;
    const qreal top = bar.edge.highestY();
    const int target =
        sheet.target({.hit = Hit::Grafts, .batch = load.batch, .index = load.span->bars.back()},
                     QRectF(QPointF(from, top - kReach), QPointF(to, top + kReach / 2)));
    const qreal middle = std::max((from + to) / 2, to - kGrip);  // clear of its number
    for (const qreal y : {top - 4.0, top - 1.5})
        sheet.fill(
            Layer::Marks, Role::Selection,
            sheet.snap().rect(middle - kGrip / 2, y, middle + kGrip / 2, y + sheet.snap().hair()),
            target);
}

/// A rectangle where its edge is level.
void layPart(Role role, const BarEdge& edge, qreal base, Sheet& sheet, int target) {
    if (edge.points.empty()) return;
    const qreal top = edge.highestY();
    if (top == edge.lowestY())
        sheet.fill(Layer::Body, role,
                   {QPointF(edge.points.front().x(), top), QPointF(edge.points.back().x(), base)},
                   target);
    else
        sheet.path(Layer::Body, role, edge.closedAt(base), target);
}

/// The open part in its texture, the sealed part plain.
void layParts(const BarShape& bar, qreal from, qreal to, qreal base, qreal words, bool textured,
              Sheet& sheet, int target) {
    if (bar.sealedAt > from) {
        const qreal end = std::min(bar.sealedAt, to);
        const auto open = bar.edge.between(from, end);
        layPart(Role::OpenCells, open, base, sheet, target);
        if (textured)
            layOpenDots({QPointF(from, open.lowestY()), QPointF(end, base)},
                        {QPointF(from, base - 1), QPointF(std::min(words, to), base)}, sheet);
    }
    if (bar.sealedAt < to)
        layPart(Role::SealedCells, bar.edge.between(std::max(bar.sealedAt, from), to), base, sheet,
                target);
}

}  // namespace

int layLoadBar(const LaneInput& input, const BuilderRow& row, const BuilderLoad& load, qreal base,
               BuilderTracks& tracks, Sheet& sheet) {
    const auto bar = barShape(input, *load.span, base, tracks.pxPerCell, sheet.snap());
    const auto [from, to] = bar.inSight(input.axis);
    if (bar.edge.points.empty() || from >= to) return -1;
    const QRectF rect(QPointF(from, bar.edge.between(from, to).highestY()), QPointF(to, base));
    const int target =
        sheet.target({.hit = Hit::Load,
                      .batch = load.batch,
                      .builder = row.builder ? row.builder->builder->id : Id<Builder>{},
                      .day = dayOf(load.span->span.from),
                      .index = load.span->step},
                     rect);
    const auto* batch = input.find(load.batch);
    const auto label = batch ? QString::fromStdString(batch->batch->label) : QString();
    const qreal words = from + sheet.ruler().width(label, Type::Batch) + 7;
    layParts(bar, from, to, base, words, !tracks.isDense(), sheet, target);
    tracks.addBar(rect);
    layExit(input, load, bar, base, tracks, sheet, target);
    if (input.isMarked(load.batch))
        sheet.frame(Layer::Marks, Role::Selection, rect.adjusted(-3, -3, 3, 3), 1.6, 4);
    if (batch) layGraftsEdge(input, *batch, load, bar, from, std::min(bar.sealedAt, to), sheet);
    return target;
}

}  // namespace tenthday
