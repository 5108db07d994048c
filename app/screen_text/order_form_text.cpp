#include <QStringList>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/words.h"

namespace tenthday::order_page_text {

QString newHead() { return Words::tr("New order"); }
QString changeHead(const QString& label) { return Words::tr("Change order %1").arg(label); }

QString field(int which) {
    switch (which) {
        case 0:
            return Words::tr("For &whom");
        case 1:
            return Words::tr("&What");
        case 2:
            return Words::tr("For wha&t");
        case 3:
            return Words::tr("&How many");
        case 4:
            return Words::tr("&Due");
        case 5:
            return Words::tr("Why it is &moved");
        case 6:
            return Words::tr("Not &before");
        case 7:
            return Words::tr("&Goes on");
        case 8:
            return Words::tr("&Line");
        case 9:
            return Words::tr("Deli&very");
        case 10:
            return Words::tr("How &sure");
        case 11:
            return Words::tr("&Importance");
        default:
            return Words::tr("&Note");
    }
}

QString purposeChoice(OrderPurpose purpose) {
    return purpose == OrderPurpose::None ? Words::tr("nothing in particular")
                                         : order_text::purpose(purpose);
}
QString whole() { return Words::tr("whole"); }
QString inParts() { return Words::tr("in parts as queens are there"); }
QString percentUnit() { return QStringLiteral("%"); }
QString save() { return Words::tr("&Keep"); }
QString labelHint() { return Words::tr("a code of your own, for example K-07"); }
QString anyLine() { return Words::tr("empty: any line"); }

QString goes(const std::optional<OrderDays>& days, OrderKind kind) {
    if (!days) return Words::tr("no day fits between not before and due: look at days off too");
    if (days->cage == days->go || !isForQueens(kind))
        return Words::tr("goes %1").arg(weekdayAndDay(days->go));
    return Words::tr("caged %1, goes %2").arg(weekdayAndDay(days->cage), weekdayAndDay(days->go));
}

namespace {

QString ruleName(std::size_t rule) {
    switch (static_cast<CatchRule>(rule)) {
        case CatchRule::Eggs:
            return Words::tr("eggs");
        case CatchRule::SealedBrood:
            return Words::tr("sealed brood");
        case CatchRule::Age:
            return Words::tr("age");
    }
    return {};
}

QString dayOrNone(std::optional<Day> day) {
    return day ? weekdayAndDay(*day) : Words::tr("not this season");
}

QString byRule(const DayByRule& days) {
    QStringList parts;
    for (std::size_t i = 0; i < days.size(); ++i)
        parts += Words::tr("%1 %2").arg(ruleName(i), dayOrNone(days[i]));
    return Words::tr("By catch rule: %1.").arg(parts.join(QStringLiteral(", ")));
}

}  // namespace

namespace {

/// How many grafts would do, batch by batch.
QString graftsOf(const GraftsWanted& grafts, const OrderWords& words) {
    if (!grafts.isEnough)
        return Words::tr("No number of grafts in the batches planned makes it %1 sure.")
            .arg(percent(words.order.sure));
    QStringList batches;
    for (const auto& batch : grafts.batches)
        batches +=
            Words::tr("%1 in batch %2")
                .arg(chart_text::number(batch.needed), QString::fromStdString(batch.batch->label));
    return Words::tr("Grafts that would do: %1 instead of %2 (%3).")
        .arg(chart_text::number(grafts.needed()), chart_text::number(grafts.planned()),
             batches.join(Words::tr(", ")));
}

}  // namespace

QString prospect(const OrderWords& words, const OrderProspect& prospect) {
    QStringList lines;
    if (prospect.outlook)
        lines += Words::tr("Chance that it is whole on its day: %1 (%2).")
                     .arg(order_text::chance(prospect.outlook->chance),
                          order_text::state(*prospect.outlook));
    else if (words.standing == OrderStanding::Open)
        lines += Words::tr("Its due day lies outside this season.");
    if (prospect.outlook && prospect.outlook->rest == 0) return lines.join(u'\n');
    lines += Words::tr("First day on which it can be whole, %1 sure: %2.")
                 .arg(percent(words.order.sure), dayOrNone(prospect.first));
    if (isForQueens(words.order.kind)) lines += byRule(prospect.byRule);
    if (prospect.grafts) lines += graftsOf(*prospect.grafts, words);
    if (prospect.harmed > 0)
        lines += Words::tr("%Ln order(s) that is/are met now would no longer be.", nullptr,
                           prospect.harmed);
    return lines.join(u'\n');
}

QString reckoning() { return Words::tr("Being reckoned ..."); }
QString cannotBe(const QString& why) { return Words::tr("It cannot be kept so: %1").arg(why); }

QString howMany() { return Words::tr("&How many"); }
QString onDay() { return Words::tr("&Day"); }
QString ofBatch() { return Words::tr("Of &batch"); }
QString matedAt() { return Words::tr("Mated &at"); }
QString note() { return Words::tr("&Note"); }
QString deliverHead(const QString& label, int rest) {
    return Words::tr("Deliver order %1: %2 still owed").arg(label, chart_text::number(rest));
}
QString deliverWord() { return Words::tr("&Deliver"); }
QString severalBatches() { return Words::tr("several, or not known"); }
QString yardNotNamed() { return Words::tr("not named"); }
QString whyBatch() {
    return Words::tr("named, so that a failed queen can be traced to batch and yard");
}
QString batchChoice(const QString& label, Day caught) {
    return Words::tr("%1, caught from %2").arg(label, weekdayAndDay(caught));
}
QString replaceHead(const QString& label) {
    return Words::tr("Replace queens of order %1").arg(label);
}
QString replaceWord() { return Words::tr("&Owe them again"); }
QString whichDelivery() { return Words::tr("Of the &delivery"); }
QString deliveryChoice(const Delivery& delivery, const QString& batch, const QString& yard) {
    auto text =
        Words::tr("%1 on %2").arg(chart_text::number(delivery.count), weekdayAndDay(delivery.day));
    if (!batch.isEmpty()) text = Words::tr("%1, batch %2").arg(text, batch);
    return yard.isEmpty() ? text : Words::tr("%1, mated at %2").arg(text, yard);
}
QString howManyFailed() { return Words::tr("&How many failed"); }
QString ofDelivered(int count) {
    return Words::tr("of %1 delivered; 0 takes it back").arg(chart_text::number(count));
}
QString whyFailed() { return Words::tr("&Why"); }
QString earmarkHead(const QString& label) {
    return Words::tr("Queens meant for order %1").arg(label);
}
QString earmarkWord() { return Words::tr("&Keep"); }
QString earmarkHint() {
    return Words::tr("0: none of it; what is not meant by hand is given by due day");
}
QString boughtHead() { return Words::tr("Mated queens bought in"); }
QString whichBought() { return Words::tr("&Which"); }
QString newBought() { return Words::tr("new ones"); }
QString boughtChoice(const QueenLot& lot) {
    return Words::tr("%1 from %2").arg(chart_text::number(lot.count), weekdayAndDay(lot.day));
}
QString zeroTakesAway() { return Words::tr("0 takes them away"); }
QString lineField() { return Words::tr("&Line"); }
QString inHandFrom() { return Words::tr("In hand &from"); }
QString brood() { return Words::tr("B&rood"); }
QString proven() { return Words::tr("brood seen: proven"); }
QString notProven() { return Words::tr("mated, brood not seen"); }
QString leaveOutHead(const QString& batch) {
    return Words::tr("Leave batch %1 out of the rates").arg(batch);
}
QString leaveOutWord() { return Words::tr("&Leave out"); }
QString leaveOutHint() {
    return Words::tr("what was odd about it, for example: builder was robbed");
}
QString reason() { return Words::tr("&Reason"); }

}  // namespace tenthday::order_page_text
