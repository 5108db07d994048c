/// @file order_asks.h  What the dialogs of orders ask for, and what becomes of the answers. The
/// desk must outlive each.
#pragma once
#include "desk/desk.h"
#include "records/order_verbs.h"
#include "setup/fields_dialog.h"

namespace tenthday {

/// Fields of an order, in the order of the dialog.
enum class OrderField : std::uint8_t {
    Label,
    Kind,
    Purpose,
    Count,
    Due,
    MoveReason,
    NotBefore,
    ShipDays,
    Line,
    Part,
    Sure,
    Weight,
    Note,
};
inline constexpr std::size_t kOrderFields = static_cast<std::size_t>(OrderField::Note) + 1;

/// Fields in which a value was entered, back as words. Values that are no order are left as they
/// were in `before`.
[[nodiscard]] OrderWords orderOf(const OrderWords& before, const FieldValues& values);

/// Empty when done, else why not.
using KeepChanges = std::function<QString(const Result<ChangeSet>&)>;

/// Asks for a new order or another content of one. @param askWeight  importance counts now
[[nodiscard]] FieldsAsked askOrder(const Desk& desk, const OrderWords& words, bool isNew,
                                   bool askWeight, KeepChanges keep);

/// Asks what goes out; the batches are those of the season, the one expected to fill it first.
[[nodiscard]] FieldsAsked askDelivery(const Desk& desk, const Order& order,
                                      const std::vector<Id<Batch>>& likely, KeepChanges keep);

/// Asks which of an order's deliveries failed, how many and why.
[[nodiscard]] FieldsAsked askReplacement(const Desk& desk, const Order& order, KeepChanges keep);

/// Asks how many queens of which batch are meant for an order.
[[nodiscard]] FieldsAsked askEarmark(const Desk& desk, const Order& order,
                                     const std::vector<Id<Batch>>& likely, KeepChanges keep);

/// Asks for queens bought in: new ones, or another content of some that are there; none of them
/// takes them away.
[[nodiscard]] FieldsAsked askBought(const Desk& desk, KeepChanges keep);

/// Asks why a batch is odd and left out of the rates.
[[nodiscard]] FieldsAsked askLeaveOut(const Desk& desk, Id<Batch> batch, KeepChanges keep);

}  // namespace tenthday
