/// @file order_days.h  The days on which an order is caged and goes.
#pragma once
#include <string_view>

#include "records/snapshot.h"

namespace tenthday {

/// The terms of an order; one without a row of them is open, for nothing in particular, and goes on
/// any day.
[[nodiscard]] OrderTerms termsOf(const Snapshot& snapshot, Id<Order> order);

/// They say no more than no row of them: open, for nothing in particular, on any day.
[[nodiscard]] bool isBare(const OrderTerms& terms);

/// Mated, proven, or for oneself; the others are for cells and virgins.
[[nodiscard]] constexpr bool isForQueens(OrderKind kind) { return kind >= OrderKind::Mated; }

/// The day is one of these ISO weekdays ("1234": Monday to Thursday); any where none is named.
[[nodiscard]] bool isShipDay(std::string_view shipDays, Day day);

/// A row of days off covers the day.
[[nodiscard]] bool isDayOff(const Snapshot& snapshot, Day day);

/// When an order goes.
struct OrderDays {
    Day go;    ///< the last day on which it can go: posted, fetched or handed over
    Day cage;  ///< its queens are caged; of cells and virgins the day they go
    friend bool operator==(const OrderDays&, const OrderDays&) = default;
};

/// Something can go on this day: one of its weekdays, no day off, and none the day after, so that
/// no box waits over a holiday; of queens the day before, on which they are caged, is none either.
/// With no weekdays named any day will do: such an order is fetched or handed over as agreed.
[[nodiscard]] bool canGo(const Snapshot& snapshot, OrderKind kind, std::string_view shipDays,
                         Day day);

/// The last day on or before the due day on which an order can go, and when it is caged. Without
/// weekdays that is the due day, caged the day before (for oneself: that very day). Nothing where
/// from "not before" on (else from four weeks before it is due) there is no such day.
[[nodiscard]] std::optional<OrderDays> orderDays(const Snapshot& snapshot, const Order& order);
[[nodiscard]] std::optional<OrderDays> orderDays(const Snapshot& snapshot, const Order& order,
                                                 std::string_view shipDays);

/// The day on which an order has to be whole: the day it is caged where it has weekdays, so that
/// days off count; else its due day, and so too where there is no day on which it can go.
/// @param days  of the order with these weekdays
[[nodiscard]] Day wholeOn(const Order& order, std::string_view shipDays,
                          const std::optional<OrderDays>& days);

}  // namespace tenthday
