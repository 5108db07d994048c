/// @file stock_maker.h  Stocks of queens by hand: parts and orders without a book.
#pragma once
#include <memory>
#include <vector>

#include "supply/order_states.h"
#include "support/with_rows.h"

namespace tenthday::test {

/// Queens of batch n that would mate in fair weather; the share of each season is caught on a day.
inline QueenPart queens(int n, CountSpread mated, std::string_view from, std::vector<float> shares,
                        bool proven = true) {
    QueenPart part;
    part.batch = id<Batch>(static_cast<std::uint64_t>(n));
    part.isProven = proven;
    part.from = day(from);
    part.mated = std::move(mated);
    part.eggs = std::make_shared<const EggDays>(EggDays{day(from), 1, std::move(shares)});
    return part;
}
/// So many that are in hand from a day on.
inline QueenPart caughtQueens(int n, int count, std::string_view from, bool proven = true) {
    auto part = queens(n, CountSpread(0), from, {1}, proven);
    part.known.push_back({day(from), 0, count});
    return part;
}

inline Ptr<Order> shared(const Order& order) { return std::make_shared<const Order>(order); }

/// How these orders, in the order of filling, stand with a stock.
inline std::vector<OrderOutlook> filled(const QueenStock& stock,
                                        const std::vector<Ptr<Order>>& orders) {
    QueenSums sums(stock);
    return queenOrders(orders, stock, sums);
}

}  // namespace tenthday::test
