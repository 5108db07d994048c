/// @file plan_solve.h  A season's problem solved aim by aim, for given margins.
#pragma once
#include <functional>

#include "planning/plan_model.h"
#include "planning/plan_progress.h"
#include "solver/solve.h"

namespace tenthday {

/// CBC behind its door, or another to check it by.
using Solver = std::function<Solved(const LinearProgram&, const SolveOptions&)>;

struct PlanSolution {
    bool isProven = false;  ///< aims Short, Unsure and GraftDays: no plan is better
    bool isStopped = false;
    std::vector<std::int32_t> shortOf;  ///< by demand
    double weighed = 0;                 ///< sum of weight times what is short
    double unsure = 0;                  ///< what margins lack
    std::int32_t graftDays = 0;
    double grafts = 0;  ///< cost of the last aim
    double bound = 0;   ///< no plan as good in the other aims costs less
    std::vector<PlanModel::Load> loads;
};

/// What a solve may use; the seconds left go down with each.
class PlanBudget {
public:
    explicit PlanBudget(const PlanControl& control) : control_(control), left_(control.seconds) {}
    [[nodiscard]] SolveOptions options(PlanPhase phase, std::int32_t round) const;
    void spend(double seconds) {
        if (left_) *left_ -= seconds;
    }
    [[nodiscard]] bool isOver() const { return control_.isCancelled() || (left_ && *left_ <= 0); }
    [[nodiscard]] const PlanControl& control() const { return control_; }

private:
    const PlanControl& control_;
    std::optional<double> left_;
};

/// @param margins  by demand
/// @param round    for the progress told
[[nodiscard]] PlanSolution solvePlan(const PlanProblem& problem, const std::vector<double>& margins,
                                     const Solver& solver, PlanBudget& budget,
                                     std::int32_t round = 1);

}  // namespace tenthday
