#include "chart/gesture_pressed.h"

#include <QLineF>

#include "chart/gesture_choosing_day.h"
#include "chart/gesture_dragging_batch.h"
#include "chart/gesture_dragging_edge.h"
#include "chart/gesture_jumping.h"
#include "chart/gesture_panning.h"
#include "chart/gesture_resting.h"

namespace tenthday {

bool PressedGesture::isOnBatch() const {
    return !key_.batch.isNone() && key_.hit != Hit::Trouble;  // words are no batch
}

Gesture::Next PressedGesture::begun(const ChartHand& hand) const {
    if (key_.hit == Hit::Head) return std::make_unique<ChoosingDayGesture>();
    if (key_.hit == Hit::Strip)
        return std::make_unique<JumpingGesture>(hand.axis(), hand.scrollY());
    if (key_.hit == Hit::Grafts) return std::make_unique<DraggingEdgeGesture>(hand, at_, key_);
    if (!isOnBatch()) return std::make_unique<PanningGesture>(at_, hand.axis(), hand.scrollY());
    const auto start = hand.savedStart(key_.batch);
    if (!start) return nullptr;
    return std::make_unique<DraggingBatchGesture>(hand, at_, key_, *start);
}

Gesture::Next PressedGesture::moved(ChartHand& hand, QPointF at) {
    if (QLineF(at_, at).length() < hand.dragDistance()) return nullptr;
    auto next = begun(hand);
    if (!next) return nullptr;
    if (isOnBatch() && key_.hit != Hit::Grafts && hand.movingWith(key_.batch).size() == 1)
        hand.select(key_.batch);
    if (auto further = next->moved(hand, at)) return further;
    return next;
}

std::vector<ChartWish> PressedGesture::expected(const ChartHand& hand) const {
    const auto next = begun(hand);
    return next ? next->expected(hand) : std::vector<ChartWish>{};
}

Gesture::Next PressedGesture::release(ChartHand& hand, QPointF at) {
    const auto key = key_;  // whoever is told of it may end this gesture
    if (key.hit == Hit::YardName) hand.openOrClose(key.yard);
    if (key.hit == Hit::LaneName) hand.foldOrUnfold(static_cast<LaneName>(key.index));
    if (key.hit == Hit::LegendName) hand.foldOrUnfoldLegend();
    if (key.hit == Hit::LanesBelow) hand.scrollLanes(1);
    if (key.hit == Hit::LanesAbove) hand.scrollLanes(-1);
    if (key.hit == Hit::Strip) return JumpingGesture(hand.axis(), hand.scrollY()).release(hand, at);
    if (!key.batch.isNone() && hand.addsToSelection()) {
        hand.selectAlso(key.batch);
        return std::make_unique<RestingGesture>();
    }
    if (key.hit == Hit::Trouble)
        hand.goToTrouble(key);
    else if (!key.batch.isNone())
        hand.select(key.batch);
    const bool hasDay = key.hit == Hit::Head || key.hit == Hit::Ground || key.hit == Hit::YardDay ||
                        key.hit == Hit::CellsDay || key.hit == Hit::Nuc ||
                        key.hit == Hit::FlyingDay || key.hit == Hit::OutsideLimits;
    if (hasDay && key.day) hand.choose(*key.day);
    return std::make_unique<RestingGesture>();
}

Gesture::Next PressedGesture::cancel(ChartHand& /*hand*/) {
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
