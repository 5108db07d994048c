#include "outlook/grafts_for.h"

#include <algorithm>

#include "losses/how_many.h"
#include "outlook/supply_of.h"
#include "records/change_set.h"
#include "records/relations.h"

namespace tenthday {
namespace {

/// Tries totals of grafts on a season.
class GraftTrials {
public:
    GraftTrials(const Snapshot& snapshot, const Aim& aim, Day by)
        : snapshot_(snapshot), aim_(aim), planned_(outlookOf(snapshot, memo_)) {
        for (const auto& batch : planned_->batches) {
            if (!hasGraft(batch->batch->start) || isGrafted(snapshot, batch->batch->id)) continue;
            const auto day = dayOf(batch->timeline.graft);
            if (day < snapshot.today() || batch->timeline.hold.catchDay > by) continue;
            BatchGrafts grafts{batch->batch, day, 0, 0};
            for (const auto& bar : batch->bars) {
                bars_.push_back(bar);
                split_.batches.push_back({static_cast<double>(bar->cells.value), {}, {}});
                grafts.planned += bar->cells.value;
            }
            if (grafts.planned > 0) batches_.push_back(grafts);
        }
    }

    [[nodiscard]] double plannedChance() const { return aim_(*planned_); }
    [[nodiscard]] std::int32_t least() const { return static_cast<std::int32_t>(bars_.size()); }
    [[nodiscard]] std::int32_t planned() const {
        std::int32_t sum = 0;
        for (const auto& batch : batches_) sum += batch.planned;
        return sum;
    }
    /// The chance with so many in all.
    [[nodiscard]] double chance(std::int32_t total) {
        ChangeSet changes;
        const auto grafts = graftsByBar(total);
        for (std::size_t i = 0; i < bars_.size(); ++i) {
            auto bar = *bars_[i];
            bar.cells = Cells{grafts[i]};
            changes.edit(bars_[i], bar);
        }
        const auto next = applied(snapshot_, changes);
        return next ? aim_(*outlookOf(next.value(), memo_)) : 0;
    }
    /// The batches with their parts of so many.
    [[nodiscard]] std::vector<BatchGrafts> batches(std::int32_t total) const {
        auto all = batches_;
        const auto grafts = graftsByBar(total);
        for (std::size_t i = 0; i < bars_.size(); ++i)
            for (auto& batch : all)
                if (batch.batch->id == bars_[i]->batch) batch.needed += grafts[i];
        return all;
    }

private:
    /// By odd divisors, one for each bar beforehand.
    [[nodiscard]] std::vector<std::int32_t> graftsByBar(std::int32_t total) const {
        auto grafts = graftsOf(split_, total);
        // A bar that would get none takes from the largest.
        for (auto& few : grafts)
            while (few < 1) {
                --*std::max_element(grafts.begin(), grafts.end());
                ++few;
            }
        return grafts;
    }

    const Snapshot& snapshot_;
    const Aim& aim_;
    OutlookMemo memo_;
    OutlookPtr planned_;
    std::vector<BatchGrafts> batches_;
    std::vector<Ptr<BatchBar>> bars_;
    Split split_;
};

/// The least total from `low` (not enough) to `high` (enough) that is enough.
std::int32_t leastBetween(GraftTrials& trials, std::int32_t low, std::int32_t high, double level) {
    while (high - low > 1) {
        const auto middle = low + (high - low) / 2;
        (trials.chance(middle) >= level ? high : low) = middle;
    }
    return high;
}

/// Nothing where no number up to the most is enough.
std::optional<std::int32_t> leastTotal(GraftTrials& trials, double plannedChance, double level) {
    const auto planned = trials.planned();
    if (plannedChance >= level) {
        const auto least = trials.least();
        if (planned <= least || trials.chance(least) >= level) return least;
        return leastBetween(trials, least, planned, level);
    }
    auto low = planned;
    for (auto high = planned; high < kMostGrafts;) {
        high = std::min(2 * high, std::max(kMostGrafts, planned + 1));
        if (trials.chance(high) >= level) return leastBetween(trials, low, high, level);
        low = high;
    }
    return std::nullopt;
}

}  // namespace

Aim queensInHand(std::int32_t queens, Day by) {
    return [queens, by](const Outlook& outlook) {
        auto supply = supplyOf(outlook);
        return supply.queensBy(by).atLeast(queens);
    };
}

Aim orderWhole(Id<Order> order) {
    return [order](const Outlook& outlook) {
        auto supply = supplyOf(outlook);
        for (const auto& standing : supply.orders())
            if (standing.order->id == order) return standing.chance;
        return 0.0;
    };
}

std::int32_t GraftsWanted::planned() const {
    std::int32_t sum = 0;
    for (const auto& batch : batches) sum += batch.planned;
    return sum;
}

std::int32_t GraftsWanted::needed() const {
    std::int32_t sum = 0;
    for (const auto& batch : batches) sum += batch.needed;
    return sum;
}

GraftsWanted graftsWanted(const Snapshot& snapshot, const Aim& aim, Day by, double level) {
    GraftTrials trials(snapshot, aim, by);
    GraftsWanted wanted;
    wanted.plannedChance = wanted.neededChance = trials.plannedChance();
    wanted.isEnough = wanted.plannedChance >= level;
    if (trials.planned() == 0) return wanted;
    const auto total = leastTotal(trials, wanted.plannedChance, level);
    const auto shown = total.value_or(std::max(kMostGrafts, trials.planned()));
    wanted.isEnough = total.has_value();
    wanted.batches = trials.batches(shown);
    wanted.neededChance = trials.chance(shown);
    return wanted;
}

}  // namespace tenthday
