/// @file cells_gone.h  Ripe cells and virgins that were delivered, by the batch they came out of.
/// Inner to the room.
#pragma once
#include <span>
#include <vector>

#include "supply/order_needs.h"
#include "supply/queen_stock.h"

namespace tenthday {

/// Days after her emergence for which a virgin serves (about a week: common practice).
inline constexpr Days kVirginServes{7};

/// By part: what went out of it and never comes back, whatever becomes of the order. A delivery
/// that names a batch is of its parts, those of the order's line first; one that names none is of
/// the parts that could serve on its day (a ripe cell that was written down late: of the last cells
/// day in the week before). From elsewhere came what no part could give.
[[nodiscard]] std::vector<TakenCells> cellsGoneOf(std::span<const CellsGone> gone,
                                                  std::span<const RaisedPart> parts);

}  // namespace tenthday
