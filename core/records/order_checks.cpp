#include "records/order_checks.h"

#include <algorithm>
#include <numeric>

#include "records/counted.h"
#include "records/deliveries.h"
#include "records/order_days.h"

namespace tenthday {
namespace {

using Fault = std::optional<OrderFault>;

std::string text(std::int32_t count) { return std::to_string(count); }

/// A season shows orders due in it or with its last queens. A book without one shows all.
bool isInAnySeason(const Snapshot& snapshot, Day due) {
    const auto& seasons = snapshot.all<Season>();
    return seasons.empty() || std::any_of(seasons.begin(), seasons.end(), [&](const auto& season) {
               return season->from <= due && due <= season->until + kLeadIn;
           });
}

Fault purposeFault(const Order& order, OrderPurpose purpose) {
    if (purpose == OrderPurpose::None || order.kind == OrderKind::Own) return {};
    return OrderFault{"purpose", "only queens for oneself have a purpose"};
}

bool hasLine(const Snapshot& snapshot, Id<Batch> batch, Id<Line> line) {
    const auto bars = snapshot.all<BatchBar>().of(batch.uuid);
    return std::any_of(bars.begin(), bars.end(), [&](const auto& bar) {
        const auto breeder = bar->breeder ? snapshot.find(*bar->breeder) : nullptr;
        return breeder && breeder->line == line;
    });
}

std::int32_t graftsOf(const Snapshot& snapshot, Id<Batch> batch) {
    std::int32_t grafts = 0;
    for (const auto& bar : snapshot.all<BatchBar>().of(batch.uuid)) grafts += bar->cells.value;
    return grafts;
}

std::int32_t deliveredFrom(const Snapshot& snapshot, Id<Batch> batch) {
    std::int32_t sum = 0;
    for (const auto& row : snapshot.all<Delivery>())
        if (row->fromBatch == batch) sum += row->count;
    return sum;
}

/// A batch of a season that is not read says nothing, nor one without bars.
Fault stockFault(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    const auto grafts = batch ? graftsOf(snapshot, id) : 0;
    if (grafts == 0) return {};
    const auto ripe = countedOf(snapshot.all<Outcome>().of(id.uuid),
                                snapshot.all<BatchBar>().of(id.uuid), OutcomeKind::Ripe);
    const auto had = ripe ? ripe->cells : grafts;
    const auto gone = deliveredFrom(snapshot, id);
    if (gone <= had) return {};
    return OrderFault{"count", "batch " + batch->label + " had " + text(had) +
                                   (ripe ? " ripe cells, " : " grafts, ") + text(gone) +
                                   " would be delivered of it"};
}

}  // namespace

std::int32_t earmarkedFor(const Snapshot& snapshot, Id<Order> order) {
    const auto rows = snapshot.all<Earmark>().of(order.uuid);
    return std::accumulate(rows.begin(), rows.end(), 0,
                           [](auto sum, const auto& row) { return sum + row->count; });
}

std::string standsAs(OrderStanding standing) {
    return standing == OrderStanding::Waiting ? "is on the waiting list" : "is cancelled";
}

Fault faultOf(const Snapshot& snapshot, const Order& order) {
    const auto terms = termsOf(snapshot, order.id);
    if (auto fault = purposeFault(order, terms.purpose)) return OrderFault{"kind", fault->why};
    if (!isInAnySeason(snapshot, order.due))
        return OrderFault{"due", toText(order.due) +
                                     " is in no season and would not be seen; seasons are added in "
                                     "Set-up"};
    const auto good = deliveredOf(snapshot, order.id).good();
    if (good > order.count) return OrderFault{"count", text(good) + " are delivered already"};
    const auto meant = earmarkedFor(snapshot, order.id);
    if (terms.standing == OrderStanding::Open && meant > order.count)
        return OrderFault{"count", text(meant) + " are earmarked for it"};
    if (meant > 0 && !isForQueens(order.kind))
        return OrderFault{"kind", "queens are earmarked for it, so it is not for cells"};
    return {};
}

Fault faultOf(const Snapshot& snapshot, const OrderTerms& terms) {
    const auto order = snapshot.find(terms.order);
    if (!order) return {};
    if (auto fault = purposeFault(*order, terms.purpose)) return fault;
    const auto meant = earmarkedFor(snapshot, terms.order);
    if (terms.standing != OrderStanding::Open && meant > 0)
        return OrderFault{"standing", text(meant) + " are earmarked for it"};
    return {};
}

Fault faultOf(const Snapshot& snapshot, const Earmark& earmark) {
    const auto order = snapshot.find(earmark.order);
    if (!order) return {};
    const auto standing = termsOf(snapshot, order->id).standing;
    if (standing != OrderStanding::Open) return OrderFault{"order", standsAs(standing)};
    if (!isForQueens(order->kind))
        return OrderFault{"order", "cells and virgins are of the batch of their day"};
    const auto rest = deliveredOf(snapshot, order->id).restOf(*order);
    const auto others = earmarkedFor(snapshot, order->id) - earmark.count;
    if (earmark.count > rest - others)
        return OrderFault{
            "count", "of " + text(rest) + " owed " + text(others) + " are earmarked elsewhere"};
    const auto batch = snapshot.find(earmark.batch);
    if (!batch) return {};  // of a season that is not read
    if (order->line && !hasLine(snapshot, batch->id, *order->line))
        return OrderFault{"batch", "batch " + batch->label + " has no bar of the line " +
                                       snapshot.find(*order->line)->label};
    auto free = graftsOf(snapshot, batch->id) - deliveredFrom(snapshot, batch->id);
    for (const auto& other : snapshot.all<Earmark>())
        if (other->batch == batch->id && other->id != earmark.id) free -= other->count;
    if (earmark.count > free)
        return OrderFault{"count", "batch " + batch->label + " has only " +
                                       text(std::max(free, 0)) + " grafts that are not earmarked"};
    return {};
}

Fault faultOf(const Snapshot& snapshot, const Delivery& delivery) {
    const auto order = snapshot.find(delivery.order);
    if (!order) return {};
    if (delivery.day > snapshot.today())
        return OrderFault{"day", toText(delivery.day) + " is ahead of today"};
    const auto sum = deliveredOf(snapshot, order->id);
    const auto own = delivery.count - delivery.failed;
    const auto rest = std::max(order->count - (sum.good() - own), 0);
    if (own > rest)
        return OrderFault{
            "count", rest == 0 ? "nothing is owed any more" : "only " + text(rest) + " are owed"};
    return delivery.fromBatch ? stockFault(snapshot, *delivery.fromBatch) : Fault{};
}

}  // namespace tenthday
