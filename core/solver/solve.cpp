#include "solver/solve.h"

#include <CbcEventHandler.hpp>
#include <CbcHeuristic.hpp>
#include <CbcHeuristicFPump.hpp>
#include <CbcHeuristicRINS.hpp>
#include <CbcModel.hpp>
#include <CglFlowCover.hpp>
#include <CglMixedIntegerRounding2.hpp>
#include <CglProbing.hpp>
#include <ClpEventHandler.hpp>
#include <CoinPackedMatrix.hpp>
#include <CoinTime.hpp>
#include <OsiClpSolverInterface.hpp>
#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// When to stop. Shared by all parts of one search.
class Stopper {
public:
    explicit Stopper(const SolveOptions& options)
        : options_(options), begun_(CoinWallclockTime()) {}

    /// Asks; once stopped, always stopped.
    bool stops(std::optional<double> best, double bound) {
        if (stopped_) return true;
        if (best) best_ = best;
        bound_ = std::max(bound_, bound);
        const double gone = CoinWallclockTime() - begun_;
        stopped_ = (options_.seconds && gone > *options_.seconds) ||
                   (options_.goOn && !options_.goOn(best_, bound_));
        return stopped_;
    }
    bool stops() { return stops(std::nullopt, bound_); }
    [[nodiscard]] bool stopped() const { return stopped_; }

private:
    const SolveOptions& options_;
    double begun_;  ///< s, by the solver's own count
    std::optional<double> best_;
    double bound_ = -kUnbounded;
    bool stopped_ = false;
};

/// Asked at each step of the search.
class SearchEvents : public CbcEventHandler {
public:
    explicit SearchEvents(Stopper* stopper) : stopper_(stopper) {}
    CbcEventHandler* clone() const override { return new SearchEvents(*this); }
    CbcAction event(CbcEvent /*what*/) override {
        const auto* model = getModel();
        const bool found = model != nullptr && model->getSolutionCount() > 0;
        const auto best = found ? std::optional(model->getMinimizationObjValue()) : std::nullopt;
        const double bound = model == nullptr ? -kUnbounded : model->getBestPossibleObjValue();
        // Before the first node is solved the solver says a bound that is none.
        return stopper_->stops(best, std::abs(bound) < 1e49 ? bound : -kUnbounded) ? stop
                                                                                   : noAction;
    }

private:
    Stopper* stopper_;
};

/// Asked within one linear program, which can be long.
class LinearEvents : public ClpEventHandler {
public:
    explicit LinearEvents(Stopper* stopper) : stopper_(stopper) {}
    ClpEventHandler* clone() const override { return new LinearEvents(*this); }
    int event(Event what) override {
        if (what != endOfFactorization || !stopper_->stops()) return -1;
        return 5;  // as if an event had ended it
    }

private:
    Stopper* stopper_;
};

CoinPackedMatrix matrixOf(const LinearProgram& program) {
    std::vector<int> rows;
    std::vector<int> columns;
    std::vector<double> factors;
    for (std::size_t i = 0; i < program.rows().size(); ++i)
        for (const auto& term : program.rows()[i].terms) {
            rows.push_back(static_cast<int>(i));
            columns.push_back(static_cast<int>(term.column));
            factors.push_back(term.factor);
        }
    CoinPackedMatrix matrix(true, rows.data(), columns.data(), factors.data(),
                            static_cast<CoinBigIndex>(rows.size()));
    matrix.setDimensions(static_cast<int>(program.rows().size()),
                         static_cast<int>(program.columns().size()));
    return matrix;
}

void load(OsiClpSolverInterface& solver, const LinearProgram& program) {
    const double none = solver.getInfinity();
    const auto bound = [&](double value) { return std::clamp(value, -none, none); };
    std::vector<double> lower;
    std::vector<double> upper;
    std::vector<double> cost;
    std::vector<double> rowLower;
    std::vector<double> rowUpper;
    for (const auto& column : program.columns()) {
        lower.push_back(bound(column.lower));
        upper.push_back(bound(column.upper));
        cost.push_back(column.cost);
    }
    for (const auto& row : program.rows()) {
        rowLower.push_back(bound(row.lower));
        rowUpper.push_back(bound(row.upper));
    }
    solver.messageHandler()->setLogLevel(0);
    solver.getModelPtr()->messageHandler()->setLogLevel(0);
    solver.setHintParam(OsiDoReducePrint, true, OsiHintTry);
    solver.loadProblem(matrixOf(program), lower.data(), upper.data(), cost.data(), rowLower.data(),
                       rowUpper.data());
    for (std::size_t i = 0; i < program.columns().size(); ++i)
        if (program.columns()[i].isWhole) solver.setInteger(static_cast<int>(i));
}

void addCuts(CbcModel& model) {
    CglProbing probing;
    probing.setUsingObjective(1);
    probing.setMaxPass(1);
    probing.setMaxPassRoot(5);
    probing.setMaxProbe(10);
    probing.setMaxProbeRoot(500);
    probing.setMaxLook(10);
    probing.setMaxLookRoot(50);
    probing.setRowCuts(3);
    CglFlowCover flow;
    CglMixedIntegerRounding2 rounding;
    // Of season plans the other families cost more than they bring. -1: kept where it helps at the
    // root.
    model.addCutGenerator(&probing, -1, "probing");
    model.addCutGenerator(&flow, -1, "flow");
    model.addCutGenerator(&rounding, -1, "rounding");
}

