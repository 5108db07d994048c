/// Time for orders and promises of a large season.
#include <benchmark/benchmark.h>

#include <stdexcept>

#include "outlook/supply_of.h"
#include "records/change_set.h"
#include "supply/promise.h"
#include "support/ids.h"
#include "support/large_season.h"

namespace tenthday {
namespace {

/// 40 orders from June to October.
const Outlook& season() {
    static const OutlookPtr made = [] {
        const auto bare = test::largeSeason();
        ChangeSet changes;
        for (int n = 0; n < 40; ++n) {
            Order order;
            order.id = test::id<Order>(static_cast<std::uint64_t>(n) + 1);
            order.label = std::to_string(n + 1);
            order.kind = n % 8 == 7 ? OrderKind::RipeCell : OrderKind::Mated;
            order.count = 10 + 7 * (n % 6);
            order.due = bare.today() + Days{3 + 3 * n};
            changes.add(order);
        }
        const auto next = applied(bare, changes);
        if (!next) throw std::logic_error(next.error().text);
        OutlookMemo memo;
        return outlookOf(next.value(), memo);
    }();
    return *made;
}

/// 400 batches under 450 possible seasons: what they give, before anything is asked.
void supplyAfresh(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(supplyOf(season()));
}
BENCHMARK(supplyAfresh)->Unit(benchmark::kMillisecond);

/// To reach: 50 ms.
void ordersAfresh(benchmark::State& state) {
    for (auto _ : state) benchmark::DoNotOptimize(supplyOf(season()).orders());
}
BENCHMARK(ordersAfresh)->Unit(benchmark::kMillisecond);

/// The same after one batch moved by a day: the outlook anew with what the memo keeps, then the
/// orders. A drag shows the outlook within its frame and "about" until the orders come.
void ordersAfterABatchMoved(benchmark::State& state) {
    const auto& before = season();
    const auto moved = [&](int days) {
        auto next = before.snapshot;
        const auto batch = before.batches[before.batches.size() / 2]->batch;
        auto row = *batch;
        row.day += Days{days};
        next.setAll(next.all<Batch>().with(batch, std::make_shared<const Batch>(row)));
        return next;
    };
    const Snapshot there[] = {moved(1), moved(2)};
    OutlookMemo memo;
    (void)outlookOf(before.snapshot, memo);
    std::size_t which = 0;
    for (auto _ : state) {
        const auto outlook = outlookOf(there[which], memo);
        benchmark::DoNotOptimize(supplyOf(*outlook).orders());
        which = 1 - which;
    }
}
BENCHMARK(ordersAfterABatchMoved)->Unit(benchmark::kMillisecond);

void promiseAfresh(benchmark::State& state) {
    for (auto _ : state) {
        auto supply = supplyOf(season());
        benchmark::DoNotOptimize(promiseByWeek(supply, kPromiseLevel));
    }
}
BENCHMARK(promiseAfresh)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace tenthday
