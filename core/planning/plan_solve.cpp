#include "planning/plan_solve.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// Aims whose cost is a whole number: nearer than this is met.
constexpr double kWhole = 0.999;
/// What rounding may do to a bound.
constexpr double kSlack = 1e-4;
/// Grafts and earliness together within this share.
constexpr double kGraftsShare = 0.01;
/// Their proof is not worth more.
constexpr std::int32_t kGraftsNodes = 2000;
/// Nor that so few graft days do, or do not: the first time, and in later rounds or by the search
/// for fewer.
constexpr std::int32_t kFirstDaysNodes = 300;
constexpr std::int32_t kDaysNodes = 150;

PlanPhase phaseOf(PlanAim aim) {
    switch (aim) {
        case PlanAim::Short:
            return PlanPhase::Orders;
        case PlanAim::GraftDays:
            return PlanPhase::GraftDays;
        case PlanAim::Grafts:
            break;
    }
    return PlanPhase::Grafts;
}

class AimByAim {
public:
    AimByAim(const PlanProblem& problem, const PlanAsked& asked, const Solver& solver,
             PlanBudget& budget, std::int32_t round)
        : model_(problem, asked.margins, asked.cuts, asked.own),
          asked_(asked),
          solver_(solver),
          budget_(budget),
          round_(round) {}

    PlanSolution run() {
        solution_.isProven = true;
        budget_.settle(std::nullopt, std::nullopt);
        for (const auto aim : {PlanAim::Short, PlanAim::GraftDays, PlanAim::Grafts})
            if (!seek(aim)) break;
        if (!values_.empty()) read();
        return std::move(solution_);
    }

private:
    [[nodiscard]] Solved solved(const PlanModel& model, PlanAim aim, SolveOptions options,
                                PlanPhase phase) {
        const auto asked = budget_.options(phase, round_);
        options.seconds = asked.seconds;
        options.goOn = asked.goOn;
        auto found = solver_(model.forAim(aim), options);
        budget_.spend(found.seconds);
        spent_ += found.seconds;
        return found;
    }

    /// The fewest graft days: the bound of the root is nearly always right, and whether so many do
    /// is soon told, while the search for fewer and fewer takes long.
    [[nodiscard]] Solved fewestDays() {
        SolveOptions root;
        root.start = values_;
        root.gap = kWhole;
        root.nodes = 0;
        auto best = solved(model_, PlanAim::GraftDays, root, PlanPhase::GraftDays);
        if (best.status == SolveStatus::Proven || best.values.empty()) return best;
        best.bound = std::max(std::ceil(best.bound - kSlack), 0.0);  // a root that failed has none
        if (solution_.weighed == 0) best.bound = std::max<double>(best.bound, asked_.leastDays);
        double step = 0;  // once it is not told of a count: to the next one that is tried
        for (double days = best.bound; days < best.cost - 0.5;
             days = std::max(days + step, best.bound)) {
            if (budget_.isOver()) return best;
            auto found = withDays(days);
            if (!found.values.empty()) {
                best.values = std::move(found.values);
                best.cost = days;
            } else if (found.status == SolveStatus::Infeasible) {
                best.bound = days + 1;
            } else if (++step == 1) {
                searchFewer(best);
            }
        }
        if (best.cost < best.bound + 0.5) best.status = SolveStatus::Proven;
        return best;
    }

    /// The long way, where it is not told whether fewer do.
    void searchFewer(Solved& best) {
        SolveOptions whole;
        whole.start = best.values;
        whole.gap = kWhole;
        whole.nodes = kDaysNodes;
        auto found = solved(model_, PlanAim::GraftDays, whole, PlanPhase::GraftDays);
        if (found.values.empty()) return;
        best.values = std::move(found.values);
        best.cost = std::round(found.cost);
        best.bound = std::max(best.bound, found.status == SolveStatus::Proven
                                              ? best.cost
                                              : std::ceil(found.bound - kSlack));
    }

    /// Any plan with no more graft days.
    [[nodiscard]] Solved withDays(double days) {
        auto fewer = model_;
        fewer.hold(PlanAim::GraftDays, days);
        SolveOptions any;
        any.gapShare = 0.5;
        any.nodes = asked_.leastDays == 0 ? kFirstDaysNodes : kDaysNodes;
        return solved(fewer, PlanAim::Grafts, any, PlanPhase::GraftDays);
    }

