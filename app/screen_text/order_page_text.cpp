#include "screen_text/order_page_text.h"

#include <QLocale>
#include <QStringList>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/queen_source_text.h"
#include "screen_text/words.h"

namespace tenthday::order_page_text {

QString pageEntry() { return Words::tr("Or&ders"); }
QString head() { return Words::tr("Orders"); }

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("For");
        case 1:
            return Words::tr("What");
        case 2:
            return Words::tr("Count");
        case 3:
            return Words::tr("Delivered");
        case 4:
            return Words::tr("State");
        case 5:
            return Words::tr("Due");
        case 6:
            return Words::tr("Goes");
        case 7:
            return Words::tr("Caged");
        case 8:
            return Words::tr("Line");
        case 9:
            return Words::tr("How sure");
        case 10:
            return Words::tr("Importance");
        default:
            return Words::tr("Filled by");
    }
}

QString because(const Outlook& /*outlook*/, const std::string& note, int column) {
    QStringList lines;
    if (column == 4)
        lines += Words::tr(
            "Met: as sure as it must be. In doubt: less sure, but likelier whole than not. Short: "
            "so many are missing to be as sure as it must be.");
    if (column == 6)
        lines += Words::tr("The last of its weekdays, on or before the due day, that is free.");
    if (column == 10)
        lines += Words::tr("Of orders due on one day the more important one is filled first.");
    if (column == 11) lines += Words::tr("What is expected of each batch, in queens or cells.");
    if (!note.empty()) lines += QString::fromStdString(note);
    return lines.join(u'\n');
}

QString totals(const PromiseWeek* thisWeek, const PromiseWeek* next) {
    if (thisWeek == nullptr)
        return Words::tr("Today lies outside the season: nothing is reckoned for this week.");
    const auto until = weekdayAndDay(daysOf(thisWeek->week).last);
    auto text =
        Words::tr("Ready by %1: %2 queens, 90 % sure. Owed by then: %3. Can promise: %4 this week")
            .arg(until, chart_text::number(thisWeek->ready), chart_text::number(thisWeek->owed),
                 chart_text::number(thisWeek->canPromise));
    if (next != nullptr)
        text = Words::tr("%1, %2 the next").arg(text, chart_text::number(next->canPromise));
    return Words::tr("%1.").arg(text);
}

QString counts(int met, int doubt, int isShort, int waiting) {
    QStringList parts;
    const auto add = [&](int count, const QString& word) {
        if (count > 0) parts += Words::tr("%1 %2").arg(chart_text::number(count), word);
    };
    add(met, Words::tr("met"));
    add(doubt, Words::tr("in doubt"));
    add(isShort, Words::tr("short"));
    add(waiting, Words::tr("on the waiting list"));
    return parts.join(QStringLiteral(", "));
}

QString noOrders() {
    return Words::tr(
        "No orders yet in this season.\n\nEnter the first with Insert, or copy lines from a "
        "spreadsheet and press Ctrl+V. What you need for yourself is entered the same way, as own "
        "needs.\n\nThen this page says which orders will be whole on their day, how sure that is, "
        "and what more you can promise.");
}
QString noneOfThese() {
    return Words::tr("No orders of this kind. The filter above shows others.");
}
QString chooseOrder() { return Words::tr("Choose an order to see why it stands so."); }

QString filter(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("Open orders");
        case 1:
            return Words::tr("Waiting list");
        case 2:
            return Words::tr("Cancelled");
        default:
            return Words::tr("All orders");
    }
}

QString find() { return Words::tr("Find an order"); }
QString newOrder() { return Words::tr("&New order ..."); }
QString paste() { return Words::tr("&Paste ..."); }
QString pasteHead() { return Words::tr("Orders from a spreadsheet"); }
QString takeIn(int lines) { return Words::tr("&Take in %Ln order(s)", nullptr, lines); }
QString bought() { return Words::tr("&Bought in ..."); }
QString whatIf() { return Words::tr("What &if ..."); }
QString losses() { return Words::tr("Losse&s ..."); }
QString change() { return Words::tr("Cha&nge ..."); }
QString deliver() { return Words::tr("&Deliver ..."); }
QString replace() { return Words::tr("&Replace ..."); }
QString earmark() { return Words::tr("Ear&mark a batch ..."); }
QString waitingList(OrderStanding now) {
    return now == OrderStanding::Waiting ? Words::tr("Off the &waiting list")
                                         : Words::tr("Onto the &waiting list");
}
QString cancel(OrderStanding now) {
    return now == OrderStanding::Cancelled ? Words::tr("Open a&gain") : Words::tr("&Cancel it");
}
QString remove() { return Words::tr("De&lete"); }
QString removeSure(const QString& label) {
    return Words::tr(
               "Delete order %1 with its deliveries? An order that is off is better cancelled.")
        .arg(label);
}
QString nothingToReplace() {
    return Words::tr("Nothing was delivered for this order yet that could be replaced.");
}
QString notOpen() {
    return Words::tr("This order is not open: take it off the waiting list or open it again.");
}

