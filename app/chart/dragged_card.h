/// @file dragged_card.h  What is told beside the pointer while something is dragged.
#pragma once
#include "chart/chart_wish.h"
#include "screen_text/chart_cards.h"

namespace tenthday {

/// The first batch's new days and what they do to its cells day; above them what the wish changes
/// beside days.
[[nodiscard]] CardText draggedCard(const Outlook& saved, const Outlook& preview,
                                   const ChartWish& wish);

}  // namespace tenthday
