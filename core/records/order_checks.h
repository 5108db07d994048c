/// @file order_checks.h  Whether orders and what hangs on them can stand beside one another. Forms,
/// pasted lines and import all ask here.
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "records/snapshot.h"

namespace tenthday {

/// Why a row cannot stand.
struct OrderFault {
    std::string_view column;  ///< of its table
    std::string why;          ///< in a few words, without a name before it
};

/// The fault of a row in a snapshot in which it stands; nothing where there is none. What
/// validity.h checks is taken to be good.
///
/// - An order is due in a season of the book or up to kLeadIn after it (without seasons any day
///   will do), is not for fewer than are delivered or, while it is open, earmarked, and has a
///   purpose only if it is for oneself. Cells and virgins have no earmarks.
/// - An order that is not open has no earmarks.
/// - Earmarks are for open orders for queens, of batches with a bar of their line, together no more
///   than is still owed; of a batch no more than its grafts less what is delivered.
/// - What is delivered is no more than was ordered, what failed left out, not ahead of today, and
///   of a batch no more than it gave: its ripe cells where all are counted (countedOf), else its
///   grafts.
[[nodiscard]] std::optional<OrderFault> faultOf(const Snapshot& snapshot, const Order& order);
[[nodiscard]] std::optional<OrderFault> faultOf(const Snapshot& snapshot, const OrderTerms& terms);
[[nodiscard]] std::optional<OrderFault> faultOf(const Snapshot& snapshot, const Earmark& earmark);
[[nodiscard]] std::optional<OrderFault> faultOf(const Snapshot& snapshot, const Delivery& delivery);

/// Queens earmarked for an order, of all batches.
[[nodiscard]] std::int32_t earmarkedFor(const Snapshot& snapshot, Id<Order> order);

/// Two terms, at the most: "is on the waiting list", "is cancelled".
[[nodiscard]] std::string standsAs(OrderStanding standing);

}  // namespace tenthday