    [[nodiscard]] Solved best(PlanAim aim) {
        if (aim == PlanAim::GraftDays) return fewestDays();
        SolveOptions options;
        options.start = values_;
        options.gap = aim == PlanAim::Grafts ? 0 : kWhole;
        if (aim == PlanAim::Grafts) {
            options.gapShare = kGraftsShare;
            options.nodes = kGraftsNodes;
        }
        return solved(model_, aim, options, phaseOf(aim));
    }

    /// False: there is no going on.
    bool seek(PlanAim aim) {
        const auto found = best(aim);
        if (!found.values.empty()) values_ = found.values;
        const bool proven = found.status == SolveStatus::Proven;
        // That the last aim's proof ends at its nodes is no stop: what it is within is told.
        if (!proven && aim != PlanAim::Grafts) solution_.isProven = false;
        if (aim == PlanAim::Short) solution_.isShortProven = proven;
        solution_.isStopped = solution_.isStopped || budget_.isOver();
        if (values_.empty() || budget_.isOver()) {
            solution_.isProven = solution_.isProven && aim == PlanAim::Grafts;
            return false;
        }
        keep(aim, model_.forAim(aim).costOf(values_), found.bound);
        return !asked_.onlyWhole || solution_.weighed == 0;
    }

    void keep(PlanAim aim, double cost, double bound) {
        const double whole = std::round(cost);
        switch (aim) {
            case PlanAim::Short:
                solution_.weighed = whole;
                budget_.settle(static_cast<std::int32_t>(whole), std::nullopt);
                break;
            case PlanAim::GraftDays:
                solution_.graftDays = static_cast<std::int32_t>(whole);
                solution_.leastDays =
                    static_cast<std::int32_t>(std::ceil(std::max(bound, 0.0) - kSlack));
                budget_.settle(static_cast<std::int32_t>(solution_.weighed), solution_.graftDays);
                budget_.tell(PlanPhase::Grafts, round_);
                break;
            case PlanAim::Grafts:
                solution_.grafts = cost;
                solution_.bound = std::clamp(bound, 0.0, cost);
                return;
        }
        model_.hold(aim, whole);
        if (aim == PlanAim::Short) model_.addDayCounts(solution_.weighed);
        if (aim == PlanAim::GraftDays) solution_.secondsToDays = spent_;
    }

    void read() {
        for (std::size_t k = 0; k < model_.problem().demands.size(); ++k)
            solution_.shortOf.push_back(model_.shortOf(values_, k));
        solution_.loads = model_.loadsOf(values_);
    }

    PlanModel model_;
    const PlanAsked& asked_;
    const Solver& solver_;
    PlanBudget& budget_;
    std::int32_t round_;
    double spent_ = 0;  ///< s
    std::vector<double> values_;
    PlanSolution solution_;
};

}  // namespace

SolveOptions PlanBudget::options(PlanPhase phase, std::int32_t round) const {
    SolveOptions options;
    options.seconds = left_;
    options.goOn = [this, phase, round](std::optional<double> best, double bound) {
        const bool known = bound > -kUnbounded;
        control_.tell({phase, round, best, known ? std::optional(bound) : std::nullopt, shortBy_,
                       graftDays_});
        return !control_.isCancelled();
    };
    return options;
}

PlanSolution solvePlan(const PlanProblem& problem, const PlanAsked& asked, const Solver& solver,
                       PlanBudget& budget, std::int32_t round) {
    return AimByAim(problem, asked, solver, budget, round).run();
}

bool staysShort(const PlanProblem& problem, const PlanAsked& asked, const Solver& solver) {
    const PlanModel model(problem, asked.margins, {}, asked.own);
    auto relaxed = model.forAim(PlanAim::Short);
    for (std::size_t i = 0; i < relaxed.columns().size(); ++i) relaxed.column(i).isWhole = false;
    const auto found = solver(relaxed, {});
    return found.status == SolveStatus::Proven && found.cost > kSlack;
}

PlanSolution solvePlan(const PlanProblem& problem, const std::vector<double>& margins,
                       const Solver& solver, PlanBudget& budget, std::int32_t round) {
    PlanAsked asked;
    asked.margins = margins;
    return solvePlan(problem, asked, solver, budget, round);
}

}  // namespace tenthday
