/// @file sample_orders.h  Orders of the sample outlook, put together by hand: they stay as they are
/// when the rules in core change.
#pragma once
#include "outlook/season_orders.h"

namespace tenthday {

/// Five orders: met, delivered, in doubt, short, and cells; queens in hand from mid June on; 13 can
/// be promised in the last week but one.
[[nodiscard]] SeasonOrdersPtr sampleOrders();

}  // namespace tenthday
