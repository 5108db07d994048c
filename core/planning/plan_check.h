/// @file plan_check.h  Whether a plan of whole grafts can be: looked at day by day and builder by
/// builder, with nothing of the model.
#pragma once
#include <string>
#include <vector>

#include "planning/plan_problem.h"

namespace tenthday {

/// What is wrong with it, a plain English line each; empty when it can be done.
[[nodiscard]] std::vector<std::string> whatIsWrong(const PlanProblem& problem,
                                                   const WholePlan& plan);

/// Queens, cells or virgins that a demand lacks by a whole plan, expected: all orders are filled
/// in turn from what is ready in time, those that fewer can serve first.
[[nodiscard]] std::vector<double> lackingBy(const PlanProblem& problem, const WholePlan& plan);

}  // namespace tenthday
