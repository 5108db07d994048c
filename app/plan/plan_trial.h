/// @file plan_trial.h  Proposals tried in the book, without keeping anything: what they give, what
/// they bring to be warned of, and where they stand in the season.
#pragma once
#include "chart/chart_proposals.h"
#include "planning/season_plan.h"

namespace tenthday {

struct PlanTrial {
    PlanAnswer answer;               ///< of the proposals tried, looked at again
    OutlookPtr outlook;              ///< the season with them in it; never null
    std::vector<Id<Batch>> batches;  ///< of the proposals, in the order of `answer.batches`
    std::vector<Finding> warnings;   ///< that are not there without them, worst first
};

/// For a worker: chances are reckoned. An Error is why they cannot be in the book.
[[nodiscard]] Result<PlanTrial> tryPlan(const Outlook& outlook,
                                        const std::vector<ProposedBatch>& batches);

/// The proposals tried as ghosts of the chart; null where there are none.
[[nodiscard]] ChartProposalsPtr ghostsOf(const PlanTrial& trial);

}  // namespace tenthday
