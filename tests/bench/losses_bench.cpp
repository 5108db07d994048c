/// Time for the chain of losses: one batch, a season of batches, how many grafts, and a fit.
#include <benchmark/benchmark.h>

#include "losses/how_many.h"
#include "losses/rate_fit.h"

namespace tenthday {
namespace {

/// So many grafts through five stages, batches differing as in the facts. To reach: 1,000 cells in
/// 10 ms.
void lossChain(benchmark::State& state) {
    const auto rates = chainRates(Facts());
    const auto batch = standing(static_cast<std::int32_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(reached(batch, rates, ChainPoint::Good, 0.85));
}
BENCHMARK(lossChain)->Arg(40)->Arg(200)->Arg(1000)->Unit(benchmark::kMillisecond);

/// 450 possible seasons: thirty years, each shifted by up to a week either way.
std::vector<double> weather(std::size_t batch) {
    std::vector<double> shares;
    for (std::size_t season = 0; season < 450; ++season)
        shares.push_back(static_cast<double>((season * 37 + batch * 101) % 400 + 51) / 450);
    return shares;
}

Split split(std::size_t batches) {
    Split made;
    for (std::size_t i = 0; i < batches; ++i)
        made.batches.push_back({1, chainRates(Facts()), weather(i)});
    made.seasonWeights.assign(450, 1);
    return made;
}

/// Ten batches of 40 grafts, hardly two seasons alike.
void batchesOverSeasons(benchmark::State& state) {
    const auto ten = split(10);
    const std::vector<std::int32_t> grafts(10, 40);
    for (auto _ : state) benchmark::DoNotOptimize(countsOf(ten, grafts).atLeast(100));
}
BENCHMARK(batchesOverSeasons)->Unit(benchmark::kMillisecond);

/// "How many grafts for 40 at 50 %", in one batch or in five.
void howManyGrafts(benchmark::State& state) {
    const auto made = split(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(graftsNeeded(made, 40, 0.5));
}
BENCHMARK(howManyGrafts)->Arg(1)->Arg(5)->Unit(benchmark::kMillisecond);

/// The same where the weather caps the chance: the most grafts are tried too.
void howManyGraftsOutOfReach(benchmark::State& state) {
    const auto made = split(static_cast<std::size_t>(state.range(0)));
    for (auto _ : state) benchmark::DoNotOptimize(graftsNeeded(made, 200, 0.99));
}
BENCHMARK(howManyGraftsOutOfReach)->Arg(1)->Arg(5)->Unit(benchmark::kMillisecond);

/// One stage fitted to so many batches of 20 to 59 grafts.
void rateFit(benchmark::State& state) {
    const auto prior = priorOf(Facts(), LossStage::Accepted);
    std::vector<OwnOutcome> outcomes;
    for (std::int32_t i = 0; i < state.range(0); ++i)
        outcomes.push_back({{20 + i % 40, 15 + i * 7 % (6 + i % 40)}, {}});
    for (auto _ : state) benchmark::DoNotOptimize(fitRate(prior, outcomes));
}
BENCHMARK(rateFit)->Arg(10)->Arg(400)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tenthday
