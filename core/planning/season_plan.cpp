#include "planning/season_plan.h"

#include <algorithm>
#include <cmath>

#include "planning/plan_hours.h"
#include "planning/plan_rounds.h"

namespace tenthday {
namespace {

PlanStatus statusOf(const PlanRounds& rounds, const PlanAnswer& answer) {
    if (rounds.solution.isStopped || !rounds.floor.isProven) return PlanStatus::Stopped;
    if (!answer.shortOf.empty()) return PlanStatus::Short;
    return answer.batches.empty() ? PlanStatus::Nothing : PlanStatus::Proven;
}

/// How near the plan is to what no plan is better than.
void tellGap(const PlanRounds& rounds, PlanAnswer& answer) {
    const auto& solution = rounds.solution;
    const auto& floor = rounds.floor;
    answer.isShortProven = floor.isProven && floor.weighed > 0;
    answer.leastGraftDays = floor.isProven ? floor.graftDays : 0;
    answer.graftDaysWithin = std::max(solution.graftDays - answer.leastGraftDays, 0);
    answer.graftsWithin =
        static_cast<std::int32_t>(std::ceil(std::max(solution.grafts - floor.grafts, 0.0) - 1e-6));
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
    PlanAnswer answer;
    answer.rounds = rounds.value().rounds;
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
    answer.shortOf = shortOf(season.value().orders);
    tellGap(rounds.value(), answer);
    if (question.mostMinutesADay)
        answer.longDays =
            longDays(*season.value().outlook, answer.batches, *question.mostMinutesADay);
    answer.status = statusOf(rounds.value(), answer);
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
    answer.shortOf = shortOf(season.value().orders);
    answer.status = PlanStatus::Checked;
    return answer;
}

}  // namespace tenthday
