/// @file deliveries.h  What went out for an order, and what is still owed of it.
///
///     delivered = all that went out            good = delivered - failed
///     rest      = count - good, 0 at the least: still owed, what has to be replaced among it
///     wanted    = delivered + rest: all that the order takes since the season began
///
/// So queens that failed are gone and are owed again. Queens raised and bought = delivered and in
/// hand: what is left of the stock is all that came less what was delivered.
#pragma once
#include "records/snapshot.h"

namespace tenthday {

/// Of one order, over all its deliveries.
struct Delivered {
    std::int32_t count = 0;   ///< went out
    std::int32_t failed = 0;  ///< of these: to be replaced
    std::optional<Day> last;  ///< day of the last one

    /// Delivered, and no word that it failed.
    [[nodiscard]] std::int32_t good() const { return count - failed; }
    /// Still owed of an order for so many.
    [[nodiscard]] std::int32_t restOf(const Order& order) const;
};
[[nodiscard]] Delivered deliveredOf(const Snapshot& snapshot, Id<Order> order);

/// Its deliveries, by day.
[[nodiscard]] std::vector<Ptr<Delivery>> deliveriesOf(const Snapshot& snapshot, Id<Order> order);

}  // namespace tenthday
