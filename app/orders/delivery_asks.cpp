#include "orders/ask_parts.h"
#include "orders/order_asks.h"
#include "records/deliveries.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"

namespace tenthday {
namespace {

constexpr int kNeverWent = -1;  ///< beside the reasons: the delivery was entered by mistake

std::vector<FieldChoice> deliveryChoices(const Snapshot& book,
                                         const std::vector<Ptr<Delivery>>& deliveries) {
    std::vector<FieldChoice> choices;
    for (const auto& delivery : deliveries) {
        const auto batch = delivery->fromBatch ? book.find(*delivery->fromBatch) : nullptr;
        const auto yard = delivery->yard ? book.find(*delivery->yard) : nullptr;
        choices.push_back(
            {order_page_text::deliveryChoice(*delivery, batch ? plain(batch->label) : QString(),
                                             yard ? plain(yard->label) : QString()),
             plain(toText(delivery->id.uuid))});
    }
    return choices;
}

Ptr<Delivery> deliveryAt(const Desk& desk, const QVariant& value) {
    const auto id = idOf<Delivery>(value);
    return id ? desk.snapshot().find(*id) : nullptr;
}

/// What is recorded of a delivery already.
void putFailed(const Ptr<Delivery>& delivery, FieldValues& values) {
    if (!delivery || delivery->failed == 0) return;
    values[1] = delivery->failed;
    values[2] = static_cast<int>(delivery->why);
}

Ptr<QueenLot> lotAt(const Desk& desk, const QVariant& value) {
    const auto id = idOf<QueenLot>(value);
    return id ? desk.snapshot().find(*id) : nullptr;
}

FieldValues boughtValues(const Snapshot& book, const QueenLot& lot, const QVariant& which) {
    const auto line = lot.line ? book.find(*lot.line) : nullptr;
    return {which,      lot.count,      fromDay(lot.day), line ? plain(line->label) : QString(),
            lot.proven, plain(lot.note)};
}

/// Queens bought in as entered: new, changed, or taken away where there are none of them.
Result<ChangeSet> boughtEdit(const Desk& desk, const FieldValues& values) {
    const auto lot = lotAt(desk, values[0]);
    const int count = values[1].toInt();
    if (lot && count == 0)
        return named(deleteBought(desk.snapshot(), lot->id), Verb::DeleteRow,
                     order_page_text::boughtName(lot->count));
    QueenLot row = lot ? *lot : QueenLot{};
    if (!lot) row.id = newId<QueenLot>();
    row.count = count;
    row.day = *toDay(values[2]);
    row.proven = values[4].toBool();
    row.note = toStdText(values[5]);
    return named(keepBought(desk.snapshot(), row, toStdText(values[3]), freshIds()),
                 lot ? Verb::EditRow : Verb::AddRow, order_page_text::boughtName(count));
}

}  // namespace

FieldsAsked askDelivery(const Desk& desk, const Order& order, const std::vector<Id<Batch>>& likely,
                        KeepChanges keep) {
    const auto outlook = desk.outlook();
    const auto& book = desk.snapshot();
    const auto rest = deliveredOf(book, order.id).restOf(order);
    FieldsAsked asked;
    asked.head = order_page_text::deliverHead(plain(order.label), rest);
    asked.saveWord = order_page_text::deliverWord();
    auto batches = batchChoices(*outlook, likely);
    batches.insert(batches.begin(), {order_page_text::severalBatches(), QString()});
    std::vector<FieldChoice> yards{{order_page_text::yardNotNamed(), QString()}};
    for (const auto& yard : book.all<Yard>())
        yards.push_back({plain(yard->label), plain(toText(yard->id.uuid))});
    const auto first = likely.empty() ? QVariant(QString()) : batches[1].value;
    asked.fields = {{FieldKind::Number, order_page_text::howMany(), true, {}, 1, std::max(rest, 1)},
                    {FieldKind::Date, order_page_text::onDay(), true},
                    {FieldKind::Choice, order_page_text::ofBatch(), false, batches},
                    {FieldKind::Choice, order_page_text::matedAt(), false, yards},
                    {FieldKind::Text, order_page_text::note()}};
    asked.values = {rest, fromDay(book.today()), first, QString(), QString()};
    asked.hint = [](const FieldValues&, std::size_t field) {
        return field == 2 ? Hint{order_page_text::whyBatch(), {}, false} : Hint{};
    };
    asked.save = [&desk, id = order.id, label = plain(order.label), keep](const FieldValues& v) {
        DeliveryWords words{
            id, *toDay(v[1]), v[0].toInt(), idOf<Batch>(v[2]), idOf<Yard>(v[3]), toStdText(v[4])};
        return keep(named(deliver(desk.snapshot(), words, newId<Delivery>()), Verb::RecordOutcome,
                          order_page_text::deliveryName(words.count, label)));
    };
    return asked;
}

FieldsAsked askReplacement(const Desk& desk, const Order& order, KeepChanges keep) {
    const auto deliveries = deliveriesOf(desk.snapshot(), order.id);
    const auto choices = deliveryChoices(desk.snapshot(), deliveries);
    const auto find = [&desk](const QVariant& value) { return deliveryAt(desk, value); };
    FieldsAsked asked;
    asked.head = order_page_text::replaceHead(plain(order.label));
    auto reasons = choicesOf<DeliveryLoss>(order_page_text::loss, 1);
    reasons.push_back({order_page_text::neverWent(), kNeverWent});
    asked.saveWord = order_page_text::replaceWord();
    asked.fields = {{FieldKind::Choice, order_page_text::whichDelivery(), true, choices},
                    {FieldKind::Number, order_page_text::howManyFailed(), true},
                    {FieldKind::Choice, order_page_text::whyFailed(), false, reasons}};
    asked.values = {choices.empty() ? QVariant() : choices.back().value, 1,
                    static_cast<int>(DeliveryLoss::DeadOnArrival)};
    asked.follow = [find](FieldValues& values, std::size_t field) {
        if (field == 0) putFailed(find(values[0]), values);
    };
    if (!deliveries.empty()) putFailed(deliveries.back(), asked.values);
    asked.hint = [find](const FieldValues& values, std::size_t field) {
        const auto delivery = field == 1 ? find(values[0]) : nullptr;
        return delivery ? Hint{order_page_text::ofDelivered(delivery->count), {}, false} : Hint{};
    };
    asked.save = [&desk, find, label = plain(order.label), keep](const FieldValues& v) {
        const auto delivery = find(v[0]);
        if (delivery && v[2].toInt() == kNeverWent)
            return keep(named(deleteDelivery(desk.snapshot(), delivery->id), Verb::DeleteRow,
                              order_page_text::deliveryName(delivery->count, label)));
        const int failed = v[1].toInt();
        const auto why = failed == 0 ? DeliveryLoss::None : chosen<DeliveryLoss>(v[2]);
        return keep(named(
            replaceQueens(desk.snapshot(), delivery ? delivery->id : Id<Delivery>{}, failed, why),
            Verb::RecordOutcome, order_page_text::replacementName(failed, label)));
    };
    return asked;
}

FieldsAsked askEarmark(const Desk& desk, const Order& order, const std::vector<Id<Batch>>& likely,
                       KeepChanges keep) {
    const auto outlook = desk.outlook();
    const auto& book = desk.snapshot();
    const auto marked = [&desk, id = order.id](const QVariant& batch) {
        for (const auto& row : desk.snapshot().all<Earmark>().of(id.uuid))
            if (row->batch == idOf<Batch>(batch)) return row->count;
        return 0;
    };
    FieldsAsked asked;
    asked.head = order_page_text::earmarkHead(plain(order.label));
    asked.saveWord = order_page_text::earmarkWord();
    const auto batches = batchChoices(*outlook, likely);
    asked.fields = {{FieldKind::Choice, order_page_text::ofBatch(), true, batches},
                    {FieldKind::Number, order_page_text::howMany(), true}};
    const auto first = batches.empty() ? QVariant() : batches.front().value;
    const auto rest = deliveredOf(book, order.id).restOf(order);
    asked.values = {first, marked(first) > 0 ? marked(first) : rest};
    asked.follow = [marked](FieldValues& values, std::size_t field) {
        if (field == 0) values[1] = marked(values[0]);
    };
    asked.hint = [](const FieldValues&, std::size_t field) {
        return field == 1 ? Hint{order_page_text::earmarkHint(), {}, false} : Hint{};
    };
    asked.save = [&desk, id = order.id, label = plain(order.label), keep](const FieldValues& v) {
        const auto batch = idOf<Batch>(v[0]);
        const auto row = batch ? desk.snapshot().find(*batch) : nullptr;
        return keep(named(earmark(desk.snapshot(), id, batch.value_or(Id<Batch>{}), v[1].toInt(),
                                  newId<Earmark>()),
                          Verb::RecordOutcome,
                          order_page_text::earmarkName(
                              v[1].toInt(), row ? plain(row->label) : QString(), label)));
    };
    return asked;
}

FieldsAsked askBought(const Desk& desk, KeepChanges keep) {
    const auto& book = desk.snapshot();
    FieldsAsked asked;
    asked.head = order_page_text::boughtHead();
    asked.saveWord = order_page_text::save();
    std::vector<FieldChoice> lots{{order_page_text::newBought(), QString()}};
    for (const auto& lot : book.all<QueenLot>())
        lots.push_back({order_page_text::boughtChoice(*lot), plain(toText(lot->id.uuid))});
    asked.fields = {{FieldKind::Choice, order_page_text::whichBought(), false, lots},
                    {FieldKind::Number, order_page_text::howMany(), true},
                    {FieldKind::Date, order_page_text::inHandFrom(), true},
                    {FieldKind::Text, order_page_text::lineField(), false, linesOf(book)},
                    {FieldKind::Choice,
                     order_page_text::brood(),
                     false,
                     {{order_page_text::notProven(), false}, {order_page_text::proven(), true}}},
                    {FieldKind::Text, order_page_text::note()}};
    QueenLot fresh;
    fresh.day = book.today();
    asked.values = boughtValues(book, fresh, QString());
    asked.fits = [lots](const FieldValues&, std::size_t field) {
        return field != 0 || lots.size() > 1;
    };
    asked.follow = [&desk, fresh](FieldValues& values, std::size_t field) {
        if (field != 0) return;
        const auto lot = lotAt(desk, values[0]);
        values = boughtValues(desk.snapshot(), lot ? *lot : fresh, values[0]);
    };
    asked.hint = [&desk](const FieldValues& values, std::size_t field) {
        return field == 1 && lotAt(desk, values[0])
                   ? Hint{order_page_text::zeroTakesAway(), {}, false}
                   : Hint{};
    };
    asked.save = [&desk, keep](const FieldValues& v) { return keep(boughtEdit(desk, v)); };
    return asked;
}

FieldsAsked askLeaveOut(const Desk& desk, Id<Batch> batch, KeepChanges keep) {
    const auto& book = desk.snapshot();
    const auto row = book.find(batch);
    const auto label = row ? plain(row->label) : QString();
    std::string reason;
    for (const auto& each : book.all<LeftOut>())
        if (each->batch == batch) reason = each->reason;
    FieldsAsked asked;
    asked.head = order_page_text::leaveOutHead(label);
    asked.saveWord = order_page_text::leaveOutWord();
    asked.fields = {{FieldKind::Text, order_page_text::reason(), true}};
    asked.values = {plain(reason)};
    asked.hint = [](const FieldValues&, std::size_t) {
        return Hint{order_page_text::leaveOutHint(), {}, false};
    };
    asked.save = [&desk, batch, label, keep](const FieldValues& v) {
        return keep(named(leaveOut(desk.snapshot(), batch, toStdText(v[0]), newId<LeftOut>()),
                          Verb::RecordOutcome, order_page_text::leftOutName(label)));
    };
    return asked;
}

}  // namespace tenthday
