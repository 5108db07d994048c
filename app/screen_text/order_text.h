/// @file order_text.h  The words orders have everywhere: what for, how they stand; their lanes.
#pragma once
#include <QString>

#include "outlook/season_orders.h"
#include "screen_text/chart_cards.h"

namespace tenthday::order_text {

/// "mated queens".
[[nodiscard]] QString kind(OrderKind kind);
/// "splits"; empty for none.
[[nodiscard]] QString purpose(OrderPurpose purpose);
/// The kind, with what own needs are for: "own: splits".
[[nodiscard]] QString what(OrderKind kind, OrderPurpose purpose);
/// "open", "waiting list", "cancelled".
[[nodiscard]] QString standing(OrderStanding standing);
/// "met", "71 % sure", "9 short".
[[nodiscard]] QString state(const OrderOutlook& order);
/// A chance of an order in whole percent, never 100 while anything can go wrong.
[[nodiscard]] QString chance(double chance);
/// "60 K-07"; cells and virgins say so.
[[nodiscard]] QString flag(const Order& order, const QString& label);
/// The count alone.
[[nodiscard]] QString briefly(const Order& order);

// The lanes of the chart.
[[nodiscard]] QString queensLane();
[[nodiscard]] QString inHandRange();
/// While a batch is dragged: what is shown is of the season as it was.
[[nodiscard]] QString about();
[[nodiscard]] QString reckoning();
[[nodiscard]] QString promiseLane();
[[nodiscard]] QString promiseHow();
/// In a week that is over.
[[nodiscard]] QString weekIsOver();
/// In place of the numbers while there are none: "not worked out yet", or what is lacking.
[[nodiscard]] QString noPromiseYet(const Outlook& outlook);

// Cards beside the pointer: each number with how it came.
[[nodiscard]] CardText queensCard(const Outlook& outlook, const SeasonOrders& orders, Day day);
[[nodiscard]] CardText orderCard(const Outlook& outlook, const OrderOutlook& order);
[[nodiscard]] CardText promiseCard(const Outlook& outlook, const PromiseWeek& week);
/// Of a week whose number is not worked out: why.
[[nodiscard]] CardText noPromiseCard(const Outlook& outlook, Day day);

}  // namespace tenthday::order_text
