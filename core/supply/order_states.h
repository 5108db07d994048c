/// @file order_states.h  The orders of a season: met, at risk or short, and which batches fill
/// them.
#pragma once
#include <span>
#include <vector>

#include "supply/queen_sums.h"

namespace tenthday {

enum class OrderState : std::uint8_t {
    Met,     ///< as sure as it must be
    AtRisk,  ///< less sure than that, but likelier whole than not
    Short    ///< likelier not whole
};
template <>
struct TokensOf<OrderState> {
    static constexpr auto names = std::to_array<std::string_view>({"met", "at_risk", "short"});
};

/// What an order is expected to have of a batch.
struct OrderFill {
    Id<Batch> batch;
    double count = 0;
};

/// One order, and how it stands.
struct OrderOutlook {
    Ptr<Order> order;
    OrderState state = OrderState::Short;
    double chance = 0;         ///< that it is whole on its due day, 0..1
    std::int32_t lacking = 0;  ///< short by so many, or fewer, at the chance it must have
    std::int32_t owedDue = 0;  ///< queens owed by its due day: its own, and those that come first
    std::vector<OrderFill> fills;  ///< by batch; together they never give more than is expected
};

/// Orders of the season shown, in the order of filling: by due day, then the weightier one, then
/// as their labels stand. Due in the season or up to kLeadIn after it (its last queens), where no
/// other season holds the day. Earmarks, once a book has them, come before this order.
[[nodiscard]] std::vector<Ptr<Order>> ordersOf(const Snapshot& snapshot);

/// Mated, proven, or for oneself; the others are for cells and virgins.
[[nodiscard]] constexpr bool isForQueens(OrderKind kind) { return kind >= OrderKind::Mated; }
[[nodiscard]] QueenWant wantOf(const Order& order);

/// How an order stands when so many in all have to be there.
/// @param supply  what it can be filled from, over all seasons
/// @param before  of this, what orders filled earlier want
[[nodiscard]] OrderOutlook orderOutlook(const Ptr<Order>& order, const CountSpread& supply,
                                        std::int32_t before);

/// Orders for queens, of `orders`. Rules:
///
/// - An order keeps its place: what it lacks on its due day stays owed and goes before orders due
///   later. So an order is whole on its due day when the queens in hand by then, since the season
///   began, are as many as it and all before it want. That chance is exact by convolution given
///   the season and a mean over the seasons, for orders of any line and rule.
/// - An order of one line, or for proven queens, also needs as many of those as it and all orders
///   before it that take nothing else. Others are taken to be given other queens as long as there
///   are any, looking at the whole sum and not at who came first: a little hopeful.
/// - A proven queen fills a mated order. A queen caught early waits in her nuc or the bank: "not
///   before" keeps back her delivery, not her. In parts or whole is all one for queens.
[[nodiscard]] std::vector<OrderOutlook> queenOrders(std::span<const Ptr<Order>> orders,
                                                    const QueenStock& stock, QueenSums& sums);

}  // namespace tenthday
