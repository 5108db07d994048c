/// @file order_needs.h  The orders of a season with what each still wants, and what went out.
#pragma once
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
    std::int32_t delivered = 0;  ///< without those that failed
    std::int32_t rest = 0;       ///< still owed; see deliveries.h
    Day wholeOn;
    std::optional<OrderDays> days;
    std::string shipDays;
    std::vector<Earmarked> earmarks;  ///< of its rest, which they never exceed; what was delivered
                                      ///< from a batch is no longer among them
};

/// Queens of this season's stock that went out for an order.
struct QueensGone {
    Id<Order> order;
    Day day;
    std::int32_t count = 0;  ///< those that failed among them
    std::optional<Id<Batch>> batch;
    std::optional<Id<Line>> line;  ///< the order's: it was given no other
    bool proven = false;           ///< the order's
};

/// Open orders in the order of filling, and all that was delivered from the stock.
struct OrderBook {
    std::vector<OrderNeed> needs;
    std::vector<QueensGone> gone;
};

/// Open orders of the season shown, in the order of filling: by due day, then the weightier one,
/// then as their labels stand. Due in the season or up to kLeadIn after it (its last queens), where
/// no other season holds the day. Waiting and cancelled ones take nothing.
[[nodiscard]] std::vector<Ptr<Order>> ordersOf(const Snapshot& snapshot);
/// Those on the waiting list, in the same order.
[[nodiscard]] std::vector<Ptr<Order>> waitingOrdersOf(const Snapshot& snapshot);

/// A day belongs to the season shown: in it, or up to kLeadIn after it where no other season holds
/// the day.
[[nodiscard]] bool isOfSeason(const Snapshot& snapshot, Day day);

/// All that is needed of these orders. Queens delivered count as gone from this season's stock when
/// their batch is one of it, or, where no batch is named, when their order is of the season,
/// whatever its standing; queens of last year's batches are not of this stock.
[[nodiscard]] OrderBook orderBookOf(const Snapshot& snapshot);

}  // namespace tenthday
