// What is owed, and what the batches in the book give of it.
#include <algorithm>

#include "outlook/supply_of.h"
#include "planning/plan_site.h"
#include "records/order_days.h"
#include "supply/cell_orders.h"
#include "supply/earlier_queens.h"

namespace tenthday {
namespace {

constexpr double kLeast = 1e-6;

Timelines timelinesOf(const Outlook& outlook) {
    Timelines timelines;
    for (const auto& batch : outlook.batches)
        timelines.emplace_back(batch->batch->id, &batch->timeline);
    return timelines;
}

std::size_t lineIndex(const PlanSite& site, std::optional<Id<Line>> line) {
    if (!line) return 0;
    const auto at = std::find(site.lines.begin() + 1, site.lines.end(), line);
    return at == site.lines.end() ? 0 : static_cast<std::size_t>(at - site.lines.begin());
}

std::vector<std::int32_t> goDaysOf(const PlanSite& site, const OrderNeed& need) {
    const auto& order = *need.order;
    std::vector<std::int32_t> days;
    const bool inOne = order.kind == OrderKind::Virgin && !order.partOk;
    if (inOne) return {site.index(need.days ? need.days->go : order.due)};
    if (need.goDays) {
        for (const auto day : *need.goDays) days.push_back(site.index(day));
        return days;
    }
    for (Day day = order.notBefore.value_or(order.due); day <= order.due; day += Days{1})
        days.push_back(site.index(day));
    return days;
}

PlanProblem::Demand demandOf(const PlanSite& site, const OrderNeed& need) {
    const auto& order = *need.order;
    PlanProblem::Demand demand;
    if (order.kind == OrderKind::RipeCell) demand.wants = PlanProblem::Wants::RipeCells;
    if (order.kind == OrderKind::Virgin) demand.wants = PlanProblem::Wants::Virgins;
    if (order.line) demand.line = lineIndex(site, order.line);
    demand.proven = order.kind == OrderKind::Proven;
    demand.wanted = need.rest;
    demand.weight = std::max(order.weight, 1);
    demand.sure = order.sure.value / 1000.0;
    demand.due = site.index(need.wholeOn);
    if (demand.wants != PlanProblem::Wants::Queens) demand.goDays = goDaysOf(site, need);
    demand.inParts = order.partOk || demand.wants == PlanProblem::Wants::Virgins;
    return demand;
}

/// Queens of a part expected in hand by a day.
double expectedBy(const QueenPart& part, Day day) {
    if (part.isCertainOn(day)) return part.knownOn(day).certain;
    return part.meanCaught(part.meanShareOn(day), day);
}

/// The same in the season that gives most by then.
double mostBy(const QueenPart& part, Day day) {
    if (part.isCertainOn(day)) return part.knownOn(day).certain;
    const auto shares = part.sharesOn(day);
    double most = 0;
    for (std::size_t row = 0; row < part.eggs->rows(); ++row) most = std::max(most, shares.in(row));
    return part.meanCaught(most, day);
}

/// What a part adds from one due day to the next.
void addSources(PlanSite& site, const QueenPart& part, const std::vector<Day>& dues) {
    double before = 0;
    double mostBefore = 0;
    for (const auto due : dues) {
        const double now = std::max(expectedBy(part, due), before);
        const double most = std::max(mostBy(part, due), mostBefore);
        if (now > before + kLeast || most > mostBefore + kLeast)
            site.problem.sources.push_back({lineIndex(site, part.line), part.isProven, now - before,
                                            site.index(due), most - mostBefore});
        before = now;
        mostBefore = most;
    }
}

/// Queens that went out are no longer there: those of the line asked for first, the oldest first.
void takeGone(PlanSite& site, const std::vector<QueensGone>& all) {
    for (const auto& gone : all) {
        double left = gone.count;
        for (const bool fitting : {true, false})
            for (auto& source : site.problem.sources) {
                const bool isFit = (!gone.line || source.line == lineIndex(site, gone.line)) &&
                                   (!gone.proven || source.proven);
                if (isFit != fitting) continue;
                const double taken = std::min(left, source.count);
                source.count -= taken;
                source.best = std::max(source.best - taken, 0.0);
                left -= taken;
            }
    }
    std::erase_if(site.problem.sources,
                  [](const auto& source) { return std::max(source.count, source.best) < kLeast; });
}

}  // namespace

void addOrders(const Outlook& outlook, PlanSite& site) {
    const auto& snapshot = outlook.snapshot;
    const auto book = orderBookOf(snapshot);
    site.lines.assign(1, std::nullopt);
    for (const auto& need : book.needs)
        if (need.rest > 0 && need.order->line && lineIndex(site, need.order->line) == 0)
            site.lines.push_back(need.order->line);
    site.problem.lines = site.lines.size();
    const auto timelines = timelinesOf(outlook);
    const auto parts =
        raisedParts(snapshot, timelines, outlook.nucs, ratesInForce(snapshot, ownRatesOf(outlook)));
    const auto cells = cellOrders(book, parts);
    std::vector<Day> dues;
    const auto standing = supplyOf(outlook).orders();
    for (const auto& need : book.needs) {
        if (need.rest < 1) continue;
        auto demand = demandOf(site, need);
        demand.isMet = std::any_of(standing.begin(), standing.end(), [&](const auto& order) {
            return order.order->id == need.order->id && order.state == OrderState::Met;
        });
        if (demand.wants == PlanProblem::Wants::Queens) dues.push_back(need.wholeOn);
        for (const auto& filled : cells.orders)
            if (filled.order->id == need.order->id) {
                double given = 0;
                for (const auto& fill : filled.fills) given += fill.count;
                demand.wanted =
                    std::max(0, demand.wanted - static_cast<std::int32_t>(given + kLeast));
            }
        site.problem.demands.push_back(std::move(demand));
        site.orders.push_back(need.order->id);
    }
    std::sort(dues.begin(), dues.end());
    dues.erase(std::unique(dues.begin(), dues.end()), dues.end());
    const auto stock = QueenMaker(snapshot, *outlook.mating).stock(parts, cells.taken);
    for (const auto& part : stock.parts) addSources(site, part, dues);
    for (const auto& part : boughtQueens(snapshot)) addSources(site, part, dues);
    for (const auto& part : earlierQueens(snapshot)) addSources(site, part, dues);
    std::stable_sort(site.problem.sources.begin(), site.problem.sources.end(),
                     [](const auto& a, const auto& b) { return a.day < b.day; });
    takeGone(site, book.gone);
}

}  // namespace tenthday
