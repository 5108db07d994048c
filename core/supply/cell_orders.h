/// @file cell_orders.h  Orders for ripe cells and virgins: they keep for a day and for a week.
#pragma once
#include <span>
#include <vector>

#include "supply/cells_gone.h"
#include "supply/order_states.h"

namespace tenthday {

struct CellOrders {
    std::vector<OrderOutlook> orders;  ///< in the order of filling
    std::vector<TakenCells> taken;     ///< by part
};

/// Orders for ripe cells and virgins, of those in `book`, and what they take from the queens to
/// come. What went out is gone from its batch for good, whatever became of its order. A ripe cell
/// serves on the day it leaves the builder, a virgin up to kVirginServes after the likely day of
/// her emergence. Delivery is on the due day or, where one is given, on any day from the first
/// allowed; with ship days only on days on which the order can go. An order that may not be
/// delivered in parts has all its cells on one such day, the likeliest; its virgins all alive on
/// the due day.
///
/// The chance is exact by convolution over the batches that serve: they must give what the order
/// and all before it want that the same cells could serve. Cells known by record (sold, caged) are
/// all that is left of a batch whose cells are in nucs. Weather has no part in it.
[[nodiscard]] CellOrders cellOrders(const OrderBook& book, std::span<const RaisedPart> parts);
/// The same of bare orders.
[[nodiscard]] CellOrders cellOrders(std::span<const Ptr<Order>> orders,
                                    std::span<const RaisedPart> parts);

}  // namespace tenthday
