#include "chart/gesture_dragging_batch.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

#include "chart/gesture_resting.h"

namespace tenthday {
namespace {

/// Days from a day to an x, with the part of the day. Goes on while days scroll.
qreal daysTo(const DayAxis& axis, Day from, qreal x) {
    return (x - axis.xOf(from)) / axis.dayWidth();
}

}  // namespace

DraggingBatchGesture::DraggingBatchGesture(const ChartHand& hand, QPointF grabbed,
                                           const TargetKey& place, Day start)
    : place_(place),
      batches_(hand.movingWith(place.batch)),
      start_(start),
      grabbedDays_(daysTo(hand.axis(), start, grabbed.x())),
      grabbedY_(grabbed.y() + hand.scrollY()) {
    shown_.batches = batches_;
}

qreal DraggingBatchGesture::daysAt(const ChartHand& hand, QPointF at) const {
    return daysTo(hand.axis(), start_, at.x()) - grabbedDays_;
}

ChartWish DraggingBatchGesture::wishAt(const ChartHand& hand, QPointF at) const {
    ChartWish wish;
    wish.batches = batches_;
    wish.by = hand.drawn(start_, daysAt(hand, at));
    if (!hasGoneAcross_) return wish;
    if (place_.hit == Hit::Load) {
        const auto row = hand.placeAt(at, Hit::BuilderRow);
        if (!row.builder.isNone() && row.builder != place_.builder)
            wish.load = hand.loadMove(place_, row.builder);
    }
    if (place_.hit == Hit::YardDay) {
        const auto row = hand.placeAt(at, Hit::YardRow);
        if (!row.yard.isNone() && row.yard != place_.yard)
            wish.share = ChartWish::Share{place_.batch, place_.yard, row.yard};
    }
    return wish;
}

Gesture::Next DraggingBatchGesture::moved(ChartHand& hand, QPointF at) {
    if (!begun_) hand.beginMagnet(place_.batch);
    begun_ = true;
    hand.setPointer(Qt::ClosedHandCursor);
    constexpr qreal kAcross = 10;  // px: rows may be thinner than a hand is steady, and may move
    hasGoneAcross_ |= std::abs(at.y() + hand.scrollY() - grabbedY_) >= kAcross;
    const auto wish = wishAt(hand, at);
    const qreal days = daysAt(hand, at);
    const int way = days == days_ ? towards_ : days > days_ ? 1 : -1;
    if (std::exchange(towards_, way) != way) stride_ = 1;
    days_ = days;
    if (wish == shown_) return nullptr;
    if (wish.by != shown_.by) stride_ = static_cast<qreal>(std::abs((wish.by - shown_.by).count()));
    shown_ = wish;
    if (wish.isEmpty())
        hand.dropPreview();
    else
        hand.showPreview(wish);
    return nullptr;
}

/// @param beyond  the first day further than this one  @param further  days from here, at the least
ChartWish DraggingBatchGesture::wishAhead(const ChartHand& hand, int way, Days beyond,
                                          qreal further) const {
    constexpr qreal kStep = 0.5;
    constexpr int kSteps = 5;  // a clear day draws from so far
    auto wish = shown_;
    wish.by = beyond;
    for (int i = 1; i <= kSteps && way * (wish.by - beyond).count() <= 0; ++i)
        wish.by = hand.drawn(start_, days_ + way * (further + i * kStep));
    return wish;
}

std::vector<ChartWish> DraggingBatchGesture::expected(const ChartHand& hand) const {
    const auto next = wishAhead(hand, towards_, shown_.by, stride_ - 1);
    const auto behind = wishAhead(hand, -towards_, shown_.by, 0);
    const auto second = wishAhead(hand, towards_, next.by, 2 * stride_ - 1);
    const auto third = wishAhead(hand, towards_, second.by, 3 * stride_ - 1);
    std::vector<ChartWish> wishes;
    for (const auto& wish : {next, behind, second, third})
        if (!wish.isEmpty() && std::find(wishes.begin(), wishes.end(), wish) == wishes.end())
            wishes.push_back(wish);
    return wishes;
}

Gesture::Next DraggingBatchGesture::release(ChartHand& hand, QPointF at) {
    moved(hand, at);
    if (!shown_.isEmpty()) hand.save(shown_);
    return end(hand);
}

Gesture::Next DraggingBatchGesture::cancel(ChartHand& hand) {
    hand.dropPreview();
    return end(hand);
}

Gesture::Next DraggingBatchGesture::end(ChartHand& hand) {
    hand.endMagnet();
    hand.setPointer(Qt::ArrowCursor);
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
