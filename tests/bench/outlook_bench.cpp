/// Time to derive everything: one batch, a whole large season, and after a drag by one day.
#include <benchmark/benchmark.h>

#include <stdexcept>

#include "outlook/outlook.h"
#include "outlook/sky.h"
#include "records/method_catalogue.h"
#include "records/verbs.h"
#include "support/large_season.h"

namespace tenthday {
namespace {

const Snapshot& season() {
    static const Snapshot made = test::largeSeason();
    return made;
}
/// A batch still wholly ahead of today.
constexpr int kPlanned = 300;

/// The dates, stays, counts and hold of one planned batch.
void oneBatch(benchmark::State& state) {
    const auto batch = season().find(test::largeSeasonBatch(kPlanned));
    const auto& all = season();
    const auto mating = matingTable(all);
    const BatchInputs inputs{batch,
                             all.all<BatchBar>().of(batch->id.uuid),
                             all.all<BatchLoad>().of(batch->id.uuid),
                             all.all<BatchShare>().of(batch->id.uuid),
                             all.all<Placement>().of(batch->id.uuid),
                             all.all<Outcome>().of(batch->id.uuid),
                             all.all<MatingStay>().of(batch->id.uuid),
                             all.all<Step>().of(batch->method.uuid),
                             {},
                             CatchRule::SealedBrood,
                             &all.facts(),
                             mating.get()};
    for (auto _ : state) benchmark::DoNotOptimize(timelineOf(inputs));
}
BENCHMARK(oneBatch)->Unit(benchmark::kMicrosecond);

/// The dates alone, as the headless verb reckons them.
void oneBatchDates(benchmark::State& state) {
    DatePlan plan;
    plan.begin = momentOf(season().today());
    plan.steps = builtInMethods()[1].steps;
    const Facts facts;
    const MatingTable mating(facts);
    for (auto _ : state) benchmark::DoNotOptimize(datesOf(plan, facts, mating));
}
BENCHMARK(oneBatchDates)->Unit(benchmark::kMicrosecond);

/// 400 batches, 5,000 nucs, nothing remembered.
void outlookAfresh(benchmark::State& state) {
    for (auto _ : state) {
        OutlookMemo memo;
        benchmark::DoNotOptimize(outlookOf(season(), memo));
    }
}
BENCHMARK(outlookAfresh)->Unit(benchmark::kMillisecond);

Snapshot moved(const Snapshot& from, Days by) {
    const auto id = test::largeSeasonBatch(kPlanned);
    const auto changes = moveBatch(from, id, from.find(id)->day + by);
    if (!changes) throw std::logic_error(changes.error().text);
    return applied(from, changes.value()).value();
}

/// A drag to and fro: the edit in memory.
void moveOneBatch(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(moved(season(), Days{1}));
}
BENCHMARK(moveOneBatch)->Unit(benchmark::kMillisecond);

/// A drag to and fro: what is shown after it.
void outlookAfterOneBatchMoved(benchmark::State& state) {
    const Snapshot steps[2] = {season(), moved(season(), Days{1})};
    OutlookMemo memo;
    (void)outlookOf(steps[0], memo);
    std::size_t n = 0;
    for (auto _ : state) benchmark::DoNotOptimize(outlookOf(steps[++n % 2], memo));
}
BENCHMARK(outlookAfterOneBatchMoved)->Unit(benchmark::kMillisecond);

/// Thirty years of weather: the possible seasons and what they mean for each emergence day.
void matingTableAfresh(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(matingTable(season()));
}
BENCHMARK(matingTableAfresh)->Unit(benchmark::kMillisecond);

/// One more day recorded: every batch is reckoned anew.
void outlookAfterAWeatherChange(benchmark::State& state) {
    ChangeSet changes;
    const auto row = *season().all<WeatherDay>().begin();
    auto edited = *row;
    edited.tmaxC = Tenths{edited.tmaxC->value > 180 ? 100 : 250};
    changes.edit(row, edited);
    const Snapshot steps[2] = {season(), applied(season(), changes).value()};
    OutlookMemo memo;
    int step = 0;
    for (auto _ : state) benchmark::DoNotOptimize(outlookOf(steps[step ^= 1], memo));
}
BENCHMARK(outlookAfterAWeatherChange)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tenthday
