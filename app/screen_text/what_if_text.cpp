#include "screen_text/what_if_text.h"

#include <algorithm>
#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/order_text.h"
#include "screen_text/words.h"

namespace tenthday::what_if_text {

QString head() { return Words::tr("What if"); }
QString cold() { return Words::tr("&Cold week, no flying"); }
QString builderLost() { return Words::tr("A &builder is lost"); }
QString robbed() { return Words::tr("&Nucs are robbed out"); }
QString takeLow() { return Words::tr("Poor &take"); }
QString from() { return Words::tr("from"); }
QString until() { return Words::tr("until"); }
QString whichBuilder() { return Words::tr("Builder that is lost"); }
QString whichYard() { return Words::tr("Yard that is robbed"); }
QString anyYard() { return Words::tr("any yard"); }
QString howManyNucs() { return Words::tr("Nucs robbed out"); }
QString share() { return Words::tr("Share of grafts that are started"); }
QString nothingKept() {
    return Words::tr(
        "Nothing here is kept. Ticks can be joined; of nucs the least harmful go first: empty "
        "ones, then cells, virgins, laying queens. A poor take counts for bars not counted yet.");
}
QString reckoning() { return Words::tr("Being reckoned ..."); }
QString cannotBe(const QString& why) { return Words::tr("This cannot be asked: %1").arg(why); }
QStringList columnHeads() {
    return {Words::tr("Order"), Words::tr("Due"), Words::tr("As planned"), Words::tr("Then")};
}

QString order(const Order& order) {
    return Words::tr("%1 %2 for %3")
        .arg(chart_text::number(order.count), order_text::kind(order.kind),
             QString::fromStdString(order.label));
}

QString state(const OrderOutlook& order) {
    const auto word = order_text::state(order);
    if (order.rest == 0 || order.state == OrderState::AtRisk) return word;
    return Words::tr("%1, %2").arg(word, order_text::chance(order.chance));
}

QString stateAfter(const OrderOutlook& before, const OrderOutlook& after) {
    if (std::abs(before.chance - after.chance) < 0.005 && before.lacking == after.lacking)
        return Words::tr("the same");
    return after.chance < before.chance ? Words::tr("▼ %1").arg(state(after))
                                        : Words::tr("▲ %1").arg(state(after));
}

QString summary(const WhatIfAnswer& answer, bool isNothing) {
    if (isNothing) return Words::tr("Tick what goes wrong.");
    const auto met = [](const OrderOutlook& order) { return order.state == OrderState::Met; };
    const auto lost =
        std::count_if(answer.orders.begin(), answer.orders.end(),
                      [&](const auto& each) { return met(each.before) && !met(each.after); });
    const auto queens = [](double count) {
        return chart_text::number(static_cast<int>(std::lround(count)));
    };
    auto text = Words::tr("Queens expected this season: %1, then %2.")
                    .arg(queens(answer.queensBefore), queens(answer.queensAfter));
    text += u' ' + (lost == 0 ? Words::tr("All orders that are met stay met.")
                              : Words::tr("%Ln order(s) would no longer be met.", nullptr,
                                          static_cast<int>(lost)));
    if (answer.coldUnknown)
        text += u' ' + Words::tr("No weather is known: cold days change nothing here.");
    return text;
}

}  // namespace tenthday::what_if_text
