/// @file order_cloth.h  The cloth of an order's flag: how the order stands, by shape and colour.
#pragma once
#include "chart/sheet.h"
#include "outlook/season_orders.h"

namespace tenthday {

/// Of its mast, its word and the arrow of the day it leaves.
[[nodiscard]] Role roleOf(OrderState state);

/// Full where the order is met, its edge alone where it is in doubt, cut where it is short.
/// @param left  it flies to the left
void layCloth(Layer layer, OrderState state, const QRectF& cloth, bool left, Sheet& sheet,
              int target = -1);

}  // namespace tenthday
