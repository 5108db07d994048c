#include "planning/season_plan.h"

#include <algorithm>
#include <cmath>

#include "planning/plan_rounds.h"

namespace tenthday {
namespace {

std::vector<ShortOrder> shortOf(const PlanSite& site, const PlanSolution& solution) {
    std::vector<ShortOrder> all;
    for (std::size_t k = 0; k < solution.shortOf.size(); ++k)
        if (solution.shortOf[k] > 0) all.push_back({site.orders[k], solution.shortOf[k]});
    return all;
}

PlanStatus statusOf(const PlanSolution& solution, const PlanAnswer& answer) {
    if (solution.isStopped || !solution.isProven) return PlanStatus::Stopped;
    if (!answer.shortOf.empty()) return PlanStatus::Short;
    if (answer.batches.empty() && answer.unsure.empty()) return PlanStatus::Nothing;
    return PlanStatus::Proven;
}

/// The proposals held fast stand in the season that is planned.
struct HeldSeason {
    Snapshot snapshot;
    OutlookPtr outlook;
    std::vector<Id<Batch>> kept;
};

Result<HeldSeason> holding(const Outlook& outlook, const std::vector<ProposedBatch>& keep) {
    OutlookMemo memo;
    if (keep.empty()) return HeldSeason{outlook.snapshot, outlookOf(outlook.snapshot, memo), {}};
    auto season = seasonWith(outlook.snapshot, keep, memo);
    if (!season) return season.error();
    return HeldSeason{season.value().outlook->snapshot, season.value().outlook,
                      season.value().batches};
}

void sortByGraft(std::vector<ProposedBatch>& batches) {
    std::stable_sort(batches.begin(), batches.end(),
                     [](const auto& a, const auto& b) { return a.graft < b.graft; });
}

}  // namespace

Result<PlanAnswer> planSeason(const Outlook& outlook, const PlanQuestion& question,
                              const PlanControl& control) {
    control.tell({});
    const auto held = holding(outlook, question.keep);
    if (!held) return held.error();
    const auto site = planSite(*held.value().outlook, question);
    if (!site) return site.error();
    PlanBudget budget(control);
    const auto rounds = planInRounds(held.value().snapshot, site.value(), solve, budget);
    if (!rounds) return rounds.error();
    const auto& solution = rounds.value().solution;
    PlanAnswer answer;
    answer.rounds = rounds.value().rounds;
    answer.shortOf = shortOf(site.value(), solution);
    answer.before = sumsOf(outlook);
    answer.batches = question.keep;
    answer.batches.insert(answer.batches.end(), rounds.value().batches.begin(),
                          rounds.value().batches.end());
    sortByGraft(answer.batches);
    // All together, as they would be taken over.
    OutlookMemo memo;
    const auto season = seasonWith(outlook.snapshot, answer.batches, memo);
    if (!season) return season.error();
    tellBatches(season.value(), answer.batches);
    answer.after = sumsOf(*season.value().outlook);
    answer.unsure = unsureOf(season.value().orders, answer.shortOf);
    answer.graftsWithin =
        static_cast<std::int32_t>(std::ceil(solution.grafts - solution.bound - 1e-6));
    answer.status = statusOf(solution, answer);
    return answer;
}

Result<PlanAnswer> recheckPlan(const Outlook& outlook, const std::vector<ProposedBatch>& batches) {
    PlanAnswer answer;
    answer.batches = batches;
    sortByGraft(answer.batches);
    OutlookMemo memo;
    const auto season = seasonWith(outlook.snapshot, answer.batches, memo);
    if (!season) return season.error();
    tellBatches(season.value(), answer.batches);
    answer.before = sumsOf(outlook);
    answer.after = sumsOf(*season.value().outlook);
    for (const auto& order : season.value().orders)
        if (order.state == OrderState::Short && order.lacking > 0)
            answer.shortOf.push_back({order.order->id, order.lacking});
    answer.unsure = unsureOf(season.value().orders, answer.shortOf);
    answer.status = PlanStatus::Checked;
    return answer;
}

}  // namespace tenthday
