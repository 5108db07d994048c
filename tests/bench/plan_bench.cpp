/// Season plans of 120 days, 12 orders, 5 builders, 200 nucs, 3 lines: aims 1 and 2 proven in under
/// 5 s for nine of ten; the second solver's time beside. One number is one made-up season.
#include <benchmark/benchmark.h>

#include "planning/plan_solve.h"
#include "support/plan_seasons.h"
#include "support/second_solver.h"

namespace tenthday {
namespace {

/// Longer than any answer is waited for.
constexpr double kSeconds = 30;

void plan(benchmark::State& state, const Solver& solver) {
    const auto problem =
        test::madeUpSeason(static_cast<std::uint32_t>(state.range(0)), {120, 1, 12, 5, 200, 3, 1});
    const std::vector<double> none(problem.demands.size());
    bool proven = true;
    for (auto _ : state) {
        PlanControl control;
        control.seconds = kSeconds;
        PlanBudget budget(control);
        const auto solution = solvePlan(problem, none, solver, budget);
        proven = proven && solution.isProven;
        benchmark::DoNotOptimize(solution.graftDays);
    }
    state.counters["proven"] = proven ? 1 : 0;
}
void planBySolver(benchmark::State& state) { plan(state, solve); }
void planBySecondSolver(benchmark::State& state) { plan(state, test::solveByGlpk); }

BENCHMARK(planBySolver)->DenseRange(0, 9)->Iterations(1)->Unit(benchmark::kSecond);
BENCHMARK(planBySecondSolver)->DenseRange(0, 9)->Iterations(1)->Unit(benchmark::kSecond);

}  // namespace
}  // namespace tenthday