QString state(OrderStanding standing, const OrderOutlook* outlook, std::optional<Day> earliest,
              bool isOld) {
    if (standing == OrderStanding::Cancelled) return order_text::standing(standing);
    if (standing == OrderStanding::Waiting) {
        if (earliest) return Words::tr("waiting: from %1").arg(shortDay(*earliest));
        return isOld ? Words::tr("waiting: being reckoned") : Words::tr("waiting: no day yet");
    }
    if (outlook == nullptr) return order_text::reckoning();
    const auto state = order_text::state(*outlook);
    return isOld && outlook->rest > 0 ? Words::tr("%1, about").arg(state) : state;
}

QString fill(const QString& from, double count) {
    const auto number = chart_text::expected(count);
    return from.isEmpty() ? Words::tr("%1: %2").arg(order_text::boughtIn(), number)
                          : Words::tr("%1: %2").arg(from, number);
}

QString percent(Tenths sure) {
    return Words::tr("%1 %").arg(chart_text::expected(sure.value / 10.0));
}
QString any() { return Words::tr("any"); }
QString noDayToGo(const std::optional<OrderOutlook>& outlook) {
    return outlook && outlook->rest > 0 ? Words::tr("no day fits") : QString();
}
QString weekday(int isoDay) { return QLocale().standaloneDayName(isoDay, QLocale::ShortFormat); }
QString weekdays(const QString& shipDays) {
    if (shipDays.isEmpty()) return Words::tr("any day");
    QStringList names;
    for (const auto day : shipDays) names += weekday(day.digitValue());
    return names.join(QStringLiteral(", "));
}

QString standingField() { return Words::tr("Open or not"); }

QString loss(DeliveryLoss why) {
    switch (why) {
        case DeliveryLoss::None:
            return {};
        case DeliveryLoss::DeadOnArrival:
            return Words::tr("dead on arrival");
        case DeliveryLoss::DroneLayer:
            return Words::tr("drone layer");
        case DeliveryLoss::NotAccepted:
            return Words::tr("not accepted");
        case DeliveryLoss::Other:
            return Words::tr("other");
    }
    return {};
}

QString neverWent() { return Words::tr("entered by mistake: take the delivery back"); }

QString orderName(const QString& label) { return Words::tr("order %1").arg(label); }
QString deliveryName(int count, const QString& label) {
    return Words::tr("delivery of %1 for %2").arg(chart_text::number(count), label);
}
QString replacementName(int count, const QString& label) {
    return count == 0 ? Words::tr("that none of %1 has to be replaced").arg(label)
                      : Words::tr("%1 to replace for %2").arg(chart_text::number(count), label);
}
QString earmarkName(int count, const QString& batch, const QString& label) {
    return count == 0 ? Words::tr("that none of batch %1 is meant for %2").arg(batch, label)
                      : Words::tr("%1 of batch %2 meant for %3")
                            .arg(chart_text::number(count), batch, label);
}
QString standingName(OrderStanding standing, const QString& label) {
    switch (standing) {
        case OrderStanding::Open:
            return Words::tr("order %1 as open").arg(label);
        case OrderStanding::Waiting:
            return Words::tr("order %1 on the waiting list").arg(label);
        case OrderStanding::Cancelled:
            return Words::tr("order %1 as cancelled").arg(label);
    }
    return {};
}
QString boughtName(int count) { return Words::tr("%Ln queen(s) bought in", nullptr, count); }
QString leftOutName(const QString& batch) {
    return Words::tr("batch %1 left out of the rates").arg(batch);
}
QString takenInName(const QString& batch) {
    return Words::tr("batch %1 counted in the rates").arg(batch);
}

}  // namespace tenthday::order_page_text
