#include "screen_text/joined_orders.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/order_text.h"
#include "screen_text/words.h"

namespace tenthday::order_text {

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

CardText joinedCard(const std::vector<const OrderOutlook*>& orders) {
    CardText card;
    card.title = joined(static_cast<int>(orders.size()));
    for (const auto* order : orders)
        card.lines.push_back({nameOf(*order->order), state(*order),
                              Words::tr("due %1").arg(weekdayAndDay(order->order->due)),
                              toneOf(*order)});
    card.lines.push_back({Words::tr("Each by itself: at its mast, or zoomed in."), {}, {}});
    return card;
}

}  // namespace tenthday::order_text
