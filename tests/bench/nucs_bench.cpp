/// Time for what is asked of nucs: the ready list of a day, its four numbers, and what follows from
/// one look entered, up to the outlook that is painted: a frame adds the time of a drag (see the
/// chart). The commit has its own time.
#include <benchmark/benchmark.h>

#include "bench/a_look.h"
#include "occupancy/mite_spans.h"
#include "occupancy/stocking_list.h"
#include "outlook/outlook.h"
#include "support/large_season.h"

namespace tenthday {
namespace {

const OutlookPtr& large() {
    static const OutlookPtr made = [] {
        OutlookMemo memo;
        return outlookOf(test::largeSeason(), memo);
    }();
    return made;
}

/// 5,000 nucs, a day of the season after the other.
void readyListOfADay(benchmark::State& state) {
    const auto& outlook = *large();
    Day day = outlook.season.first;
    for (auto _ : state) {
        ReadyNumbers numbers;
        for (const auto& side : outlook.nucs.sides)
            numbers += numbersOf(sideOn(side, day, outlook.snapshot.today()));
        benchmark::DoNotOptimize(numbers);
        day = day == outlook.season.last ? outlook.season.first : day + Days{1};
    }
}
BENCHMARK(readyListOfADay)->Unit(benchmark::kMillisecond);

/// A look into one nuc, to and fro: the edit in memory and all that follows.
void outlookAfterALook(benchmark::State& state) {
    const auto& first = large()->snapshot;
    const auto changes = aLook(*large());
    OutlookMemo memo;
    (void)outlookOf(first, memo);
    bool there = false;
    for (auto _ : state) {
        there = !there;
        const auto next = there ? applied(first, changes).value() : first;
        benchmark::DoNotOptimize(outlookOf(next, memo));
    }
}
BENCHMARK(outlookAfterALook)->Unit(benchmark::kMillisecond);

void stockingsOfAWeek(benchmark::State& state) {
    const auto& outlook = *large();
    for (auto _ : state)
        benchmark::DoNotOptimize(
            stockingList(outlook.snapshot, outlook.nucs, outlook.snapshot.today()));
}
BENCHMARK(stockingsOfAWeek)->Unit(benchmark::kMillisecond);

void daysWithoutBrood(benchmark::State& state) {
    const auto& outlook = *large();
    for (auto _ : state)
        benchmark::DoNotOptimize(miteSpans(outlook.snapshot, outlook.nucs, outlook.builders));
}
BENCHMARK(daysWithoutBrood)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tenthday
