#include "screen_text/order_text.h"

#include <QStringList>
#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/joined_orders.h"
#include "screen_text/queen_source_text.h"
#include "screen_text/words.h"

namespace tenthday::order_text {

QString kind(OrderKind kind) {
    switch (kind) {
        case OrderKind::RipeCell:
            return Words::tr("ripe cells");
        case OrderKind::Virgin:
            return Words::tr("virgins");
        case OrderKind::Mated:
            return Words::tr("mated queens");
        case OrderKind::Proven:
            return Words::tr("proven queens");
        case OrderKind::Own:
            return Words::tr("own needs");
    }
    return {};
}

QString purpose(OrderPurpose purpose) {
    switch (purpose) {
        case OrderPurpose::None:
            return {};
        case OrderPurpose::Split:
            return Words::tr("splits");
        case OrderPurpose::Requeen:
            return Words::tr("requeening");
        case OrderPurpose::Winter:
            return Words::tr("winter");
        case OrderPurpose::Reserve:
            return Words::tr("reserve");
    }
    return {};
}

QString what(OrderKind kind, OrderPurpose purpose) {
    const auto name = order_text::kind(kind);
    if (kind != OrderKind::Own || purpose == OrderPurpose::None) return name;
    return Words::tr("own: %1").arg(order_text::purpose(purpose));
}

QString standing(OrderStanding standing) {
    switch (standing) {
        case OrderStanding::Open:
            return Words::tr("open");
        case OrderStanding::Waiting:
            return Words::tr("waiting list");
        case OrderStanding::Cancelled:
            return Words::tr("cancelled");
    }
    return {};
}

QString chance(double chance) {
    const auto whole = static_cast<int>(std::lround(chance * 100));
    const bool certain = chance > 1 - 1e-9;
    if (whole >= 100 && !certain) return Words::tr("over 99 %");
    if (whole <= 0 && chance > 1e-9) return Words::tr("under 1 %");
    return Words::tr("%1 %").arg(chart_text::number(whole));
}

QString state(const OrderOutlook& order) {
    if (order.rest == 0) return Words::tr("delivered");
    switch (order.state) {
        case OrderState::Met:
            return Words::tr("met");
        case OrderState::AtRisk:
            return Words::tr("%1 sure").arg(chance(order.chance));
        case OrderState::Short:
            return Words::tr("%Ln short", nullptr, order.lacking);
    }
    return {};
}

QString flag(const Order& order, const QString& label) {
    const auto count = chart_text::number(order.count);
    if (order.kind == OrderKind::RipeCell) return Words::tr("%1 cells %2").arg(count, label);
    if (order.kind == OrderKind::Virgin) return Words::tr("%1 virgins %2").arg(count, label);
    return Words::tr("%1 %2").arg(count, label);
}

QString briefly(const Order& order) { return chart_text::number(order.count); }

QString queensLane() { return Words::tr("Queens"); }
QString inHandRange() { return Words::tr("in hand, 10 to 90 %"); }
QString about() { return Words::tr("in hand, about"); }
QString reckoning() { return Words::tr("being reckoned"); }
QString promiseLane() { return Words::tr("Can promise in all"); }
QString promiseHow() { return Words::tr("now to Sunday, 90 % sure"); }
QString weekIsOver() { return Words::tr("past"); }
QString noPromiseYet(const Outlook& outlook) {
    return outlook.mating ? Words::tr("not worked out yet")
                          : Words::tr("not worked out: the weather is not known");
}

namespace {

/// What a mean over seasons is counted from.
QString countedOver(const Outlook& outlook) {
    const auto seasons = outlook.mating ? outlook.mating->seasons() : nullptr;
    if (!seasons) return Words::tr("losses by your own rates, weather as it is known");
    return Words::tr("losses by your own rates, weather of %Ln past year(s)", nullptr,
                     static_cast<int>(seasons->years().size()));
}

void addFills(const Outlook& outlook, const OrderOutlook& order, CardText& card) {
    for (const auto& fill : order.fills) {
        const auto* batch = outlook.find(fill.batch);
        if (fill.count < 0.05) continue;
        card.lines.push_back(
            {batch ? Words::tr("from batch %1").arg(QString::fromStdString(batch->batch->label))
             : fill.batch.isNone() ? boughtIn()
                                   : earlierSeason(),
             chart_text::expected(fill.count), Words::tr("expected, after what comes before it")});
    }
}

}  // namespace

CardText queensCard(const Outlook& outlook, const SeasonOrders& orders, Day day) {
    if (!orders.days.contains(day)) return {};
    const auto at = static_cast<std::size_t>((day - orders.days.first).count());
    const auto& queens = orders.inHand[at];
    CardText card;
    card.title = Words::tr("Queens in hand, %1").arg(weekdayAndDay(day));
    card.lines.push_back({Words::tr("likely"), chart_text::number(queens.likely),
                          Words::tr("half of all outcomes give as many or fewer")});
    card.lines.push_back(
        {Words::tr("10 to 90 %"),
         Words::tr("%1 to %2").arg(chart_text::number(queens.low), chart_text::number(queens.high)),
         countedOver(outlook)});
    card.lines.push_back({Words::tr("gone to orders by then"), chart_text::number(orders.owed[at]),
                          Words::tr("all that is due by this day; taken off before")});
    return card;
}

CardText orderCard(const Outlook& outlook, const OrderOutlook& order) {
    const auto& row = *order.order;
    CardText card;
    card.title = nameOf(row);
    card.lines.push_back({Words::tr("due"), weekdayAndDay(row.due),
                          order.days && order.days->go != row.due
                              ? Words::tr("goes %1").arg(weekdayAndDay(order.days->go))
                              : QString()});
    if (order.delivered > 0)
        card.lines.push_back({Words::tr("delivered"), chart_text::number(order.delivered),
                              Words::tr("%1 still owed").arg(chart_text::number(order.rest))});
    if (order.rest == 0) return card;
    const auto tone = toneOf(order);
    card.lines.push_back(
        {Words::tr("chance that it is whole then"), chance(order.chance),
         isForQueens(row.kind)
             ? Words::tr("%Ln queen(s) owed by then, its own among them", nullptr, order.owedDue)
             : Words::tr("from the batches whose cells serve on its days"),
         tone});
    if (order.lacking > 0)
        card.lines.push_back({Words::tr("short by"), chart_text::number(order.lacking),
                              Words::tr("to be %1 sure").arg(chance(row.sure.value / 1000.0)),
                              tone});
    addFills(outlook, order, card);
    card.lines.push_back({countedOver(outlook), {}, {}});
    return card;
}

namespace {

CardText cardOfWeek(const IsoWeek& week) {
    CardText card;
    card.title = Words::tr("Week %1, until %2")
                     .arg(chart_text::number(week.week), weekdayAndDay(daysOf(week).last));
    return card;
}

}  // namespace

CardText promiseCard(const Outlook& outlook, const PromiseWeek& week) {
    auto card = cardOfWeek(week.week);
    if (daysOf(week.week).last < outlook.snapshot.today())
        card.lines.push_back({Words::tr("this week is over"), {}, {}});
    card.lines.push_back({Words::tr("can be promised"), chart_text::number(week.canPromise),
                          Words::tr("in all, not for each week: the least that is left at its "
                                    "end or on a later due day")});
    card.lines.push_back({Words::tr("queens ready"), chart_text::number(week.ready),
                          Words::tr("or more by then, 90 % sure, since the season began")});
    card.lines.push_back(
        {Words::tr("owed"), chart_text::number(week.owed), Words::tr("to orders due by then")});
    return card;
}

CardText noPromiseCard(const Outlook& outlook, Day day) {
    auto card = cardOfWeek(isoWeekOf(day));
    card.lines.push_back({noPromiseYet(outlook),
                          {},
                          outlook.mating ? Words::tr("orders and queens are being reckoned")
                                         : Words::tr("set its source on the page of weather")});
    return card;
}

}  // namespace tenthday::order_text
