/// @file whole_plan.h  Whole grafts in named builders, out of what the solver said.
#pragma once
#include "planning/plan_model.h"

namespace tenthday {

/// Grafts are rounded up as far as the builders' room goes, lines and builders by largest
/// remainder; a batch gives up grafts again where its rounded cells would lack nucs. Each builder
/// has one batch at a time.
[[nodiscard]] WholePlan wholePlan(const PlanProblem& problem,
                                  const std::vector<PlanModel::Load>& loads);

/// Cells of a batch that go into nucs, as the season counts them: whole.
[[nodiscard]] std::int32_t wholeNucCells(const PlanProblem& problem, const WholeBatch& batch);
/// Cells and virgins meant for orders, whole: sold and caged cells.
[[nodiscard]] std::int32_t soldCells(const PlanProblem& problem, const WholeBatch& batch);
[[nodiscard]] std::int32_t cagedCells(const PlanProblem& problem, const WholeBatch& batch);

}  // namespace tenthday
