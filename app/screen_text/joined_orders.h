/// @file joined_orders.h  The card of several orders at one place of the chart.
#pragma once
#include <QStringList>
#include <vector>

#include "outlook/season_orders.h"
#include "screen_text/chart_cards.h"
#include "supply/order_states.h"

namespace tenthday::order_text {

/// "24 mated queens for K-07".
[[nodiscard]] QString nameOf(const Order& order);
[[nodiscard]] CardTone toneOf(const OrderOutlook& order);
/// "3 orders, 1 not met": an order at risk is not met.
[[nodiscard]] QString joinedBriefly(const std::vector<const OrderOutlook*>& orders);
/// Where one alone is not met, which and what it lacks: "K-04 14 short, 2 more orders met"; else
/// briefly.
[[nodiscard]] QString joinedName(const std::vector<const OrderOutlook*>& orders);
/// With names, from the longest to the shortest: of all, "5 K-05 and 8 Splits, all met" or
/// "17 K-04 14 short, 5 K-05 met"; then of those not met, and of the first, which is the worst:
/// "17 K-04 14 short, 1 more order not met, 5 more orders met".
[[nodiscard]] QStringList joinedWithNames(const std::vector<const OrderOutlook*>& orders);
/// How many orders a change leaves unmet, and how many there were. @param now  null: being reckoned
[[nodiscard]] CardLine unmetLine(const SeasonOrders& before, const SeasonOrders* now);
/// Each with its state and due day.
[[nodiscard]] CardText joinedCard(const std::vector<const OrderOutlook*>& orders);

}  // namespace tenthday::order_text