void addHeuristics(CbcModel& model) {
    CbcRounding rounding(model);
    model.addHeuristic(&rounding);
    CbcHeuristicFPump pump(model);
    pump.setMaximumPasses(20);
    model.addHeuristic(&pump);
    CbcHeuristicRINS near(model);
    near.setHowOften(100);
    model.addHeuristic(&near);
}

/// Whole numbers whole.
std::vector<double> wholeOf(const LinearProgram& program, const double* values) {
    std::vector<double> whole(values, values + program.columns().size());
    for (std::size_t i = 0; i < whole.size(); ++i) {
        const auto& column = program.columns()[i];
        if (column.isWhole) whole[i] = std::round(whole[i]);
        whole[i] = std::clamp(whole[i], column.lower, column.upper);
    }
    return whole;
}

class Search {
public:
    Search(const LinearProgram& program, const SolveOptions& options, bool cuts)
        : program_(program), options_(options), stopper_(options), cuts_(cuts) {}

    Solved run() {
        OsiClpSolverInterface solver;
        load(solver, program_);
        LinearEvents linear(&stopper_);
        solver.getModelPtr()->passInEventHandler(&linear);
        solver.initialSolve();
        if (stopper_.stopped()) return best({}, SolveStatus::Stopped);
        if (solver.isProvenPrimalInfeasible()) return best({}, SolveStatus::Infeasible);
        const double relaxed = solver.getObjValue();
        CbcModel model(solver);
        prepare(model);
        model.branchAndBound();
        return answer(model, relaxed);
    }

private:
    void prepare(CbcModel& model) {
        model.setLogLevel(0);
        model.messageHandler()->setLogLevel(0);
        model.solver()->messageHandler()->setLogLevel(0);
        SearchEvents events(&stopper_);
        model.passInEventHandler(&events);
        if (cuts_) addCuts(model);
        addHeuristics(model);
        model.setRandomSeed(1234567);
        model.setMaximumNodes(options_.nodes);
        if (options_.seconds) model.setMaximumSeconds(*options_.seconds);
        model.setAllowableGap(std::max(options_.gap, 1e-9));
        model.setAllowableFractionGap(options_.gapShare);
        model.setIntegerTolerance(1e-7);
        model.setNumberStrong(10);
        model.setNumberBeforeTrust(0);  // many cheap nodes beat few that are chosen well
        rank(model);
        if (program_.isMetBy(options_.start)) {
            auto start = options_.start;
            model.setBestSolution(start.data(), static_cast<int>(start.size()),
                                  program_.costOf(start), true);
        }
    }

    /// Which whole numbers are settled first.
    void rank(CbcModel& model) const {
        constexpr int kFirst = 1'000'000;
        std::vector<int> turns;  // by whole number: the lower, the sooner
        bool differ = false;
        for (const auto& column : program_.columns()) {
            if (!column.isWhole) continue;
            turns.push_back(kFirst - column.rank);
            differ = differ || turns.back() != turns.front();
        }
        if (differ) model.passInPriorities(turns.data(), false);
    }

    Solved answer(CbcModel& model, double relaxed) {
        std::vector<double> values;
        if (model.bestSolution() != nullptr) values = wholeOf(program_, model.bestSolution());
        if (!values.empty() && !program_.isMetBy(values)) return best({}, SolveStatus::Failed);
        const bool ended = !stopper_.stopped() && !model.isNodeLimitReached() &&
                           !model.isSecondsLimitReached() && !model.isAbandoned();
        if (ended && model.isProvenInfeasible() && values.empty())
            return best({}, options_.start.empty() ? SolveStatus::Infeasible : SolveStatus::Failed);
        auto solved = best(std::move(values), ended ? SolveStatus::Proven : SolveStatus::Stopped);
        const double bound = model.getBestPossibleObjValue();
        solved.bound = std::abs(bound) < 1e49 ? std::max(bound, relaxed) : relaxed;
        if (ended && !solved.values.empty())
            solved.bound =
                std::max(relaxed, std::min(std::max(solved.bound, relaxed), solved.cost));
        return solved;
    }

    /// The values, or the start where that is better or all there is.
    Solved best(std::vector<double> values, SolveStatus status) const {
        Solved solved;
        solved.status = status;
        solved.values = std::move(values);
        const auto& start = options_.start;
        const bool holds = !start.empty() && program_.isMetBy(start);
        if (holds &&
            (solved.values.empty() || program_.costOf(start) < program_.costOf(solved.values)))
            solved.values = start;
        if (!solved.values.empty()) solved.cost = program_.costOf(solved.values);
        return solved;
    }

    const LinearProgram& program_;
    const SolveOptions& options_;
    Stopper stopper_;
    bool cuts_;
};

}  // namespace

Solved solve(const LinearProgram& program, const SolveOptions& options) {
    const double begun = CoinWallclockTime();
    auto solved = Search(program, options, true).run();
    // An answer that does not hold came of its cuts, most likely: once more without them.
    if (solved.status == SolveStatus::Failed) solved = Search(program, options, false).run();
    solved.seconds = CoinWallclockTime() - begun;
    return solved;
}

}  // namespace tenthday
