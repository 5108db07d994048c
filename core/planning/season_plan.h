/// @file season_plan.h  What to graft, when, and in what, to have what is promised.
#pragma once
#include "outlook/outlook.h"
#include "planning/plan_progress.h"
#include "planning/plan_question.h"

namespace tenthday {

/// Aims in order: as little short as can be, by weight; then the fewest graft days; then few grafts
/// and early ones. The same question on the same outlook has the same answer. For a worker: it
/// takes seconds. Refused where a proposal held fast can't be in the book, or there is no method.
///
/// Proposed are batches grafted and mated in the open; their queens are caught by the book's rule.
[[nodiscard]] Result<PlanAnswer> planSeason(const Outlook& outlook, const PlanQuestion& question,
                                            const PlanControl& control = {});

/// The same batches looked at again, as the user changed them: what they give, cost and serve.
/// Nothing is planned anew. `ready`, `cells`, `cellsDay`, `shares` and `orders` are told afresh.
[[nodiscard]] Result<PlanAnswer> recheckPlan(const Outlook& outlook,
                                             const std::vector<ProposedBatch>& batches);

}  // namespace tenthday
