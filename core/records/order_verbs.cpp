#include "records/order_verbs.h"

#include "records/deliveries.h"
#include "records/earlier_outcomes.h"
#include "records/order_checks.h"
#include "records/order_days.h"
#include "records/task_marks.h"
#include "records/validity.h"

namespace tenthday {
namespace {

Error noOrder() { return Error{"order: there is none with this id"}; }
Error noBatch() { return Error{"batch: there is none with this id"}; }
Error refused(const std::string& label, const std::string& why) {
    return Error{label + ": " + why};
}

/// The line so called, made where there is none.
std::optional<Id<Line>> lineCalled(const Snapshot& snapshot, const std::string& label,
                                   const IdSource& newId, ChangeSet& changes) {
    if (label.empty()) return std::nullopt;
    if (const auto known = findByLabel<Line>(snapshot, label)) return known->id;
    const Line made{Id<Line>{newId()}, 1, label};
    changes.add(made);
    return made.id;
}

std::string lineLabel(const Snapshot& snapshot, const std::optional<Id<Line>>& line) {
    const auto row = line ? snapshot.find(*line) : nullptr;
    return row ? row->label : std::string();
}

/// Writes the terms, or takes the row away where they are those of an order without one.
void putTerms(const Snapshot& snapshot, OrderTerms terms, ChangeSet& changes) {
    const bool bare = isBare(terms);
    const auto rows = snapshot.all<OrderTerms>().of(terms.order.uuid);
    if (rows.empty()) {
        if (!bare) changes.add(std::move(terms));
    } else if (bare) {
        changes.erase(rows.front());
    } else {
        changes.edit(rows.front(), std::move(terms));
    }
}

/// What is meant for an order that takes nothing any more is free again.
void freeEarmarks(const Snapshot& snapshot, Id<Order> order, ChangeSet& changes) {
    for (const auto& earmark : snapshot.all<Earmark>().of(order.uuid)) changes.erase(earmark);
}

/// Why an edit of such a row cannot be, for all that stands beside it.
template <class Row>
Result<void> checkStands(const Snapshot& snapshot, const ChangeSet& changes, const Row& row,
                         const std::string& label) {
    const auto next = applied(snapshot, changes);
    if (!next) return next.error();
    if (const auto fault = faultOf(next.value(), row)) return refused(label, fault->why);
    return {};
}

void putOrder(const Snapshot& snapshot, const Order& order, ChangeSet& changes) {
    const auto before = snapshot.find(order.id);
    before ? changes.edit(before, order) : changes.add(order);
}

std::string trimmed(const std::string& text) {
    constexpr auto kBlanks = " \t\n\r";
    const auto first = text.find_first_not_of(kBlanks);
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(kBlanks) - first + 1);
}

/// A promise that stood and was moved is remembered.
void rememberMove(const Snapshot& snapshot, const OrderWords& words, const IdSource& newId,
                  ChangeSet& changes) {
    const auto before = snapshot.find(words.order.id);
    if (!before || before->due == words.order.due || words.standing != OrderStanding::Open) return;
    if (termsOf(snapshot, before->id).standing != OrderStanding::Open) return;
    changes.add(PromiseMove{Id<PromiseMove>{newId()}, 1, before->id, snapshot.today(), before->due,
                            words.order.due, trimmed(words.moveReason)});
}

}  // namespace

OrderWords wordsOf(const Snapshot& snapshot, Id<Order> id) {
    OrderWords words;
    const auto order = snapshot.find(id);
    if (!order) return words;
    const auto terms = termsOf(snapshot, id);
    words.order = *order;
    words.line = lineLabel(snapshot, order->line);
    words.standing = terms.standing;
    words.purpose = terms.purpose;
    words.shipDays = terms.shipDays;
    return words;
}

