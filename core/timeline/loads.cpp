#include "timeline/loads.h"

#include <algorithm>

#include "timeline/bar_seen.h"

namespace tenthday {
namespace {

std::optional<Id<Builder>> builderOf(const BatchInputs& inputs, std::int32_t bar,
                                     std::int32_t step) {
    for (const auto& load : inputs.loads)
        if (load->bar == bar && load->step == step) return load->builder;
    return std::nullopt;
}

/// Cells from graft to take, from take to sealing, and sealed; cut to the stay.
std::vector<LoadSpan::Thickness> thicknessOf(const LoadSpan& load, const ChainCounts& counts,
                                             Moment counted, Moment sealed) {
    std::vector<LoadSpan::Thickness> all{{load.span.from, counts.grafted, false},
                                         {counted, counts.accepted, false},
                                         {sealed, counts.sealed, true}};
    std::vector<LoadSpan::Thickness> kept;
    for (const auto& piece : all) {
        if (piece.from >= load.span.until) break;
        if (piece.from <= load.span.from) kept.clear();
        kept.push_back({std::max(piece.from, load.span.from), piece.cells, piece.sealed});
    }
    return kept;
}

}  // namespace

double acceptedShare(const BatchInputs& inputs, std::int32_t bar) {
    const bool hungry = std::find(inputs.hungryBars.begin(), inputs.hungryBars.end(), bar) !=
                        inputs.hungryBars.end();
    const auto& facts = *inputs.facts;
    return hungry ? std::min(facts[Fact::AcceptedDearth], facts[Fact::Accepted])
                  : facts[Fact::Accepted];
}

std::vector<ChainCounts> barCounts(const BatchInputs& inputs, Given given) {
    return barsSeen(inputs, given).counts;
}

std::vector<LoadSpan> loadsOf(const BatchInputs& inputs, const BatchDates& dates,
                              const std::vector<ChainCounts>& bars) {
    const Moment counted = hoursAfter(dates.graft, (*inputs.facts)[Fact::TakeCountFromH]);
    const Moment sealed = hoursAfter(dates.graft, dates.clock.sealed().mean());
    // What was found or bought stands nowhere before that; ripe cells and virgins not at all.
    const auto start = inputs.batch->start;
    const bool isFound = start == Start::SealedFound;
    const Moment begin = isFound ? momentOf(inputs.batch->day, inputs.batch->hour) : Moment::min();
    std::vector<LoadSpan> loads;
    if (start >= Start::Ripe) return loads;
    for (const auto& step : inputs.steps) {
        if (isFound && step != inputs.steps.back() &&
            hoursAfter(dates.graft, step->toHour) <= begin)
            continue;
        const std::size_t first = loads.size();
        std::vector<ChainCounts> sums;
        const bool last = step == inputs.steps.back();
        for (std::size_t i = 0; i < bars.size(); ++i) {
            const auto bar = inputs.bars[i]->bar;
            const auto builder = builderOf(inputs, bar, step->step);
            auto load =
                std::find_if(loads.begin() + static_cast<std::ptrdiff_t>(first), loads.end(),
                             [&](const LoadSpan& l) { return l.builder == builder; });
            if (load == loads.end()) {
                // The last step lasts until the cells really leave.
                const Moment until = last ? dates.leaves : hoursAfter(dates.graft, step->toHour);
                const Moment from = std::max(hoursAfter(dates.graft, step->fromHour), begin);
                loads.push_back({builder,
                                 step->where,
                                 step->step,
                                 {},
                                 {from, std::max(until, from + std::chrono::minutes{1})},
                                 dayOf(until) + Days{step->restDays},
                                 {}});
                sums.emplace_back();
                load = loads.end() - 1;
            }
            load->bars.push_back(bar);
            sums[static_cast<std::size_t>(load - loads.begin()) - first] += bars[i];
        }
        for (std::size_t i = first; i < loads.size(); ++i)
            loads[i].thickness = thicknessOf(loads[i], sums[i - first], counted, sealed);
    }
    return loads;
}

}  // namespace tenthday
