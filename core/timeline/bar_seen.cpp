#include "timeline/bar_seen.h"

#include <algorithm>

#include "records/counted.h"
#include "timeline/loads.h"

namespace tenthday {
namespace {

/// The newest count: of one bar, or of the whole batch when `bar` is empty, as long as its bars
/// were not all counted after it.
std::optional<double> seenCount(const BatchInputs& inputs, OutcomeKind kind,
                                std::optional<std::int32_t> bar) {
    const auto newest = newestCount(inputs.outcomes, kind, bar);
    if (!newest || (!bar && countedOf(inputs.outcomes, inputs.bars, kind)->byBar))
        return std::nullopt;
    return static_cast<double>(newest->count->value);
}

SeenCounts seenOf(const BatchInputs& inputs, std::optional<std::int32_t> bar) {
    return {seenCount(inputs, OutcomeKind::Graft, bar),
            seenCount(inputs, OutcomeKind::TakeCount, bar),
            seenCount(inputs, OutcomeKind::Sealed, bar), seenCount(inputs, OutcomeKind::Ripe, bar),
            std::nullopt};
}

struct Losses {
    const BatchInputs& inputs;
    Given given;

    /// Of the bar at this place in the inputs.
    [[nodiscard]] ChainCounts counts(std::size_t bar, double grafts, const SeenCounts& seen) const {
        return expectedCounts(*inputs.facts, grafts, seen, given,
                              acceptedShare(inputs, inputs.bars[bar]->bar));
    }
};

/// Spreads a count of the whole batch over its bars, in proportion to what each had before.
void share(std::vector<ChainCounts>& bars, std::vector<SeenCounts>& seen,
           std::optional<double> total, double ChainCounts::*stage,
           std::optional<double> SeenCounts::*mark, const Losses& losses) {
    if (total) {
        double sum = 0;
        for (const auto& bar : bars) sum += bar.*stage;
        for (std::size_t i = 0; i < bars.size(); ++i)
            seen[i].*mark =
                sum > 0 ? bars[i].*stage / sum * *total : *total / static_cast<double>(bars.size());
    }
    for (std::size_t i = 0; i < bars.size(); ++i)
        bars[i] = losses.counts(i, bars[i].grafted, seen[i]);
}

/// What was found or bought counts as what it is: losses begin from there.
void countAsGiven(const BatchInputs& inputs, double cells, SeenCounts& seen) {
    const auto start = inputs.batch->start;
    if (start < Start::SealedFound) return;
    const auto give = [&](std::optional<double>& count) { count = count.value_or(cells); };
    give(seen.accepted);
    give(seen.sealed);
    if (start >= Start::Ripe) give(seen.ripe);
    if (start == Start::Virgin) give(seen.emerged);
}

/// What was counted later was there before: a stage that nobody counted had at least as many.
void liftUncounted(ChainCounts& counts, const SeenCounts& seen, Given given) {
    if (seen.ripe && !seen.sealed && given != Given::Open)
        counts.sealed = std::max(counts.sealed, counts.ripe);
    const double later = given == Given::Open ? counts.ripe : counts.sealed;
    if ((seen.sealed || seen.ripe) && !seen.accepted)
        counts.accepted = std::max(counts.accepted, later);
    if ((seen.accepted || seen.sealed || seen.ripe) && !seen.grafted)
        counts.grafted = std::max(counts.grafted, counts.accepted);
}

}  // namespace

BarsSeen barsSeen(const BatchInputs& inputs, Given given) {
    const Losses losses{inputs, given};
    BarsSeen bars;
    auto& [counts, seen] = bars;
    for (const auto& bar : inputs.bars) {
        seen.push_back(seenOf(inputs, bar->bar));
        countAsGiven(inputs, bar->cells.value, seen.back());
        counts.push_back(losses.counts(counts.size(), bar->cells.value, seen.back()));
    }
    const auto whole = seenOf(inputs, std::nullopt);
    share(counts, seen, whole.grafted, &ChainCounts::grafted, &SeenCounts::grafted, losses);
    share(counts, seen, whole.accepted, &ChainCounts::accepted, &SeenCounts::accepted, losses);
    share(counts, seen, whole.sealed, &ChainCounts::sealed, &SeenCounts::sealed, losses);
    share(counts, seen, whole.ripe, &ChainCounts::ripe, &SeenCounts::ripe, losses);
    for (std::size_t i = 0; i < counts.size(); ++i) liftUncounted(counts[i], seen[i], given);
    return bars;
}

}  // namespace tenthday
