#include "outlook/order_prospect.h"

#include <algorithm>

namespace tenthday {
namespace {

Timelines timelinesOf(const Outlook& outlook) {
    Timelines timelines;
    for (const auto& batch : outlook.batches)
        timelines.emplace_back(batch->batch->id, &batch->timeline);
    return timelines;
}

/// Ids of rows that are never kept.
IdSource trialIds() {
    return [next = std::uint64_t{0}]() mutable { return Uuid{0xFFFFFFFF0000F000ULL, ++next}; };
}

Result<Snapshot> without(const Snapshot& snapshot, Id<Order> order) {
    if (!snapshot.find(order)) return snapshot;
    const auto gone = deleteOrder(snapshot, order);
    if (!gone) return gone.error();
    return applied(snapshot, gone.value());
}

std::int32_t metAmong(const std::vector<OrderOutlook>& orders, Id<Order> except) {
    return static_cast<std::int32_t>(
        std::count_if(orders.begin(), orders.end(), [&](const OrderOutlook& each) {
            return each.order->id != except && each.state == OrderState::Met;
        }));
}

}  // namespace

Result<OrderProspect> prospectOf(const Outlook& outlook, const OrderWords& words) {
    const auto& saved = outlook.snapshot;
    const auto changes = keepOrder(saved, words, trialIds());
    if (!changes) return changes.error();
    const auto kept = applied(saved, changes.value());
    if (!kept) return kept.error();
    const auto bare = without(saved, words.order.id);
    if (!bare) return bare.error();
    const auto timelines = timelinesOf(outlook);
    SeasonSupply with(kept.value(), timelines, outlook.nucs, *outlook.mating);
    SeasonSupply others(bare.value(), timelines, outlook.nucs, *outlook.mating);

    OrderProspect prospect;
    const auto after = with.orders();
    for (const auto& each : after)
        if (each.order->id == words.order.id) prospect.outlook = each;
    prospect.harmed = metAmong(others.orders(), words.order.id) - metAmong(after, words.order.id);
    const auto row = kept.value().find(words.order.id);
    if (prospect.outlook && isForQueens(row->kind) && prospect.outlook->state != OrderState::Met) {
        auto grafts =
            graftsWanted(kept.value(), orderWhole(row->id), row->due, row->sure.value / 1000.0);
        if (!grafts.batches.empty()) prospect.grafts = std::move(grafts);
    }
    const auto ask = askOf(kept.value(), *row);
    if (ask.count < 1) return prospect;
    prospect.first = firstPromise(others, ask);
    if (isForQueens(ask.kind)) prospect.byRule = firstPromiseByRule(others, ask);
    return prospect;
}

}  // namespace tenthday
