#include "screen_text/joined_orders.h"

#include <algorithm>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/words.h"

namespace tenthday::order_text {

namespace {

bool isUnmet(const OrderOutlook* order) { return order->state != OrderState::Met; }

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
    return Words::tr("%1, %2 %3")
        .arg(Words::tr("%Ln order(s)", nullptr, static_cast<int>(orders.size())),
             QString::fromStdString(order.order->label), state(order));
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
