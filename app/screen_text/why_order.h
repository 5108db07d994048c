/// @file why_order.h  How an order stands, and why: chance, batches, days, what went out, cautions.
#pragma once
#include "screen_text/why_text.h"
#include "supply/order_states.h"

namespace tenthday::why_text {

/// @param standing  how an open order stands; null where it takes nothing
[[nodiscard]] std::vector<Link> order(const Outlook& outlook, const Order& order,
                                      const OrderOutlook* standing);

}  // namespace tenthday::why_text
