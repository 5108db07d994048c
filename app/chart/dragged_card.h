/// @file dragged_card.h  What is told beside the pointer while something is dragged.
#pragma once
#include "chart/chart_wish.h"
#include "outlook/season_orders.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

/// The first batch's new days and what they do to its cells day; above them what the wish changes
/// beside days.
/// @param before  orders of the season as saved; null: not reckoned, or no matter
/// @param now     those of the preview; null: not reckoned yet
[[nodiscard]] CardText draggedCard(const Outlook& saved, const Outlook& preview,
                                   const ChartWish& wish, const SeasonOrders* before = nullptr,
                                   const SeasonOrders* now = nullptr);

}  // namespace tenthday
