#include "screen_text/why_order.h"

#include <QLocale>
#include <algorithm>

#include "facts/sources.h"
#include "outlook/sky.h"
#include "records/deliveries.h"
#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_page_text.h"
#include "screen_text/order_text.h"
#include "screen_text/queen_source_text.h"
#include "screen_text/words.h"

namespace tenthday::why_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

Input reckoned(const QString& name, const QString& value) {
    return {name, value, Words::tr("reckoned"), {}};
}

QString labelOf(const Outlook& outlook, Id<Batch> id) {
    if (id.isNone()) return order_text::boughtIn();
    const auto batch = outlook.snapshot.find(id);
    return batch ? Words::tr("batch %1").arg(plain(batch->label)) : order_text::earlierSeason();
}

void addFacts(const Outlook& outlook, Link& link, std::initializer_list<Fact> facts) {
    for (const auto fact : facts) link.inputs.push_back(number(outlook.snapshot.facts(), fact));
}

Link chanceOf(const Outlook& outlook, const Order& order, const OrderOutlook& standing) {
    Link link{Words::tr("Chance that it is whole"),
              order_text::chance(standing.chance),
              isForQueens(order.kind)
                  ? Words::tr("The queens in hand by then, since the season began, must be as many "
                              "as were delivered, as it still wants and as all orders before it "
                              "still want. Batches add under the weather of one season; the "
                              "chance is the mean over all possible seasons.")
                  : Words::tr("The batches whose cells serve on its days must give what it and all "
                              "orders before it want."),
              {}};
    link.inputs.push_back(reckoned(Words::tr("Whole on"), weekdayAndDay(standing.wholeOn)));
    link.inputs.push_back(
        reckoned(Words::tr("Owed by then"), chart_text::number(standing.owedDue)));
    link.inputs.push_back(
        setByYou(Words::tr("How sure it must be"), order_page_text::percent(order.sure)));
    if (standing.lacking > 0)
        link.inputs.push_back(
            reckoned(Words::tr("Short by, to be so sure"), chart_text::number(standing.lacking)));
    addFacts(outlook, link, {Fact::Accepted, Fact::Sealed, Fact::Emerged});
    if (isForQueens(order.kind)) addFacts(outlook, link, {Fact::Mated, Fact::JudgedGood});
    return link;
}

Link filledBy(const Outlook& outlook, const OrderOutlook& standing) {
    Link link{Words::tr("Filled by"),
              {},
              Words::tr("What is expected of each batch once earlier orders have theirs; what is "
                        "meant for it by hand comes first."),
              {}};
    for (const auto& fill : standing.fills)
        if (fill.count >= 0.05)
            link.inputs.push_back(
                reckoned(labelOf(outlook, fill.batch), chart_text::expected(fill.count)));
    for (const auto& row : outlook.snapshot.all<Earmark>().of(standing.order->id.uuid))
        link.inputs.push_back(
            setByYou(Words::tr("Meant by hand, %1").arg(labelOf(outlook, row->batch)),
                     chart_text::number(row->count)));
    return link;
}

Link daysOf(const Outlook& outlook, const Order& order) {
    const auto& book = outlook.snapshot;
    const auto terms = termsOf(book, order.id);
    const auto days = orderDays(book, order);
    Link link{Words::tr("Goes"),
              days ? weekdayAndDay(days->go) : Words::tr("no day fits"),
              Words::tr("The last of its weekdays on or before the due day that is no day off and "
                        "has none the day after. Queens are caged the day before, those for "
                        "oneself on the day itself."),
              {}};
    link.inputs.push_back(setByYou(Words::tr("Due"), weekdayAndDay(order.due)));
    if (order.notBefore)
        link.inputs.push_back(setByYou(Words::tr("Not before"), weekdayAndDay(*order.notBefore)));
    link.inputs.push_back(
        setByYou(Words::tr("Goes on"), order_page_text::weekdays(plain(terms.shipDays))));
    if (days && days->cage != days->go)
        link.inputs.push_back(reckoned(Words::tr("Caged"), weekdayAndDay(days->cage)));
    for (const auto& move : book.all<PromiseMove>().of(order.id.uuid))
        link.inputs.push_back(
            {Words::tr("Due day moved on %1").arg(weekdayAndDay(move->day)),
             Words::tr("%1 to %2")
                 .arg(weekdayAndDay(move->dueBefore), weekdayAndDay(move->dueAfter)),
             plain(move->reason),
             {}});
    return link;
}

