/// @file claims.h  What of a batch is spoken for, seen from one order. Inner to the room.
#pragma once
#include <span>
#include <vector>

#include "losses/count_spread.h"
#include "supply/order_needs.h"

namespace tenthday {

/// Of the queens one batch gives, the first ones go out or are meant for the order and those
/// filled before it, the next ones for orders filled later; what is left is free.
struct BatchClaim {
    Id<Batch> batch;
    std::int32_t first = 0;
    std::int32_t later = 0;
    std::int32_t own = 0;  ///< the last of `first`: the order's own

    /// Of so many queens, those that serve the order and those filled before it.
    [[nodiscard]] std::int32_t serving(std::int32_t queens) const;
    /// Of so many queens, those that are meant for the order.
    [[nodiscard]] std::int32_t ownOf(std::int32_t queens) const;

    [[nodiscard]] CountSpread serving(const CountSpread& queens) const;
    [[nodiscard]] CountSpread ownOf(const CountSpread& queens) const;
    /// The spread, were as many there as are meant for the order; as it is where that cannot be.
    [[nodiscard]] CountSpread ifOwnIsThere(const CountSpread& queens) const;
};

/// The claims that change what an order can have on a day: those for orders filled later, and its
/// own. None where nothing is earmarked.
/// @param place  orders of the book filled before it
/// @param own    it is the one at that place; else one the book does not hold
[[nodiscard]] std::vector<BatchClaim> claimsAt(const OrderBook& book, std::size_t place, bool own,
                                               Day day);

}  // namespace tenthday
