#include "chart/gesture_pressed.h"

#include <QLineF>

#include "chart/gesture_choosing_day.h"
#include "chart/gesture_dragging_batch.h"
#include "chart/gesture_dragging_edge.h"
#include "chart/gesture_jumping.h"
#include "chart/gesture_panning.h"
#include "chart/gesture_resting.h"

namespace tenthday {

Gesture::Next PressedGesture::moved(ChartHand& hand, QPointF at) {
    if (QLineF(at_, at).length() < hand.dragDistance()) return nullptr;
    Next next;
    if (key_.hit == Hit::Head) {
        next = std::make_unique<ChoosingDayGesture>();
    } else if (key_.hit == Hit::Strip) {
        next = std::make_unique<JumpingGesture>(hand.axis(), hand.scrollY());
    } else if (key_.hit == Hit::Grafts) {
        next = std::make_unique<DraggingEdgeGesture>(hand, at_, key_);
    } else if (!key_.batch.isNone() && key_.hit != Hit::Trouble) {  // words are no batch
        const auto start = hand.savedStart(key_.batch);
        if (!start) return nullptr;
        const auto along = hand.movingWith(key_.batch);
        if (along.size() == 1) hand.select(key_.batch);
        next = std::make_unique<DraggingBatchGesture>(hand, at_, key_, *start);
    } else {
        next = std::make_unique<PanningGesture>(at_, hand.axis(), hand.scrollY());
    }
    if (auto further = next->moved(hand, at)) return further;
    return next;
}

Gesture::Next PressedGesture::release(ChartHand& hand, QPointF at) {
    if (key_.hit == Hit::YardName) hand.openOrClose(key_.yard);
    if (key_.hit == Hit::LaneName) hand.foldOrUnfold(static_cast<LaneName>(key_.index));
    if (key_.hit == Hit::LegendName) hand.foldOrUnfoldLegend();
    if (key_.hit == Hit::Strip)
        return JumpingGesture(hand.axis(), hand.scrollY()).release(hand, at);
    if (!key_.batch.isNone() && hand.addsToSelection()) {
        hand.selectAlso(key_.batch);
        return std::make_unique<RestingGesture>();
    }
    if (key_.hit == Hit::Trouble)
        hand.goToTrouble(key_);
    else if (!key_.batch.isNone())
        hand.select(key_.batch);
    const bool hasDay = key_.hit == Hit::Head || key_.hit == Hit::Ground ||
                        key_.hit == Hit::YardDay || key_.hit == Hit::CellsDay ||
                        key_.hit == Hit::Nuc || key_.hit == Hit::FlyingDay ||
                        key_.hit == Hit::OutsideLimits;
    if (hasDay && key_.day) hand.choose(*key_.day);
    return std::make_unique<RestingGesture>();
}

Gesture::Next PressedGesture::cancel(ChartHand& /*hand*/) {
    return std::make_unique<RestingGesture>();
}

}  // namespace tenthday