Link deliveredOf(const Outlook& outlook, const Order& order) {
    const auto& book = outlook.snapshot;
    const auto sum = tenthday::deliveredOf(book, order.id);
    Link link{
        Words::tr("Delivered"),
        Words::tr("%1 of %2").arg(chart_text::number(sum.good()), chart_text::number(order.count)),
        Words::tr("Queens that have to be replaced are owed again."),
        {}};
    for (const auto& row : deliveriesOf(book, order.id)) {
        const auto yard = row->yard ? book.find(*row->yard) : nullptr;
        QStringList from;
        if (row->fromBatch) from += labelOf(outlook, *row->fromBatch);
        if (yard) from += Words::tr("mated at %1").arg(plain(yard->label));
        if (!row->note.empty()) from += plain(row->note);
        auto value = chart_text::number(row->count);
        if (row->failed > 0)
            value =
                Words::tr("%1, of these %2 to replace: %3")
                    .arg(value, chart_text::number(row->failed), order_page_text::loss(row->why));
        link.inputs.push_back(
            {weekdayAndDay(row->day),
             value,
             from.isEmpty() ? Words::tr("recorded") : from.join(QStringLiteral(", ")),
             {}});
    }
    return link;
}

/// The days on which queens are on the way, with what is known of their weather.
Link onTheWay(const Outlook& outlook, const OrderDays& days) {
    const auto& facts = outlook.snapshot.facts();
    Link link{Words::tr("On the way"),
              weekdayAndDay(days.go),
              Words::tr("Keep caged queens out of the sun and of frost, and never in a parked car: "
                        "cold and heat can kill half of a queen's sperm, and nothing shows it."),
              {}};
    addFacts(outlook, link, {Fact::ShipMinC, Fact::ShipMaxC, Fact::SpermMinC, Fact::SpermMaxC});
    for (const auto& row : outlook.snapshot.all<WeatherDay>()) {
        if (row->date < days.cage || row->date > days.go + Days{1} || !row->tmaxC) continue;
        const double high = row->tmaxC->value / 10.0;
        const double low = row->tminC ? row->tminC->value / 10.0 : high;
        const bool bad = low < facts[Fact::ShipMinC] || high > facts[Fact::ShipMaxC];
        link.inputs.push_back(
            {weekdayAndDay(row->date),
             Words::tr("%1 to %2 °C")
                 .arg(QLocale().toString(low, 'f', 1), QLocale().toString(high, 'f', 1)),
             bad ? Words::tr("outside what queens should have: wait, or pack for it")
                 : Words::tr("as recorded or forecast"),
             {}});
    }
    return link;
}

Link inTheBank(const Outlook& outlook, const Order& order, const OrderOutlook& standing) {
    const auto& facts = outlook.snapshot.facts();
    const auto spans = static_cast<std::int32_t>(facts[Fact::BankDaysD]);
    Link link{Words::tr("Waiting in a bank"),
              {},
              Words::tr("Queens caught before they go wait caged in a queenless colony with young "
                        "bees and feed. Survival falls with the days."),
              {}};
    addFacts(outlook, link, {Fact::BankQueens, Fact::BankDaysD});
    const Day first = standing.wholeOn - Days{spans};
    link.inputs.push_back(reckoned(Words::tr("Not caught for it before"), weekdayAndDay(first)));
    if (order.count > facts[Fact::BankQueens])
        link.inputs.push_back(reckoned(
            Words::tr("Bank colonies wanted"),
            chart_text::number(static_cast<int>((order.count + facts[Fact::BankQueens] - 1) /
                                                facts[Fact::BankQueens]))));
    return link;
}

Link selling() {
    QStringList sources;
    for (const auto& line : sourceLines("S102")) sources += plain(line);
    return {Words::tr("Selling"),
            {},
            Words::tr("Selling queens or moving colonies can need an inspection or a certificate; "
                      "rules differ by country and state."),
            {{Words::tr("Before the first goes"), Words::tr("ask the local bee inspector"),
              Words::tr("local rules"), sources}}};
}

}  // namespace

std::vector<Link> order(const Outlook& outlook, const Order& order, const OrderOutlook* standing) {
    std::vector<Link> links;
    if (standing != nullptr && standing->rest > 0) {
        links.push_back(chanceOf(outlook, order, *standing));
        links.push_back(filledBy(outlook, *standing));
    }
    links.push_back(daysOf(outlook, order));
    if (!outlook.snapshot.all<Delivery>().of(order.id.uuid).empty())
        links.push_back(deliveredOf(outlook, order));
    const bool stays = order.kind == OrderKind::Own;
    const bool isOpen = standing != nullptr && standing->rest > 0;
    if (isOpen && standing->days && !stays && order.kind != OrderKind::RipeCell)
        links.push_back(onTheWay(outlook, *standing->days));
    if (isOpen && isForQueens(order.kind)) links.push_back(inTheBank(outlook, order, *standing));
    if (!stays) links.push_back(selling());
    return links;
}

}  // namespace tenthday::why_text
