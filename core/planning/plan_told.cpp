#include "planning/plan_told.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "outlook/supply_of.h"
#include "planning/adopt.h"
#include "planning/whole_plan.h"

namespace tenthday {
namespace {

/// Gives whole cells to yards: the yard that takes all with the least to spare, else the one that
/// takes most. Batches in the order of their cells days.
class Shares {
public:
    explicit Shares(const PlanSite& site) : site_(site), free_(site.nucs) {}

    std::vector<std::pair<Id<Yard>, std::int32_t>> share(const PlanProblem::Option& option,
                                                         std::int32_t cells) {
        std::vector<std::pair<Id<Yard>, std::int32_t>> shares;
        while (cells > 0) {
            const auto yard = best(option, cells);
            const auto taken = std::min(cells, room(yard, option));
            if (taken <= 0) break;
            for (auto day = option.cellsDay; day <= option.lastHeld; ++day)
                free_[yard][static_cast<std::size_t>(day)] -= taken;
            shares.emplace_back(site_.yards[yard], taken);
            cells -= taken;
        }
        return shares;
    }

private:
    [[nodiscard]] std::int32_t room(std::size_t yard, const PlanProblem::Option& option) const {
        auto least = std::numeric_limits<std::int32_t>::max();
        for (auto day = option.cellsDay; day <= option.lastHeld; ++day)
            least = std::min(least, free_[yard][static_cast<std::size_t>(day)]);
        return least;
    }
    [[nodiscard]] std::size_t best(const PlanProblem::Option& option, std::int32_t cells) const {
        std::size_t best = 0;
        std::int32_t most = -1;
        for (std::size_t yard = 0; yard < free_.size(); ++yard) {
            const auto here = room(yard, option);
            const bool better = most < cells ? here > most : here >= cells && here < most;
            if (better) best = yard, most = here;
        }
        return best;
    }

    const PlanSite& site_;
    std::vector<std::vector<std::int32_t>> free_;
};

ProposedBatch proposalOf(const Snapshot& snapshot, const PlanSite& site, const WholeBatch& batch) {
    const auto& option = site.problem.options[batch.option];
    ProposedBatch proposed;
    proposed.graft = site.day(option.day);
    proposed.method = site.methods[option.method];
    proposed.cellsDay = site.day(option.cellsDay);
    proposed.ready = site.day(option.ready);
    for (const auto& bar : batch.bars) {
        ProposedBar to;
        to.line = site.lines[bar.line];
        to.breeder = breederFor(snapshot, site, bar.line, proposed.graft);
        to.grafts = bar.grafts;
        for (std::size_t step = 0; step < bar.pools.size(); ++step) {
            const auto& pool = site.pools[bar.pools[step]];
            to.builders.emplace_back(pool[static_cast<std::size_t>(bar.slots[step]) % pool.size()]);
        }
        proposed.bars.push_back(std::move(to));
    }
    proposed.sold = soldCells(site.problem, batch);
    proposed.caged = cagedCells(site.problem, batch);
    return proposed;
}

}  // namespace

IdSource planIds(const Snapshot& snapshot) {
    std::uint64_t high = 0xFFFFFFFF0000D000ULL;
    for (const auto& batch : snapshot.all<Batch>())
        if (batch->id.uuid.high >= high) high = batch->id.uuid.high + 1;
    return [high, next = std::uint64_t{0}]() mutable { return Uuid{high, ++next}; };
}

std::vector<ProposedBatch> proposalsOf(const Snapshot& snapshot, const PlanSite& site,
                                       const WholePlan& plan) {
    std::vector<ProposedBatch> proposals;
    for (const auto& batch : plan) proposals.push_back(proposalOf(snapshot, site, batch));
    if (!site.problem.yards.front().isBound) return proposals;
    std::vector<std::size_t> order(plan.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(),
                     [&](auto a, auto b) { return proposals[a].cellsDay < proposals[b].cellsDay; });
    Shares shares(site);
    for (const auto i : order) {
        proposals[i].shares =
            shares.share(site.problem.options[plan[i].option],
                         static_cast<std::int32_t>(std::lround(placedOf(plan[i]))));
    }
    return proposals;
}

Result<PlannedSeason> seasonWith(const Snapshot& snapshot, std::span<const ProposedBatch> batches,
                                 OutlookMemo& memo) {
    auto adopted = adoptNamed(snapshot, batches, planIds(snapshot));
    if (!adopted) return adopted.error();
    const auto next = applied(snapshot, adopted.value().changes);
    if (!next) return next.error();
    PlannedSeason season;
    season.outlook = outlookOf(next.value(), memo);
    season.batches = std::move(adopted.value().batches);
    season.orders = supplyOf(*season.outlook).orders();
    return season;
}

PlanSums sumsOf(const Outlook& outlook) {
    const auto& snapshot = outlook.snapshot;
    PlanSums sums;
    std::set<Day> grafts;
    std::set<std::pair<Id<Yard>, Day>> trips;
    const auto drive = [&](Id<Yard> yard, const NucHold& hold) {
        for (const auto day : {hold.transferDay, hold.lookDay, hold.catchDay})
            trips.emplace(yard, day);
    };
    for (const auto& batch : outlook.batches) {
        const auto& hold = batch->timeline.hold;
        const auto id = batch->batch->id;
        if (hasGraft(batch->batch->start)) grafts.insert(dayOf(batch->timeline.graft));
        for (const auto& bar : batch->bars) sums.grafts += bar->cells.value;
        const auto cells = static_cast<std::int32_t>(std::lround(batch->timeline.counts.ripe)) -
                           cellsElsewhere(snapshot, id).all();
        sums.nucDays += std::max(cells, 0) * hold.nucDays();
        for (const auto& share : snapshot.all<BatchShare>().of(id.uuid)) drive(share->yard, hold);
        for (const auto& yard : outlook.nucs.yards)
            for (const auto& block : yard.blocks)
                if (block.batch == id) drive(yard.yard->id, hold);
    }
    sums.graftDays = static_cast<std::int32_t>(grafts.size());
    sums.trips = static_cast<std::int32_t>(trips.size());
    auto supply = supplyOf(outlook);
    const Day end = outlook.season.last + kLeadIn;
    sums.spareQueens = supply.expectedBy(end) - supply.owedBy(end);
    for (const auto& order : supply.orders())
        sums.orders.push_back({order.order->id, order.state, order.chance});
    return sums;
}

void tellBatches(const PlannedSeason& season, std::vector<ProposedBatch>& batches) {
    for (std::size_t i = 0; i < batches.size(); ++i) {
        const auto* batch = season.outlook->find(season.batches[i]);
        if (batch == nullptr) continue;
        batches[i].cells = batch->timeline.counts.ripe;
        batches[i].cellsDay = batch->timeline.hold.transferDay;
        batches[i].ready = batch->timeline.hold.catchDay;
        batches[i].orders.clear();
        for (const auto& order : season.orders)
            for (const auto& fill : order.fills)
                if (fill.batch == season.batches[i] && fill.count > 0)
                    batches[i].orders.push_back({order.order->id, fill.count});
    }
}

std::vector<ShortOrder> shortOf(const std::vector<OrderOutlook>& orders) {
    std::vector<ShortOrder> all;
    for (const auto& order : orders)
        if (order.state != OrderState::Met)
            all.push_back({order.order->id, std::max(order.lacking, 1),
                           order.order->sure.value / 1000.0, order.chance});
    return all;
}

}  // namespace tenthday