Result<ChangeSet> keepOrder(const Snapshot& snapshot, const OrderWords& words,
                            const IdSource& newId) {
    const auto before = snapshot.find(words.order.id);
    const auto namesake = findByLabel<Order>(snapshot, words.order.label);
    if (namesake && namesake->id != words.order.id)
        return refused(words.order.label, "there is an order of this name already");
    ChangeSet changes{
        before ? Verb::EditRow : Verb::AddRow, words.order.label, words.order.due, {}};
    Order order = words.order;
    order.line = lineCalled(snapshot, words.line, newId, changes);
    if (auto good = checkRow(order); !good) return good.error();
    putOrder(snapshot, order, changes);
    OrderTerms terms = termsOf(snapshot, order.id);
    if (terms.id.isNone()) terms.id = Id<OrderTerms>{newId()};
    terms.standing = words.standing;
    terms.purpose = words.purpose;
    terms.shipDays = words.shipDays;
    if (auto good = checkRow(terms); !good) return good.error();
    putTerms(snapshot, terms, changes);
    if (words.standing != OrderStanding::Open) freeEarmarks(snapshot, order.id, changes);
    rememberMove(snapshot, words, newId, changes);
    if (auto good = checkStands(snapshot, changes, order, order.label); !good) return good.error();
    return changes;
}

Result<ChangeSet> setStanding(const Snapshot& snapshot, Id<Order> id, OrderStanding standing,
                              Id<OrderTerms> fresh) {
    const auto order = snapshot.find(id);
    if (!order) return noOrder();
    ChangeSet changes{Verb::EditRow, order->label, order->due, {}};
    OrderTerms terms = termsOf(snapshot, id);
    if (terms.id.isNone()) terms.id = fresh;
    terms.standing = standing;
    putTerms(snapshot, terms, changes);
    if (standing != OrderStanding::Open) freeEarmarks(snapshot, id, changes);
    return changes;
}

Result<ChangeSet> deleteOrder(const Snapshot& snapshot, Id<Order> id) {
    const auto order = snapshot.find(id);
    if (!order) return noOrder();
    ChangeSet changes{Verb::DeleteRow, order->label, {}, {}};
    const auto eraseAll = [&](const auto& rows) {
        for (const auto& row : rows) changes.erase(row);
    };
    eraseAll(snapshot.all<OrderTerms>().of(id.uuid));
    eraseAll(snapshot.all<Earmark>().of(id.uuid));
    eraseAll(snapshot.all<Delivery>().of(id.uuid));
    eraseAll(snapshot.all<PromiseMove>().of(id.uuid));
    eraseTaskMarks(snapshot, id.uuid, changes);
    changes.erase(order);
    return changes;
}

namespace {

/// What goes out is no longer meant for the order but delivered.
void useEarmarks(const Snapshot& snapshot, const DeliveryWords& words, bool isWhole,
                 ChangeSet& changes) {
    for (const auto& earmark : snapshot.all<Earmark>().of(words.order.uuid)) {
        Earmark left = *earmark;
        if (words.batch == earmark->batch) left.count -= words.count;
        if (isWhole || left.count <= 0)
            changes.erase(earmark);
        else
            changes.edit(earmark, left);
    }
}

}  // namespace

Result<ChangeSet> deliver(const Snapshot& snapshot, const DeliveryWords& words,
                          Id<Delivery> fresh) {
    const auto order = snapshot.find(words.order);
    if (!order) return noOrder();
    const auto standing = termsOf(snapshot, order->id).standing;
    if (standing != OrderStanding::Open)
        return refused(order->label, standsAs(standing) + "; open it first");
    ChangeSet changes{Verb::AddRow, order->label, words.day, {}};
    const Delivery row{fresh,       1,          order->id, words.day,          words.count,
                       words.batch, words.yard, 0,         DeliveryLoss::None, words.note};
    if (auto good = checkRow(row); !good) return good.error();
    changes.add(row);
    const auto rest = deliveredOf(snapshot, order->id).restOf(*order);
    useEarmarks(snapshot, words, words.count == rest, changes);
    if (auto good = checkStands(snapshot, changes, row, order->label); !good) return good.error();
    return changes;
}

