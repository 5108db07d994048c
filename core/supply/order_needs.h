/// @file order_needs.h  The orders of a season with what each still wants, and what went out.
#pragma once
#include <functional>
#include <vector>

#include "records/order_days.h"

namespace tenthday {

/// Queens of one batch that are meant for an order.
struct Earmarked {
    Id<Batch> batch;
    std::int32_t count = 0;
};

/// What the filling has to know of one order.
struct OrderNeed {
    Ptr<Order> order;
    std::int32_t delivered = 0;  ///< of its count, without those that failed
    std::int32_t went = 0;       ///< all that went out
    std::int32_t rest = 0;       ///< still owed; see deliveries.h
    Day wholeOn;
    std::optional<OrderDays> days;
    std::vector<Earmarked> earmarks;  ///< of its rest, which they never exceed
    /// Of cells and virgins with ship days: the days on which they can go.
    std::optional<std::vector<Day>> goDays;

    [[nodiscard]] std::int32_t earmarked() const;
};

/// An order alone: nothing of it went out, nothing is meant for it, it goes any day.
[[nodiscard]] OrderNeed bareNeed(const Ptr<Order>& order);
/// What an order needs by the book.
/// @param shipDays  its own, or others that are tried
[[nodiscard]] OrderNeed needOf(const Snapshot& snapshot, const Ptr<Order>& order,
                               std::string_view shipDays);

/// Queens of this season's stock that went out for an order.
struct QueensGone {
    Id<Order> order;
    Day day;
    std::int32_t count = 0;  ///< those that failed among them
    std::optional<Id<Batch>> batch;
    std::optional<Id<Line>> line;  ///< the order's: it was given no other
    bool proven = false;           ///< the order's
};

/// Ripe cells or virgins of this season that went out for an order.
struct CellsGone {
    OrderKind kind = OrderKind::RipeCell;
    Day day;
    std::int32_t count = 0;
    std::optional<Id<Batch>> batch;
    std::optional<Id<Line>> line;  ///< the order's
};

/// Open orders in the order of filling, and all that was delivered of this season's stock, whatever
/// became of its order.
struct OrderBook {
    std::vector<OrderNeed> needs;
    std::vector<QueensGone> gone;
    std::vector<CellsGone> cellsGone;
};

/// Queens that went out by the day on which an order has to be whole, and all that went out for it.
/// @param counts  leaves out those for which it does not hold; empty: all count
[[nodiscard]] std::int32_t goneBy(const OrderBook& book, const OrderNeed& need,
                                  const std::function<bool(const QueensGone&)>& counts);

/// Open orders of the season shown, in the order of filling: by due day, then the weightier one,
/// then as their labels stand. Due in the season or up to kLeadIn after it (its last queens), where
/// no other season holds the day. Waiting and cancelled ones take nothing.
[[nodiscard]] std::vector<Ptr<Order>> ordersOf(const Snapshot& snapshot);
/// Those on the waiting list, in the same order.
[[nodiscard]] std::vector<Ptr<Order>> waitingOrdersOf(const Snapshot& snapshot);
/// The order of filling.
[[nodiscard]] bool isFilledBefore(const Order& a, const Order& b);

/// All that is needed of the season's orders. What was delivered is gone from this season's stock
/// when their batch is one of it, or, where no batch is named, when their order is due in the
/// season, whatever its standing; what is of other years' batches is not of this stock.
[[nodiscard]] OrderBook orderBookOf(const Snapshot& snapshot);

/// The day belongs to the season shown: in it, or up to kLeadIn before (`lead`) or after it where
/// no other season holds the day.
[[nodiscard]] bool isOfSeason(const Snapshot& snapshot, Day day, Days lead = Days{0});

}  // namespace tenthday
