/// @file order_verbs.h  Edits of orders: what is promised, meant for whom, delivered, replaced; of
/// queens bought in; and of batches that do not speak for the rates of losses.
///
/// A refusal is one line that begins with the label of the order or batch. Checks that need only
/// the row itself (validity.h) are made when an edit is applied.
#pragma once
#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// An order as it is entered.
struct OrderWords {
    Order order;       ///< its id: a new one, or that of the order that is changed
    std::string line;  ///< by its label, a new line where there is none so called; empty: any
    OrderStanding standing = OrderStanding::Open;
    OrderPurpose purpose = OrderPurpose::None;
    std::string shipDays;    ///< as in OrderTerms
    std::string moveReason;  ///< why the due day was moved; may be empty
};

/// An order of the book as it would be entered; bare words where there is none with this id.
[[nodiscard]] OrderWords wordsOf(const Snapshot& snapshot, Id<Order> order);

/// A new order, or another content of one, with its terms, in one edit. A due day of an open order
/// that moves is written down as a PromiseMove of today. Empty when nothing changes. Refused where
/// more is delivered or earmarked than would be ordered, where a purpose is given to an order that
/// is not for oneself, and where the label is taken.
[[nodiscard]] Result<ChangeSet> keepOrder(const Snapshot& snapshot, const OrderWords& words,
                                          const IdSource& newId);

/// Opens an order, puts it on the waiting list or cancels it. Earmarks of one that is no longer
/// open go along; its deliveries stay. Empty when nothing changes.
/// @param fresh  id of its terms, should they be a new row
[[nodiscard]] Result<ChangeSet> setStanding(const Snapshot& snapshot, Id<Order> order,
                                            OrderStanding standing, Id<OrderTerms> fresh);

/// Deletes an order with all that hangs on it: terms, earmarks, deliveries, moved days, ticks.
[[nodiscard]] Result<ChangeSet> deleteOrder(const Snapshot& snapshot, Id<Order> order);

/// What goes out for an order.
struct DeliveryWords {
    Id<Order> order;
    Day day;
    std::int32_t count = 1;
    std::optional<Id<Batch>> batch;  ///< the queens are of it; of several or unknown: empty
    std::optional<Id<Yard>> yard;    ///< where they mated
    std::string note;
};

/// Earmarks of that batch are used up by it, all of them once the order is delivered. Refused where
/// the order is not open, the day is ahead of today, or more goes out than is owed.
[[nodiscard]] Result<ChangeSet> deliver(const Snapshot& snapshot, const DeliveryWords& words,
                                        Id<Delivery> fresh);

/// So many of a delivery failed and are owed again; 0 takes that back. Refused where that is more
/// than went out, or no reason is given.
[[nodiscard]] Result<ChangeSet> replaceQueens(const Snapshot& snapshot, Id<Delivery> delivery,
                                              std::int32_t failed, DeliveryLoss why);

[[nodiscard]] Result<ChangeSet> deleteDelivery(const Snapshot& snapshot, Id<Delivery> delivery);

/// Means so many queens of a batch, of those still owed, for an order; 0 takes the earmark away.
/// Empty when nothing changes. Refused for cells and virgins (they are of the batch of their day),
/// for an order that is not open, for more than is owed or than the batch has grafts, and where the
/// batch has no bar of the line that is wanted.
/// @param fresh  id of the row, should it be a new one
[[nodiscard]] Result<ChangeSet> earmark(const Snapshot& snapshot, Id<Order> order, Id<Batch> batch,
                                        std::int32_t count, Id<Earmark> fresh);

/// Keeps queens bought in: a new row, or another content of the one with its id.
/// @param line  by its label, a new line where there is none so called; empty: none
[[nodiscard]] Result<ChangeSet> keepBought(const Snapshot& snapshot, QueenLot lot,
                                           const std::string& line, const IdSource& newId);
[[nodiscard]] Result<ChangeSet> deleteBought(const Snapshot& snapshot, Id<QueenLot> lot);

/// Leaves an odd batch of this or an earlier season out of the rates of losses, for a reason, or
/// changes the reason. Refused without one. @param fresh  id of the row, should it be a new one
[[nodiscard]] Result<ChangeSet> leaveOut(const Snapshot& snapshot, Id<Batch> batch,
                                         const std::string& reason, Id<LeftOut> fresh);
/// Takes it in again. Empty when it is not left out.
[[nodiscard]] Result<ChangeSet> takeIn(const Snapshot& snapshot, Id<Batch> batch);

}  // namespace tenthday
