#include "screen_text/joined_orders.h"

#include <algorithm>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/lists.h"
#include "screen_text/order_text.h"
#include "screen_text/words.h"

namespace tenthday::order_text {

namespace {

bool isUnmet(const OrderOutlook* order) { return order->state != OrderState::Met; }

QString moreMet(const QString& names, int more) {
    return Words::tr("%1, %Ln more order(s) met", nullptr, more).arg(names);
}

int countUnmet(const SeasonOrders& orders) {
    return static_cast<int>(std::count_if(orders.orders.begin(), orders.orders.end(),
                                          [](const auto& order) { return isUnmet(&order); }));
}

}  // namespace

QString nameOf(const Order& order) {
    return Words::tr("%1 %2 for %3")
        .arg(chart_text::number(order.count), kind(order.kind),
             QString::fromStdString(order.label));
}

CardTone toneOf(const OrderOutlook& order) {
    return order.state == OrderState::Met      ? CardTone::Plain
           : order.state == OrderState::AtRisk ? CardTone::Caution
                                               : CardTone::Danger;
}

QString joinedBriefly(const std::vector<const OrderOutlook*>& orders) {
    const auto all = Words::tr("%Ln order(s)", nullptr, static_cast<int>(orders.size()));
    const auto unmet = std::count_if(orders.begin(), orders.end(), isUnmet);
    return unmet == 0
               ? Words::tr("%1, all met").arg(all)
               : Words::tr("%1, %2 not met").arg(all, chart_text::number(static_cast<int>(unmet)));
}

QString joinedName(const std::vector<const OrderOutlook*>& orders) {
    if (std::count_if(orders.begin(), orders.end(), isUnmet) != 1) return joinedBriefly(orders);
    const auto& order = **std::find_if(orders.begin(), orders.end(), isUnmet);
    const int more = static_cast<int>(orders.size()) - 1;
    const auto name =
        Words::tr("%1 %2").arg(QString::fromStdString(order.order->label), state(order));
    return moreMet(name, more);
}

namespace {

QString flagOf(const OrderOutlook& order) {
    return flag(*order.order, QString::fromStdString(order.order->label));
}

/// "17 K-04 14 short": as its own flag says it.
QString withState(const OrderOutlook& order) {
    return Words::tr("%1 %2").arg(flagOf(order), state(order));
}

}  // namespace

QStringList joinedWithNames(const std::vector<const OrderOutlook*>& orders) {
    if (orders.size() < 2) return {};
    const auto& first = *orders.front();
    const int more = static_cast<int>(orders.size()) - 1;
    const auto unmet = std::count_if(orders.begin(), orders.end(), isUnmet);
    QStringList all;
    for (const auto* order : orders) all.push_back(unmet == 0 ? flagOf(*order) : withState(*order));
    if (unmet == 0)
        return {Words::tr("%1, all met").arg(listed(all)),
                Words::tr("%1, all met").arg(listedWithMore({flagOf(first)}, more))};
    const auto met = static_cast<int>(orders.size() - unmet);
    const auto withMet = [&](const QString& names) {
        return met == 0 ? names : moreMet(names, met);
    };
    const auto beside = QStringLiteral(", ");
    QStringList names{all.join(beside), withMet(all.mid(0, unmet).join(beside))};
    if (unmet > 1) {
        const auto one =
            Words::tr("%1, %Ln more order(s) not met", nullptr, static_cast<int>(unmet) - 1)
                .arg(withState(first));
        names += {withMet(one), one};
    }
    names.removeDuplicates();
    return names;
}

CardLine unmetLine(const SeasonOrders& before, const SeasonOrders* now) {
    const auto name = Words::tr("orders not met");
    const int was = countUnmet(before);
    if (now == nullptr) return {name, reckoning(), {}};
    const int are = countUnmet(*now);
    return {name, chart_text::number(are),
            was == are ? Words::tr("as many as before") : Words::tr("%1 before").arg(was),
            are > was ? CardTone::Caution : CardTone::Plain};
}

CardText joinedCard(const std::vector<const OrderOutlook*>& orders) {
    CardText card;
    card.title = joinedName(orders);
    for (const auto* order : orders)
        card.lines.push_back({nameOf(*order->order), state(*order),
                              Words::tr("due %1").arg(weekdayAndDay(order->order->due)),
                              toneOf(*order)});
    card.lines.push_back({Words::tr("Each by itself: at its mast, or zoomed in."), {}, {}});
    return card;
}

}  // namespace tenthday::order_text
