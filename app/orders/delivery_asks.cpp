#include "orders/ask_parts.h"
#include "orders/order_asks.h"
#include "records/deliveries.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"

namespace tenthday {

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
    const auto& book = desk.snapshot();
    FieldsAsked asked;
    asked.head = order_page_text::replaceHead(plain(order.label));
    asked.saveWord = order_page_text::replaceWord();
    const auto deliveries = deliveriesOf(book, order.id);
    std::vector<FieldChoice> choices;
    for (const auto& delivery : deliveries) {
        const auto batch = delivery->fromBatch ? book.find(*delivery->fromBatch) : nullptr;
        const auto yard = delivery->yard ? book.find(*delivery->yard) : nullptr;
        choices.push_back(
            {order_page_text::deliveryChoice(*delivery, batch ? plain(batch->label) : QString(),
                                             yard ? plain(yard->label) : QString()),
             plain(toText(delivery->id.uuid))});
    }
    const auto find = [&desk](const QVariant& value) {
        return desk.snapshot().find(*idOf<Delivery>(value));
    };
    asked.fields = {{FieldKind::Choice, order_page_text::whichDelivery(), true, choices},
                    {FieldKind::Number, order_page_text::howManyFailed(), true},
                    {FieldKind::Choice, order_page_text::whyFailed(), false,
                     choicesOf<DeliveryLoss>(order_page_text::loss, 1)}};
    const auto last = deliveries.empty() ? nullptr : deliveries.back();
    asked.values = {
        last ? QVariant(choices.back().value) : QVariant(),
        last && last->failed > 0 ? last->failed : 1,
        static_cast<int>(last && last->failed > 0 ? last->why : DeliveryLoss::DeadOnArrival)};
    asked.follow = [find](FieldValues& values, std::size_t field) {
        if (field != 0) return;
        const auto delivery = find(values[0]);
        if (!delivery || delivery->failed == 0) return;
        values[1] = delivery->failed;
        values[2] = static_cast<int>(delivery->why);
    };
    asked.hint = [find](const FieldValues& values, std::size_t field) {
        const auto delivery = field == 1 ? find(values[0]) : nullptr;
        return delivery ? Hint{order_page_text::ofDelivered(delivery->count), {}, false} : Hint{};
    };
    asked.save = [&desk, find, label = plain(order.label), keep](const FieldValues& v) {
        const int failed = v[1].toInt();
        const auto why = failed == 0 ? DeliveryLoss::None : chosen<DeliveryLoss>(v[2]);
        return keep(named(replaceQueens(desk.snapshot(), find(v[0])->id, failed, why),
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

FieldsAsked askBought(const Desk& desk, const QueenLot& lot, bool isNew, KeepChanges keep) {
    const auto& book = desk.snapshot();
    FieldsAsked asked;
    asked.head = isNew ? order_page_text::newBoughtHead() : order_page_text::changeBoughtHead();
    asked.saveWord = order_page_text::save();
    const auto line = lot.line ? book.find(*lot.line) : nullptr;
    asked.fields = {{FieldKind::Number, order_page_text::howMany(), true, {}, 1},
                    {FieldKind::Date, order_page_text::inHandFrom(), true},
                    {FieldKind::Text, order_page_text::field(static_cast<int>(OrderField::Line)),
                     false, linesOf(book)},
                    {FieldKind::Choice,
                     order_page_text::brood(),
                     false,
                     {{order_page_text::notProven(), false}, {order_page_text::proven(), true}}},
                    {FieldKind::Text, order_page_text::note()}};
    asked.values = {lot.count, fromDay(lot.day), line ? plain(line->label) : QString(), lot.proven,
                    plain(lot.note)};
    asked.save = [&desk, lot, isNew, keep](const FieldValues& v) {
        auto row = lot;
        row.count = v[0].toInt();
        row.day = *toDay(v[1]);
        row.proven = v[3].toBool();
        row.note = toStdText(v[4]);
        return keep(named(keepBought(desk.snapshot(), row, toStdText(v[2]), freshIds()),
                          isNew ? Verb::AddRow : Verb::EditRow,
                          order_page_text::boughtName(row.count)));
    };
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
