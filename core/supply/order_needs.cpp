#include "supply/order_needs.h"

#include <algorithm>

#include "base/natural_order.h"
#include "records/deliveries.h"

namespace tenthday {
namespace {

std::vector<Ptr<Order>> ordersThat(const Snapshot& snapshot, OrderStanding stand) {
    std::vector<Ptr<Order>> orders;
    for (const auto& order : snapshot.all<Order>())
        if (isOfSeason(snapshot, order->due) && termsOf(snapshot, order->id).standing == stand)
            orders.push_back(order);
    std::sort(orders.begin(), orders.end(),
              [](const auto& a, const auto& b) { return isFilledBefore(*a, *b); });
    return orders;
}

/// Earmarks of batches that are there, together no more than is owed: the first ones by id.
std::vector<Earmarked> earmarksOf(const Snapshot& snapshot, Id<Order> order, std::int32_t rest) {
    std::vector<Earmarked> marks;
    for (const auto& row : snapshot.all<Earmark>().of(order.uuid)) {
        const auto count = std::min(row->count, rest);
        if (count <= 0 || !snapshot.find(row->batch)) continue;
        marks.push_back({row->batch, count});
        rest -= count;
    }
    return marks;
}

/// Cells and virgins go on the day itself: from "not before" on, else on the last day alone.
std::vector<Day> goDaysOf(const Snapshot& snapshot, const OrderNeed& need,
                          std::string_view shipDays) {
    std::vector<Day> days;
    if (!need.days) return days;
    const auto& order = *need.order;
    for (Day day = order.notBefore.value_or(need.days->go); day <= need.days->go; day += Days{1})
        if (canGo(snapshot, order.kind, shipDays, day)) days.push_back(day);
    return days;
}

bool isFromStock(const Snapshot& snapshot, const Delivery& delivery, const Order& order) {
    if (delivery.fromBatch) return snapshot.find(*delivery.fromBatch) != nullptr;
    return isOfSeason(snapshot, order.due);
}

/// Writes down what was delivered of this season's stock.
void putGone(const Snapshot& snapshot, OrderBook& book) {
    for (const auto& delivery : snapshot.all<Delivery>()) {
        const auto order = snapshot.find(delivery->order);
        if (!order || !isFromStock(snapshot, *delivery, *order)) continue;
        if (isForQueens(order->kind))
            book.gone.push_back({order->id, delivery->day, delivery->count, delivery->fromBatch,
                                 order->line, order->kind == OrderKind::Proven});
        else
            book.cellsGone.push_back(
                {order->kind, delivery->day, delivery->count, delivery->fromBatch, order->line});
    }
}

}  // namespace

std::int32_t OrderNeed::earmarked() const {
    std::int32_t sum = 0;
    for (const auto& mark : earmarks) sum += mark.count;
    return sum;
}

OrderNeed bareNeed(const Ptr<Order>& order) {
    OrderNeed need;
    need.order = order;
    need.rest = order->count;
    need.wholeOn = order->due;
    return need;
}

OrderNeed needOf(const Snapshot& snapshot, const Ptr<Order>& order, std::string_view shipDays) {
    OrderNeed need;
    const auto out = deliveredOf(snapshot, order->id);
    need.order = order;
    need.delivered = out.good();
    need.went = out.count;
    need.rest = out.restOf(*order);
    need.days = orderDays(snapshot, *order, shipDays);
    need.wholeOn = wholeOn(*order, shipDays, need.days);
    if (isForQueens(order->kind))
        need.earmarks = earmarksOf(snapshot, order->id, need.rest);
    else if (!shipDays.empty())
        need.goDays = goDaysOf(snapshot, need, shipDays);
    return need;
}

std::int32_t goneBy(const OrderBook& book, const OrderNeed& need,
                    const std::function<bool(const QueensGone&)>& counts) {
    std::int32_t sum = 0;
    for (const auto& gone : book.gone)
        if ((gone.day <= need.wholeOn || gone.order == need.order->id) && (!counts || counts(gone)))
            sum += gone.count;
    return sum;
}

bool isOfSeason(const Snapshot& snapshot, Day day, Days lead) {
    const auto season = snapshot.season();
    if (season.contains(day)) return true;
    if (day < season.first - lead || day > season.last + kLeadIn) return false;
    const auto& all = snapshot.all<Season>();
    return std::none_of(all.begin(), all.end(), [&](const auto& other) {
        return other->from <= day && day <= other->until;
    });
}

bool isFilledBefore(const Order& a, const Order& b) {
    if (a.due != b.due) return a.due < b.due;
    if (a.weight != b.weight) return a.weight > b.weight;
    return a.label != b.label ? naturalLess(a.label, b.label) : a.id < b.id;
}

std::vector<Ptr<Order>> ordersOf(const Snapshot& snapshot) {
    return ordersThat(snapshot, OrderStanding::Open);
}

std::vector<Ptr<Order>> waitingOrdersOf(const Snapshot& snapshot) {
    return ordersThat(snapshot, OrderStanding::Waiting);
}

OrderBook orderBookOf(const Snapshot& snapshot) {
    OrderBook book;
    for (const auto& order : ordersOf(snapshot))
        book.needs.push_back(needOf(snapshot, order, termsOf(snapshot, order->id).shipDays));
    putGone(snapshot, book);
    return book;
}

}  // namespace tenthday
