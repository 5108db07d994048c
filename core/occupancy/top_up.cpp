#include "occupancy/top_up.h"

#include <algorithm>

#include "records/counted.h"

namespace tenthday {
namespace {

using Bars = std::span<const Ptr<BatchBar>>;

std::int32_t cellsOf(Bars bars) {
    std::int32_t cells = 0;
    for (const auto& bar : bars) cells += bar->cells.value;
    return cells;
}

/// Cups of the bars that were counted; of all where the whole batch was.
std::int32_t cupsNotStarted(std::span<const Ptr<Outcome>> outcomes, Bars bars) {
    if (const auto all = countedOf(outcomes, bars, OutcomeKind::TakeCount))
        return cellsOf(bars) - all->cells;
    std::int32_t cups = 0;
    for (const auto& bar : bars)
        if (const auto own = newestCount(outcomes, OutcomeKind::TakeCount, bar->bar))
            cups += std::max(0, bar->cells.value - own->count->value);
    return cups;
}

}  // namespace

bool isTopUpOf(const Snapshot& snapshot, Id<Batch> earlier, Id<Batch> later) {
    const auto first = snapshot.find(earlier);
    const auto second = snapshot.find(later);
    if (!first || !second || first->method != second->method) return false;
    const auto before = snapshot.all<BatchBar>().of(earlier.uuid);
    const auto after = snapshot.all<BatchBar>().of(later.uuid);
    const auto isOfTheSame = [&](const auto& bar) {
        return std::any_of(before.begin(), before.end(),
                           [&](const auto& other) { return other->breeder == bar->breeder; });
    };
    return !after.empty() &&
           cellsOf(after) <= cupsNotStarted(snapshot.all<Outcome>().of(earlier.uuid), before) &&
           std::all_of(after.begin(), after.end(), isOfTheSame);
}

bool isRepeatOf(const Snapshot& snapshot, Id<Batch> earlier, Id<Batch> later) {
    const auto first = snapshot.find(earlier);
    const auto second = snapshot.find(later);
    if (!first || !second || first->method != second->method || first->start != second->start)
        return false;
    const auto before = snapshot.all<BatchBar>().of(earlier.uuid);
    const auto after = snapshot.all<BatchBar>().of(later.uuid);
    return !after.empty() && std::equal(before.begin(), before.end(), after.begin(), after.end(),
                                        [](const auto& bar, const auto& again) {
                                            return bar->bar == again->bar && bar->breeder &&
                                                   bar->breeder == again->breeder &&
                                                   bar->cells == again->cells;
                                        });
}

}  // namespace tenthday
