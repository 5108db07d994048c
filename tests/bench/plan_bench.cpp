/// Season plans of 120 days, 12 orders, 5 builders, 200 nucs, 3 lines: aims 1 and 2 proven in under
/// 5 s for nine of ten; the second solver's time beside. One number is one made-up season.
#include <benchmark/benchmark.h>

#include "planning/plan_margins.h"
#include "planning/plan_solve.h"
#include "support/plan_seasons.h"
#include "support/second_solver.h"

namespace tenthday {
namespace {

/// Longer than any answer is waited for, s.
constexpr double kSeconds = 30;

/// The benchmark's own time is of all aims; `aims_1_2` are the seconds to the proof of what the
/// reach is about.
void plan(benchmark::State& state, const Solver& solver) {
    auto problem =
        test::madeUpSeason(static_cast<std::uint32_t>(state.range(0)), {120, 1, 12, 5, 200, 3, 1});
    for (auto& demand : problem.demands) demand.sure = 0.9;
    PlanAsked asked;
    asked.margins = leastMargins(problem);
    asked.own = leastOwnMargins(problem);
    PlanSolution solution;
    for (auto _ : state) {
        PlanControl control;
        control.seconds = kSeconds;
        PlanBudget budget(control);
        solution = solvePlan(problem, asked, solver, budget);
        benchmark::DoNotOptimize(solution.graftDays);
    }
    state.counters["proven"] = solution.isProven ? 1 : 0;
    if (solution.isProven)
        state.counters["aims_1_2"] = solution.secondsToDays;
    else
        state.SetLabel("not within " + std::to_string(static_cast<int>(kSeconds)) + " s");
    state.counters["short"] = solution.weighed;
    state.counters["graft_days"] = solution.graftDays;
}
void planBySolver(benchmark::State& state) { plan(state, solve); }
void planBySecondSolver(benchmark::State& state) { plan(state, test::solveByGlpk); }

BENCHMARK(planBySolver)->DenseRange(0, 9)->Iterations(1)->Unit(benchmark::kSecond);
BENCHMARK(planBySecondSolver)->DenseRange(0, 9)->Iterations(1)->Unit(benchmark::kSecond);

}  // namespace
}  // namespace tenthday
