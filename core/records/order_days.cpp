#include "records/order_days.h"

#include <algorithm>

namespace tenthday {
namespace {

/// How far before the due day a day to go is looked for, where no first day is given.
constexpr Days kLookBack{28};

/// Days an order's queens are caged before it goes; queens for oneself are put to use at home.
Days cagedBefore(OrderKind kind) {
    return Days{kind == OrderKind::Mated || kind == OrderKind::Proven ? 1 : 0};
}

}  // namespace

OrderTerms termsOf(const Snapshot& snapshot, Id<Order> order) {
    const auto rows = snapshot.all<OrderTerms>().of(order.uuid);
    if (!rows.empty()) return *rows.front();
    OrderTerms none;
    none.order = order;
    return none;
}

bool isBare(const OrderTerms& terms) {
    return terms.standing == OrderStanding::Open && terms.purpose == OrderPurpose::None &&
           terms.shipDays.empty();
}

bool isShipDay(std::string_view shipDays, Day day) {
    const auto weekday = date::weekday(day).iso_encoding();  // 1 for Monday to 7
    return shipDays.empty() ||
           shipDays.find(static_cast<char>('0' + weekday)) != std::string_view::npos;
}

bool isDayOff(const Snapshot& snapshot, Day day) {
    const auto& all = snapshot.all<DayOff>();
    return std::any_of(all.begin(), all.end(),
                       [&](const auto& off) { return off->from <= day && day <= off->until; });
}

bool canGo(const Snapshot& snapshot, OrderKind kind, std::string_view shipDays, Day day) {
    if (shipDays.empty()) return true;
    return isShipDay(shipDays, day) && !isDayOff(snapshot, day) &&
           !isDayOff(snapshot, day + Days{1}) && !isDayOff(snapshot, day - cagedBefore(kind));
}

std::optional<OrderDays> orderDays(const Snapshot& snapshot, const Order& order,
                                   std::string_view shipDays) {
    const Day first = order.notBefore.value_or(order.due - kLookBack);
    for (Day day = order.due; day >= first; day -= Days{1})
        if (canGo(snapshot, order.kind, shipDays, day))
            return OrderDays{day, day - cagedBefore(order.kind)};
    return std::nullopt;
}

std::optional<OrderDays> orderDays(const Snapshot& snapshot, const Order& order) {
    return orderDays(snapshot, order, termsOf(snapshot, order.id).shipDays);
}

Day wholeOn(const Order& order, std::string_view shipDays, const std::optional<OrderDays>& days) {
    return shipDays.empty() || !days ? order.due : days->cage;
}

}  // namespace tenthday
