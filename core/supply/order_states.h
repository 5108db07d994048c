/// @file order_states.h  The orders of a season: met, at risk or short, and which batches fill
/// them.
#pragma once
#include <span>
#include <vector>

#include "supply/order_needs.h"
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
    Id<Batch> batch;  ///< none (isNone()): queens bought in
    double count = 0;
};

/// One order, and how it stands.
struct OrderOutlook {
    Ptr<Order> order;
    OrderState state = OrderState::Short;
    double chance = 0;         ///< that it is whole on `wholeOn`, 0..1; 1 once it is delivered
    std::int32_t lacking = 0;  ///< short by so many, or fewer, at the chance it must have
    std::int32_t owedDue = 0;  ///< queens owed by its due day: its own, and those that come first
    std::vector<OrderFill> fills;   ///< by batch; together they never give more than is expected
    std::int32_t delivered = 0;     ///< of its count; without those that failed
    std::int32_t rest = 0;          ///< of its count, still to be delivered
    std::int32_t earmarked = 0;     ///< of the rest, meant for it by hand
    Day wholeOn;                    ///< the due day; with ship days, the day it is caged
    std::optional<OrderDays> days;  ///< when it goes; nothing: there is no day on which it can
};

[[nodiscard]] QueenWant wantOf(const Order& order);

/// How an order stands when so many in all have to be there.
/// @param supply  what it can be filled from, over all seasons
/// @param before  of this, what went out and what orders filled earlier want
[[nodiscard]] OrderOutlook orderOutlook(const OrderNeed& need, const CountSpread& supply,
                                        std::int32_t before);

/// Chances are sums of many: one that only rounding keeps below its mark is as good as it.
inline constexpr double kRounding = 1e-9;

/// Orders for queens, of those in `book`. Rules:
///
/// - An order keeps its place: what it lacks on its day stays owed and goes before orders due
///   later. So an order is whole on its day when the queens in hand by then, since the season
///   began, are as many as were delivered, as it still wants, and as all before it still want. That
///   chance is exact by convolution given the season and a mean over the seasons, for orders of any
///   line and rule. What is delivered wholly is met.
/// - Queens of a batch that are earmarked go to their order first, those of several orders in the
///   order of filling; what is not earmarked goes by that order. An order whose rest is earmarked
///   is whole too when each of its batches gives its part, whoever else is short. For orders of any
///   line and rule that is exact as well.
/// - An order of one line, or for proven queens, also needs as many of those as it and all orders
///   before it that take nothing else. Others are taken to be given other queens as long as there
///   are any, looking at the whole sum and not at who came first: a little hopeful. What is
///   earmarked for orders filled later is taken from the queens that fit and from the others both,
///   where a batch has both: a little cautious.
/// - A proven queen fills a mated order. A queen caught early waits in her nuc or the bank: "not
///   before" keeps back her delivery, not her. In parts or whole is all one for queens.
[[nodiscard]] std::vector<OrderOutlook> queenOrders(const OrderBook& book, const QueenStock& stock,
                                                    QueenSums& sums);
/// The same of bare orders: nothing delivered, nothing earmarked, whole on their due days.
[[nodiscard]] std::vector<OrderOutlook> queenOrders(std::span<const Ptr<Order>> orders,
                                                    const QueenStock& stock, QueenSums& sums);

}  // namespace tenthday
