#include "orders/order_asks.h"

#include <cmath>

#include "orders/ask_parts.h"
#include "records/order_days.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"

namespace tenthday {
namespace {

std::size_t at(OrderField field) { return static_cast<std::size_t>(field); }
std::vector<FieldChoice> weekdays() {
    std::vector<FieldChoice> days;
    for (int day = 1; day <= 7; ++day)
        days.push_back({order_page_text::weekday(day), QString::number(day)});
    return days;
}

QStringList ticked(const std::string& shipDays) {
    QStringList days;
    for (const char day : shipDays) days += QString(QLatin1Char(day));
    return days;
}

std::vector<Field> orderFields(const Snapshot& book) {
    using order_page_text::field;
    std::vector<Field> fields(kOrderFields);
    for (std::size_t i = 0; i < kOrderFields; ++i) fields[i].name = field(static_cast<int>(i));
    const auto set = [&](OrderField which, FieldKind kind, bool needed = false) -> Field& {
        fields[at(which)].kind = kind;
        fields[at(which)].needed = needed;
        return fields[at(which)];
    };
    set(OrderField::Label, FieldKind::Text, true);
    set(OrderField::Kind, FieldKind::Choice).choices = choicesOf<OrderKind>(order_text::kind);
    set(OrderField::Purpose, FieldKind::Choice).choices =
        choicesOf<OrderPurpose>(order_page_text::purposeChoice);
    auto& count = set(OrderField::Count, FieldKind::Number, true);
    count.low = 1;
    set(OrderField::Due, FieldKind::Date, true);
    set(OrderField::MoveReason, FieldKind::Text, true);
    set(OrderField::NotBefore, FieldKind::Date);
    auto& ship = set(OrderField::ShipDays, FieldKind::Checks);
    ship.choices = weekdays();
    ship.inRow = true;
    set(OrderField::Line, FieldKind::Text).choices = linesOf(book);
    set(OrderField::Part, FieldKind::Choice).choices = {{order_page_text::whole(), false},
                                                        {order_page_text::inParts(), true}};
    auto& sure = set(OrderField::Sure, FieldKind::Number, true);
    sure.low = 1;
    sure.high = 99;
    sure.unit = order_page_text::percentUnit();
    auto& weight = set(OrderField::Weight, FieldKind::Number, true);
    weight.high = 999;
    set(OrderField::Note, FieldKind::Note);
    return fields;
}

FieldValues orderValues(const OrderWords& words) {
    const auto& order = words.order;
    FieldValues values(kOrderFields);
    values[at(OrderField::Label)] = plain(order.label);
    values[at(OrderField::Kind)] = static_cast<int>(order.kind);
    values[at(OrderField::Purpose)] = static_cast<int>(words.purpose);
    values[at(OrderField::Count)] = order.count;
    values[at(OrderField::Due)] = fromDay(order.due);
    values[at(OrderField::MoveReason)] = plain(words.moveReason);
    values[at(OrderField::NotBefore)] = fromDay(order.notBefore);
    values[at(OrderField::ShipDays)] = ticked(words.shipDays);
    values[at(OrderField::Line)] = plain(words.line);
    values[at(OrderField::Part)] = order.partOk;
    values[at(OrderField::Sure)] = static_cast<int>(std::lround(order.sure.value / 10.0));
    values[at(OrderField::Weight)] = order.weight;
    values[at(OrderField::Note)] = plain(order.note);
    return values;
}

/// Whether the due day of an order that is there already is moved.
bool movesDue(const OrderWords& before, bool isNew, const FieldValues& values) {
    const auto due = toDay(values[at(OrderField::Due)]);
    return !isNew && before.standing == OrderStanding::Open && due && *due != before.order.due;
}

}  // namespace

OrderWords orderOf(const OrderWords& before, const FieldValues& values) {
    auto words = before;
    auto& order = words.order;
    const auto value = [&](OrderField field) -> const QVariant& { return values[at(field)]; };
    order.label = toStdText(value(OrderField::Label));
    order.kind = chosen<OrderKind>(value(OrderField::Kind));
    words.purpose = order.kind == OrderKind::Own ? chosen<OrderPurpose>(value(OrderField::Purpose))
                                                 : OrderPurpose::None;
    if (value(OrderField::Count).typeId() == QMetaType::Int)
        order.count = value(OrderField::Count).toInt();
    if (const auto due = toDay(value(OrderField::Due))) order.due = *due;
    words.moveReason = toStdText(value(OrderField::MoveReason));
    order.notBefore = toDay(value(OrderField::NotBefore));
    words.shipDays = value(OrderField::ShipDays).toStringList().join(QString()).toStdString();
    words.line = toStdText(value(OrderField::Line));
    order.partOk = value(OrderField::Part).toBool();
    // Tenths of a percent that came from a file stay while the whole percents do.
    const auto& sure = value(OrderField::Sure);
    if (sure.typeId() == QMetaType::Int &&
        sure.toInt() != static_cast<int>(std::lround(order.sure.value / 10.0)))
        order.sure = Tenths{sure.toInt() * 10};
    if (value(OrderField::Weight).typeId() == QMetaType::Int)
        order.weight = value(OrderField::Weight).toInt();
    order.note = toStdText(value(OrderField::Note));
    return words;
}

FieldsAsked askOrder(const Desk& desk, const OrderWords& words, bool isNew, bool askWeight,
                     KeepChanges keep) {
    FieldsAsked asked;
    asked.head =
        isNew ? order_page_text::newHead() : order_page_text::changeHead(plain(words.order.label));
    asked.saveWord = order_page_text::save();
    asked.fields = orderFields(desk.snapshot());
    asked.values = orderValues(words);
    const bool weighed = askWeight || words.order.weight != 1;
    asked.fits = [words, isNew, weighed](const FieldValues& values, std::size_t field) {
        const bool own = chosen<OrderKind>(values[at(OrderField::Kind)]) == OrderKind::Own;
        if (field == at(OrderField::Purpose)) return own;
        if (field == at(OrderField::MoveReason)) return movesDue(words, isNew, values);
        if (field == at(OrderField::Weight)) return weighed;
        return true;
    };
    asked.hint = [&desk, words](const FieldValues& values, std::size_t field) {
        const auto entered = orderOf(words, values);
        if (field == at(OrderField::Label)) return Hint{order_page_text::labelHint(), {}, false};
        if (field == at(OrderField::Line) && entered.line.empty())
            return Hint{order_page_text::anyLine(), {}, false};
        if (field == at(OrderField::ShipDays))
            return Hint{
                order_page_text::goes(orderDays(desk.snapshot(), entered.order, entered.shipDays),
                                      entered.order.kind),
                {},
                !orderDays(desk.snapshot(), entered.order, entered.shipDays)};
        return Hint{};
    };
    asked.save = [&desk, words, isNew, keep](const FieldValues& values) {
        const auto entered = orderOf(words, values);
        return keep(named(keepOrder(desk.snapshot(), entered, freshIds()),
                          isNew ? Verb::AddRow : Verb::EditRow,
                          order_page_text::orderName(plain(entered.order.label))));
    };
    return asked;
}

}  // namespace tenthday
