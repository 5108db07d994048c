/// @file card_for.h  From a place on the chart to what its card says.
#pragma once
#include "chart/chart_item.h"
#include "outlook/season_orders.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

/// Empty where there is nothing to say. @param orders  as the lanes show them, or null
[[nodiscard]] CardText cardFor(const Outlook& outlook, const TargetKey& key,
                               const SeasonOrders* orders = nullptr);
/// The same of what lies at a place of a layout: of orders that share it, all.
[[nodiscard]] CardText cardFor(const Outlook& outlook, const Layout& layout, const Target& target,
                               const SeasonOrders* orders);

}  // namespace tenthday
