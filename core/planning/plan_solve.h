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
    bool isProven = false;       ///< aims Short and GraftDays: no plan is better
    bool isShortProven = false;  ///< aim Short alone
    bool isStopped = false;
    std::vector<std::int32_t> shortOf;  ///< by demand, of what is wanted and its margin
    double weighed = 0;                 ///< sum of weight times what is short
    std::int32_t graftDays = 0;
    std::int32_t leastDays = 0;  ///< no plan as little short has fewer
    double grafts = 0;           ///< cost of the last aim
    double bound = 0;            ///< no plan as good in the other aims costs less
    std::vector<PlanModel::Load> loads;
    double secondsToDays = 0;  ///< that the aims Short and GraftDays took; for measuring
};

/// What a solve may use; the seconds left go down with each.
class PlanBudget {
public:
    explicit PlanBudget(const PlanControl& control) : control_(control), left_(control.seconds) {}
    [[nodiscard]] SolveOptions options(PlanPhase phase, std::int32_t round) const;
    /// What is told as settled from now on; nothing is, at the start of a round.
    void settle(std::optional<std::int32_t> shortBy, std::optional<std::int32_t> graftDays) {
        shortBy_ = shortBy;
        graftDays_ = graftDays;
    }
    /// With what is settled, and nothing found yet.
    void tell(PlanPhase phase, std::int32_t round) const {
        control_.tell({phase, round, {}, {}, shortBy_, graftDays_});
    }
    void spend(double seconds) {
        if (left_) *left_ -= seconds;
    }
    [[nodiscard]] bool isOver() const { return control_.isCancelled() || (left_ && *left_ <= 0); }
    [[nodiscard]] const PlanControl& control() const { return control_; }
    [[nodiscard]] std::optional<double> left() const { return left_; }

private:
    const PlanControl& control_;
    std::optional<double> left_;
    std::optional<std::int32_t> shortBy_;
    std::optional<std::int32_t> graftDays_;
};

/// What is asked of a plan beside its problem.
struct PlanAsked {
    std::vector<double> margins;  ///< by demand
    std::vector<PlanCut> cuts;
    bool onlyWhole = false;      ///< nothing more is sought once something is short
    std::vector<double> own;     ///< margins of those that fit; see PlanModel
    std::int32_t leastDays = 0;  ///< so many graft days are needed where nothing is short
};

/// @param round  for the progress told
[[nodiscard]] PlanSolution solvePlan(const PlanProblem& problem, const PlanAsked& asked,
                                     const Solver& solver, PlanBudget& budget,
                                     std::int32_t round = 1);
/// The same with margins alone.
[[nodiscard]] PlanSolution solvePlan(const PlanProblem& problem, const std::vector<double>& margins,
                                     const Solver& solver, PlanBudget& budget,
                                     std::int32_t round = 1);

/// Something stays short even if graft days and builders could be had in parts: soon told, and a
/// plan in wholes is no better. False: not told.
[[nodiscard]] bool staysShort(const PlanProblem& problem, const PlanAsked& asked,
                              const Solver& solver);

}  // namespace tenthday
