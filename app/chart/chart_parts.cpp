#include "chart/chart_parts.h"

#include "screen_text/chart_hand_text.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/flying_text.h"
#include "screen_text/lists.h"
#include "screen_text/order_text.h"

namespace tenthday {
namespace {

QString label(const std::string& text) { return QString::fromStdString(text); }

TargetKey keyOf(const BatchOutlook& batch, const LoadSpan& span) {
    return {.hit = Hit::Load,
            .batch = batch.batch->id,
            .builder = span.builder.value_or(Id<Builder>{}),
            .day = dayOf(span.span.from),
            .index = span.step};
}

int mostCells(const LoadSpan& span) {
    double most = 0;
    for (const auto& part : span.thickness) most = std::max(most, part.cells);
    return static_cast<int>(std::lround(most));
}

/// The batch's dates; after them, what is wrong with it.
QString batchValue(const Outlook& outlook, const BatchOutlook& batch) {
    const auto& line = batch.timeline;
    auto value = chart_hand_text::batchValue(weekdayAndDay(dayOf(line.graft)),
                                             weekdayAndDay(line.hold.transferDay),
                                             weekdayAndDay(line.hold.catchDay));
    for (const auto& finding : outlook.findings) {
        const auto* of = std::get_if<Id<Batch>>(&finding.subject);
        if (of != nullptr && *of == batch.batch->id && finding.severity != Severity::Note)
            value += QStringLiteral("; ") + chart_text::trouble(finding);
    }
    if (const auto late = flying_text::late(outlook, batch); !late.isEmpty())
        value += QStringLiteral("; ") + late;
    return value;
}

void addBatches(const Outlook& outlook, std::vector<ChartPart>& parts) {
    for (const auto& batch : outlook.batches) {
        ChartPart part{ChartPart::Kind::Batch, {}, {}, {}, {}};
        part.key.batch = batch->batch->id;
        if (!batch->timeline.loads.empty()) part.key = keyOf(*batch, batch->timeline.loads.front());
        part.name = chart_hand_text::batch(label(batch->batch->label));
        part.value = batchValue(outlook, *batch);
        parts.push_back(std::move(part));
        for (const auto& span : batch->timeline.loads) {
            const auto builder = span.builder ? outlook.snapshot.find(*span.builder) : nullptr;
            parts.push_back({ChartPart::Kind::Load,
                             keyOf(*batch, span),
                             chart_hand_text::loadIn(
                                 label(batch->batch->label),
                                 builder ? label(builder->label) : chart_text::noBuilderYet()),
                             chart_text::cells(mostCells(span)) + QStringLiteral("; ") +
                                 chart_hand_text::in(dayAndClock(span.span.from)) +
                                 QStringLiteral("; ") +
                                 chart_hand_text::out(dayAndClock(span.span.until)),
                             {}});
        }
    }
}

void addYards(const Outlook& outlook, const ChartOptions& options, std::vector<ChartPart>& parts) {
    const Day day = options.chosenDay.value_or(outlook.snapshot.today());
    const auto index = (day - outlook.season.first).count();
    for (const auto& yard : outlook.nucs.yards) {
        if (index < 0 || index >= static_cast<int>(yard.days.size())) continue;
        parts.push_back(
            {ChartPart::Kind::YardDay,
             {.hit = Hit::YardRow, .yard = yard.yard->id},
             chart_hand_text::yardOn(label(yard.yard->label), weekdayAndDay(day)),
             chart_hand_text::numbers(yard.days[static_cast<std::size_t>(index)].numbers),
             {}});
    }
}

void addOrders(const ChartOptions& options, std::vector<ChartPart>& parts) {
    if (!options.orders) return;
    int index = 0;
    for (const auto& order : options.orders->orders) {
        parts.push_back(
            {ChartPart::Kind::Order,
             {.hit = Hit::OrderFlag, .day = order.order->due, .index = index++},
             chart_hand_text::orderDue(label(order.order->label), weekdayAndDay(order.order->due)),
             order_text::state(order),
             order.order->id});
    }
}

void addHidden(const HiddenLanes& hidden, std::vector<ChartPart>& parts) {
    using namespace chart_hand_text;
    if (!hidden.below.isEmpty())
        parts.push_back({ChartPart::Kind::LanesBelow,
                         {.hit = Hit::LanesBelow},
                         lanesBelowName(),
                         listed(hidden.below),
                         {}});
    if (!hidden.above.isEmpty())
        parts.push_back({ChartPart::Kind::LanesAbove,
                         {.hit = Hit::LanesAbove},
                         lanesAboveName(),
                         listed(hidden.above),
                         {}});
}

}  // namespace

std::vector<ChartPart> chartParts(const Outlook& outlook, const ChartOptions& options,
                                  const HiddenLanes& hidden) {
    std::vector<ChartPart> parts;
    addBatches(outlook, parts);
    addYards(outlook, options, parts);
    addOrders(options, parts);
    addHidden(hidden, parts);
    return parts;
}

}  // namespace tenthday
