#include "supply/counted_bars.h"

#include <algorithm>
#include <cmath>

#include "records/yard_state.h"
#include "timeline/bar_seen.h"
#include "timeline/loads.h"

namespace tenthday {
namespace {

/// What leaves the builder; open cells alone have no latest move.
Given givenBy(const Batch& batch, const BatchTimeline& timeline) {
    if (batch.start == Start::Virgin) return Given::Virgin;
    const bool open = hasGraft(batch.start) && timeline.find(Event::LatestMove) == nullptr;
    return open ? Given::Open : Given::Sealed;
}

/// Parts of counts of the whole batch are rounded so that their sum stays.
void makeWhole(std::vector<SeenCounts>& bars, std::optional<double> SeenCounts::*mark) {
    double sum = 0;
    for (auto& bar : bars) {
        if (!(bar.*mark)) continue;
        const double before = std::round(sum);
        sum += *(bar.*mark);
        bar.*mark = std::round(sum) - before;
    }
}

}  // namespace

CountedBars countedBars(const Snapshot& snapshot, const Ptr<Batch>& batch,
                        const BatchTimeline& timeline) {
    const auto rows = snapshot.all<BatchBar>().of(batch->id.uuid);
    std::vector<Ptr<BatchBar>> bars(rows.begin(), rows.end());
    std::sort(bars.begin(), bars.end(),
              [](const auto& a, const auto& b) { return a->bar < b->bar; });
    const auto hungry = hungryBars(snapshot, *batch);
    BatchInputs inputs;
    inputs.batch = batch;
    inputs.bars = bars;
    inputs.outcomes = snapshot.all<Outcome>().of(batch->id.uuid);
    inputs.hungryBars = hungry;
    inputs.facts = &snapshot.facts();
    CountedBars all;
    all.given = givenBy(*batch, timeline);
    auto [counts, seen] = barsSeen(inputs, all.given);
    for (const auto mark : {&SeenCounts::grafted, &SeenCounts::accepted, &SeenCounts::sealed,
                            &SeenCounts::ripe, &SeenCounts::emerged})
        makeWhole(seen, mark);
    for (std::size_t i = 0; i < bars.size(); ++i) {
        const bool isHungry = std::find(hungry.begin(), hungry.end(), bars[i]->bar) != hungry.end();
        all.bars.push_back(
            {bars[i], isHungry, acceptedShare(inputs, bars[i]->bar), seen[i], counts[i]});
    }
    return all;
}

}  // namespace tenthday
