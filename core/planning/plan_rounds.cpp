#include "planning/plan_rounds.h"

#include <algorithm>

#include "planning/plan_check.h"
#include "planning/whole_plan.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostRounds = 20;

const OrderOutlook* standingOf(const std::vector<OrderOutlook>& orders, Id<Order> id) {
    for (const auto& order : orders)
        if (order.order->id == id) return &order;
    return nullptr;
}

/// False: all are sure, or nothing more can be done about it.
bool raise(const PlanSite& site, const PlanRounds& rounds, std::vector<double>& margins) {
    if (rounds.solution.unsure > 0) return false;  // there is no more to be had
    bool raised = false;
    for (std::size_t k = 0; k < site.orders.size(); ++k) {
        const auto* order = standingOf(rounds.season.orders, site.orders[k]);
        if (order == nullptr || order->state == OrderState::Met || rounds.solution.shortOf[k] > 0)
            continue;
        margins[k] += std::max(order->lacking, 1);
        raised = true;
    }
    return raised;
}

}  // namespace

Result<PlanRounds> planInRounds(const Snapshot& snapshot, const PlanSite& site,
                                const Solver& solver, PlanBudget& budget) {
    PlanRounds now;
    std::vector<double> margins(site.problem.demands.size());
    OutlookMemo memo;
    for (std::int32_t round = 1; round <= kMostRounds; ++round) {
        PlanRounds next;
        next.rounds = round;
        next.margins = margins;
        next.solution = solvePlan(site.problem, margins, solver, budget, round);
        // Stopped in a later round: the plan of the one before is the better answer.
        if (round > 1 && (next.solution.isStopped || next.solution.shortOf.empty())) {
            now.solution.isStopped = true;
            return now;
        }
        const auto plan = wholePlan(site.problem, next.solution.loads);
        if (const auto wrong = whatIsWrong(site.problem, plan); !wrong.empty())
            return Error{"the plan found does not hold: " + wrong.front()};
        next.batches = proposalsOf(snapshot, site, plan);
        budget.control().tell({PlanPhase::Sureness, round, std::nullopt, std::nullopt});
        auto season = seasonWith(snapshot, next.batches, memo);
        if (!season) return season.error();
        next.season = std::move(season.value());
        now = std::move(next);
        if (now.solution.isStopped || !raise(site, now, margins)) break;
    }
    return now;
}

}  // namespace tenthday
