#include "timeline/batch_timeline.h"

#include <algorithm>
#include <cmath>

#include "records/relations.h"
#include "timeline/hold.h"
#include "timeline/loads.h"

namespace tenthday {
namespace {

/// The first outcome of a kind, as a moment; an hour not given is the batch's own.
std::optional<Moment> firstSeen(const BatchInputs& inputs, OutcomeKind kind) {
    std::optional<Moment> first;
    for (const auto& outcome : inputs.outcomes) {
        if (outcome->kind != kind || outcome->side) continue;
        const auto fallback = kind == OutcomeKind::Graft ? inputs.batch->hour : std::nullopt;
        const Moment seen = momentOf(outcome->day, outcome->hour ? outcome->hour : fallback);
        first = first ? std::min(*first, seen) : seen;
    }
    return first;
}

/// Counted started cells: of the whole batch; else the newest of each bar, where all are counted.
std::optional<double> startedAsCounted(const BatchInputs& inputs) {
    const auto newest = [&](std::optional<std::int32_t> bar) {
        Ptr<Outcome> found;
        for (const auto& outcome : inputs.outcomes)
            if (outcome->kind == OutcomeKind::TakeCount && outcome->bar == bar && outcome->count &&
                (!found || outcome->day >= found->day))
                found = outcome;
        return found;
    };
    if (const auto whole = newest({})) return whole->count->value;
    double sum = 0;
    for (const auto& bar : inputs.bars) {
        const auto count = newest(bar->bar);
        if (!count) return std::nullopt;
        sum += count->count->value;
    }
    return inputs.bars.empty() ? std::nullopt : std::optional(sum);
}

/// Cells given before they are sealed count for the whole batch only when they are all of it: else
/// the rest still hangs in its box until the method's end.
bool isPartGivenOpen(const BatchInputs& inputs, Moment sealed) {
    std::int32_t open = 0;
    for (const auto& placement : inputs.placements)
        if (placement->target == CellTarget::Nuc)
            open += momentOf(placement->day, placement->hour) < sealed ? 1 : 0;
    double started = 0;
    for (const auto& bar : inputs.bars)
        started += bar->cells.value * acceptedShare(inputs, bar->bar);
    if (const auto counted = startedAsCounted(inputs)) started = *counted;
    return open > 0 && open < std::lround(started);
}

struct Placed {
    std::optional<Moment> first;  ///< done ones before planned ones, the earliest of each
    std::optional<Moment> last;
};

/// The day on which the queens are likely out, in the nest's heat. What went into a nuc later was a
/// virgin out of a cage: she left the builder with the cells.
Day likelyOut(const DatePlan& plan, const Facts& facts) {
    if (plan.emergenceSeen) return dayOf(*plan.emergenceSeen);
    if (plan.start == Start::Virgin) return kLastDay;
    const double from = plan.larvaFromH.value_or(facts[Fact::LarvaFromH]);
    const double until = plan.larvaToH.value_or(facts[Fact::LarvaToH]);
    const Moment graft = plan.graftSeen.value_or(reckonedGraft(plan.start, plan.begin, facts));
    return dayOf(
        hoursAfter(graft, facts[Fact::EmergenceH] - facts[Fact::EggH] - (from + until) / 2));
}

/// When cells go into nucs by what is placed.
Placed placedAt(const BatchInputs& inputs, Moment sealed, Day lastOfCells) {
    const bool skipOpen = isPartGivenOpen(inputs, sealed);
    std::optional<Moment> done;
    std::optional<Moment> planned;
    Placed placed;
    for (const auto& placement : inputs.placements) {
        if (placement->target != CellTarget::Nuc) continue;
        // What is only planned so late still hangs in its builder, with all dangers.
        if (placement->done && placement->day > lastOfCells) continue;
        const Moment moment = momentOf(placement->day, placement->hour);
        if (skipOpen && moment < sealed) continue;
        auto& at = placement->done ? done : planned;
        at = at ? std::min(*at, moment) : moment;
        placed.last = placed.last ? std::max(*placed.last, moment) : moment;
    }
    placed.first = done ? done : planned;
    return placed;
}

/// Living sealed cells in the fullest builder: the first queen out threatens them all.
double cellsInFullestBox(const BatchInputs& inputs, const std::vector<ChainCounts>& bars) {
    if (inputs.steps.empty()) return 1;
    double fullest = 1;
    std::vector<std::pair<std::optional<Id<Builder>>, double>> boxes;
    for (std::size_t i = 0; i < bars.size(); ++i) {
        std::optional<Id<Builder>> builder;
        for (const auto& load : inputs.loads)
            if (load->bar == inputs.bars[i]->bar && load->step == inputs.steps.back()->step)
                builder = load->builder;
        auto box = std::find_if(boxes.begin(), boxes.end(),
                                [&](const auto& b) { return b.first == builder; });
        if (box == boxes.end()) box = boxes.insert(boxes.end(), {builder, 0});
        box->second += bars[i].sealed;
        fullest = std::max(fullest, box->second);
    }
    return fullest;
}

DatePlan planOf(const BatchInputs& inputs) {
    const Batch& batch = *inputs.batch;
    DatePlan plan;
    plan.start = batch.start;
    plan.begin = momentOf(batch.day, batch.hour);
    if (batch.larvaFromH || batch.larvaToH) {
        plan.larvaFromH = batch.larvaFromH ? batch.larvaFromH : batch.larvaToH;
        plan.larvaToH = batch.larvaToH ? batch.larvaToH : batch.larvaFromH;
    }
    for (const auto& step : inputs.steps) plan.steps.push_back(*step);
    plan.catchRule = inputs.catchRule;
    plan.mating = batch.mating;
    plan.stationDays = batch.mating == Mating::Station && !inputs.stays.empty();
    if (batch.mating == Mating::Insemination)
        for (const auto& stay : inputs.stays)
            plan.inseminated = std::max(plan.inseminated.value_or(stay->until), stay->until);
    plan.graftSeen = firstSeen(inputs, OutcomeKind::Graft);
    plan.emergenceSeen = firstSeen(inputs, OutcomeKind::Emergence);
    const auto placed =
        placedAt(inputs, sealingOf(plan, *inputs.facts), likelyOut(plan, *inputs.facts));
    plan.transfer = placed.first;
    plan.leaves = placed.last;
    return plan;
}

/// Marks what was counted or looked at; its day stays the one it was seen on.
void markSeen(const BatchInputs& inputs, BatchTimeline& timeline, Trace* trace) {
    constexpr std::array<std::pair<OutcomeKind, Event>, 3> kSeen{
        std::pair{OutcomeKind::TakeCount, Event::TakeCount},
        std::pair{OutcomeKind::Sealed, Event::Sealed}, std::pair{OutcomeKind::Ripe, Event::Ripe}};
    for (const auto& [kind, event] : kSeen) {
        const auto seen = firstSeen(inputs, kind);
        if (!seen) continue;
        for (auto& dates : timeline.events)
            if (dates.event == event) dates = {event, *seen, *seen, *seen, EventNote::Observed};
        if (trace == nullptr) continue;
        for (auto& reason : trace->reasons)
            if (reason.event == event)
                reason = {event, Reason::Kind::Observed, std::nullopt, std::nullopt, 0, {}};
    }
}

}  // namespace

const EventDates* BatchTimeline::find(Event event) const {
    for (const auto& dates : events)
        if (dates.event == event) return &dates;
    return nullptr;
}

BatchTimeline timelineOf(const BatchInputs& inputs, Trace* trace) {
    auto plan = planOf(inputs);
    const auto bars = barCounts(inputs, givenAs(plan, *inputs.facts));
    plan.cellsInBox = cellsInFullestBox(inputs, bars);
    auto dates = datesOf(plan, *inputs.facts, *inputs.mating, trace);
    BatchTimeline timeline;
    timeline.graft = dates.graft;
    timeline.grafted = plan.graftSeen.has_value();
    timeline.clock = dates.clock;
    for (const auto& bar : bars) timeline.counts += bar;
    timeline.counts.laying *= 1 - dates.neverMates;
    timeline.counts.good *= 1 - dates.neverMates;
    timeline.neverMates = dates.neverMates;
    timeline.weather = dates.weather;
    timeline.levelEggs = dates.levelEggs;
    timeline.loads = loadsOf(inputs, dates, bars);
    timeline.hold = holdOf(dates, *inputs.facts);
    timeline.hold.catchRule = inputs.catchRule;
    timeline.latestMove = dates.latestMove;
    timeline.events = std::move(dates.events);
    markSeen(inputs, timeline, trace);
    return timeline;
}

}  // namespace tenthday