Result<ChangeSet> replaceQueens(const Snapshot& snapshot, Id<Delivery> id, std::int32_t failed,
                                DeliveryLoss why) {
    const auto delivery = snapshot.find(id);
    const auto order = delivery ? snapshot.find(delivery->order) : nullptr;
    if (!order) return Error{"delivery: there is none with this id"};
    if (failed < 0 || failed > delivery->count)
        return refused(order->label, std::to_string(delivery->count) + " went out that day");
    if (failed > 0 && why == DeliveryLoss::None)
        return refused(order->label, "why they have to be replaced is needed");
    ChangeSet changes{Verb::EditRow, order->label, delivery->day, {}};
    Delivery row = *delivery;
    row.failed = failed;
    row.why = failed == 0 ? DeliveryLoss::None : why;
    changes.edit(delivery, row);
    return changes;
}

Result<ChangeSet> deleteDelivery(const Snapshot& snapshot, Id<Delivery> id) {
    const auto delivery = snapshot.find(id);
    if (!delivery) return Error{"delivery: there is none with this id"};
    const auto order = snapshot.find(delivery->order);
    ChangeSet changes{Verb::DeleteRow, order ? order->label : std::string(), delivery->day, {}};
    changes.erase(delivery);
    return changes;
}

Result<ChangeSet> earmark(const Snapshot& snapshot, Id<Order> orderId, Id<Batch> batchId,
                          std::int32_t count, Id<Earmark> fresh) {
    const auto order = snapshot.find(orderId);
    const auto batch = snapshot.find(batchId);
    if (!order) return noOrder();
    if (!batch) return noBatch();
    Ptr<Earmark> before;
    for (const auto& row : snapshot.all<Earmark>().of(orderId.uuid))
        if (row->batch == batchId) before = row;
    ChangeSet changes{Verb::EditRow, order->label, {}, {}};
    if (count <= 0) {
        if (before) changes.erase(before);
        return changes;
    }
    Earmark row{fresh, 1, orderId, batchId, count};
    if (before) row.id = before->id;
    before ? changes.edit(before, row) : changes.add(row);
    if (auto good = checkStands(snapshot, changes, row, order->label); !good) return good.error();
    return changes;
}

Result<ChangeSet> keepBought(const Snapshot& snapshot, QueenLot lot, const std::string& line,
                             const IdSource& newId) {
    const auto before = snapshot.find(lot.id);
    ChangeSet changes{before ? Verb::EditRow : Verb::AddRow, line, lot.day, {}};
    lot.line = lineCalled(snapshot, line, newId, changes);
    if (auto good = checkRow(lot); !good) return good.error();
    before ? changes.edit(before, lot) : changes.add(lot);
    return changes;
}

Result<ChangeSet> deleteBought(const Snapshot& snapshot, Id<QueenLot> id) {
    const auto lot = snapshot.find(id);
    if (!lot) return Error{"queens bought in: there are none with this id"};
    ChangeSet changes{Verb::DeleteRow, lineLabel(snapshot, lot->line), lot->day, {}};
    changes.erase(lot);
    return changes;
}

namespace {

/// Of this or an earlier season; empty where there is none.
std::string labelOfBatch(const Snapshot& snapshot, Id<Batch> id) {
    if (const auto batch = snapshot.find(id)) return batch->label;
    if (const auto& earlier = snapshot.earlier())
        for (const auto& batch : earlier->batches)
            if (batch.batch == id) return batch.label;
    return {};
}

}  // namespace

Result<ChangeSet> leaveOut(const Snapshot& snapshot, Id<Batch> id, const std::string& reason,
                           Id<LeftOut> fresh) {
    const auto label = labelOfBatch(snapshot, id);
    if (label.empty()) return noBatch();
    const LeftOut row{fresh, 1, id, trimmed(reason)};
    if (row.reason.empty()) return refused("batch " + label, "why it is left out is needed");
    ChangeSet changes{Verb::EditRow, label, {}, {}};
    const auto rows = snapshot.all<LeftOut>().of(id.uuid);
    rows.empty() ? changes.add(row) : changes.edit(rows.front(), row);
    return changes;
}

Result<ChangeSet> takeIn(const Snapshot& snapshot, Id<Batch> id) {
    const auto label = labelOfBatch(snapshot, id);
    if (label.empty()) return noBatch();
    ChangeSet changes{Verb::EditRow, label, {}, {}};
    for (const auto& row : snapshot.all<LeftOut>().of(id.uuid)) changes.erase(row);
    return changes;
}

}  // namespace tenthday
