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
