#include "chart/planned_stays.h"

#include <algorithm>

#include "chart/outline.h"
#include "outlook/plan_of.h"
#include "records/relations.h"

namespace tenthday {
namespace {

void frame(const LaneInput& input, const DayWindow& days, qreal top, qreal bottom, Sheet& sheet) {
    const qreal left = std::max(input.axis.xOf(days.first), input.axis.left());
    const qreal right = std::min(input.axis.xOf(days.last + Days{1}), input.axis.right());
    if (left < right) layOutline(Layer::Marks, sheet.snap().rect(left, top, right, bottom), sheet);
}

/// Its dates by the plan that stands in the book, reckoned anew.
std::optional<DayWindow> byPlan(const Outlook& outlook, Id<Batch> batch, const DayWindow& days) {
    const auto* is = outlook.find(batch);
    const bool known = is != nullptr && outlook.mating && outlook.snapshot.find(batch);
    const auto plan = known ? planOf(outlook, batch) : std::nullopt;
    if (!plan) return std::nullopt;
    // Cells that went in later than their batch keep their distance.
    const auto later = days.first - is->timeline.hold.transferDay;
    return DayWindow{plan->hold.transferDay + later, plan->hold.catchDay + later};
}

}  // namespace

std::optional<Moment::duration> shiftToPlan(const Outlook& outlook, const BatchOutlook* batch) {
    if (batch == nullptr || !batch->timeline.grafted) return std::nullopt;
    const auto& row = *batch->batch;
    const Moment planned =
        reckonedGraft(row.start, momentOf(row.day, row.hour), outlook.snapshot.facts());
    if (dayOf(planned) == dayOf(batch->timeline.graft)) return std::nullopt;
    return planned - batch->timeline.graft;
}

std::optional<DayWindow> plannedDays(const LaneInput& input, Id<Batch> batch,
                                     const DayWindow& days) {
    const bool asked = input.isSelected(batch) || shiftToPlan(input.outlook, input.find(batch));
    const auto planned = asked ? byPlan(input.outlook, batch, days) : std::nullopt;
    return planned == days ? std::nullopt : planned;
}

void layPlannedStays(const LaneInput& input, const YardPicture& picture, Sheet& sheet) {
    for (const auto& block : picture.blocks)
        for (const auto& stay : picture.yard->blocks)
            if (stay.batch == block.batch)
                if (const auto days = plannedDays(input, stay.batch, stay.days))
                    frame(input, *days, block.top, block.bottom, sheet);
}

void layPlannedStays(const LaneInput& input, const SideOutlook& side, const QRectF& row,
                     Sheet& sheet) {
    for (const auto& round : side.rounds)
        if (const auto days = plannedDays(input, round.batch, {round.transferDay, round.catchDay}))
            frame(input, *days, row.top(), row.bottom(), sheet);
}

}  // namespace tenthday
