/// @file ready_total.h  The card of the ready nucs of all yards together.
#pragma once
#include "screen_text/chart_cards.h"

namespace tenthday::ready_total {

/// All yards, then each by itself, on a day of the season.
[[nodiscard]] CardText card(const Outlook& outlook, Day day);

}  // namespace tenthday::ready_total
