#include "chart/card_for.h"

#include <algorithm>
#include <set>

#include "chart/trouble_line.h"
#include "screen_text/chart_hand_text.h"
#include "screen_text/flying_text.h"
#include "screen_text/joined_orders.h"
#include "screen_text/limit_text.h"
#include "screen_text/order_text.h"
#include "screen_text/ready_total.h"
#include "screen_text/trouble_text.h"

namespace tenthday {
namespace {

const BuilderOutlook* builderOf(const Outlook& outlook, Id<Builder> id) {
    for (const auto& builder : outlook.builders)
        if (builder.builder->id == id) return &builder;
    return nullptr;
}

/// The element, or null where the place comes from an older season.
template <class List>
auto at(const List& all, int index) -> decltype(&all[0]) {
    return index >= 0 && index < static_cast<int>(all.size())
               ? &all[static_cast<std::size_t>(index)]
               : nullptr;
}

CardText builderCard(const Outlook& outlook, const TargetKey& key) {
    const auto* builder = builderOf(outlook, key.builder);
    if (!builder) return {};
    if (key.hit == Hit::MakeUp) {
        const auto* makeUp = at(builder->makeUps, key.index);
        return makeUp ? chart_cards::makeUp(outlook, *builder, **makeUp) : CardText{};
    }
    if (key.hit == Hit::Look) {
        const auto* clock = at(builder->clocks, key.index / 2);
        return clock ? chart_cards::look(outlook, *builder, *clock, key.index % 2 == 1)
                     : CardText{};
    }
    const auto* days = at(builder->idle, key.index);
    return days ? chart_cards::idle(*builder, *days) : CardText{};
}

CardText ordersCard(const Outlook& outlook, const SeasonOrders* orders, const TargetKey& key) {
    if (orders == nullptr)
        return key.hit == Hit::PromiseWeek ? order_text::noPromiseCard(outlook, *key.day)
                                           : CardText{};
    if (key.hit == Hit::QueensDay) return order_text::queensCard(outlook, *orders, *key.day);
    if (key.hit == Hit::PromiseWeek) {
        const auto* week = orders->weekOf(*key.day);
        return week ? order_text::promiseCard(outlook, *week) : CardText{};
    }
    const auto* order = at(orders->orders, key.index);
    return order ? order_text::orderCard(outlook, *order) : CardText{};
}

}  // namespace

CardText cardFor(const Outlook& outlook, const TargetKey& key, const SeasonOrders* orders) {
    switch (key.hit) {
        case Hit::None:
        case Hit::Ground:
        case Hit::Head:
        case Hit::Grafts:
        case Hit::BuilderRow:
        case Hit::YardRow:
        case Hit::LaneName:
        case Hit::LegendName:
        case Hit::Strip:
        case Hit::LanesAbove:
        case Hit::LanesBelow:
            return {};
        case Hit::YardName:
            return chart_cards::yardName(outlook, key.yard);
        case Hit::ReadyTotal:
            return ready_total::card(outlook, *key.day);
        case Hit::Nuc: {
            const auto* side = at(outlook.nucs.sides, key.index);
            return side && key.day ? chart_cards::nuc(outlook, *side, *key.day) : CardText{};
        }
        case Hit::Load:
            return chart_cards::load(outlook, key.batch, key.builder);
        case Hit::MakeUp:
        case Hit::Look:
        case Hit::Idle:
            return builderCard(outlook, key);
        case Hit::Rest:
            return chart_cards::rest(outlook, key.builder, key.batch, *key.day);
        case Hit::YardDay:
            return chart_cards::yardDay(outlook, key.yard, *key.day, key.batch);
        case Hit::CellsDay: {
            const auto* day = at(outlook.nucs.cellsDays, key.index);
            return day ? chart_cards::cellsDay(outlook, *day) : CardText{};
        }
        case Hit::FlyingDay:
            return flying_text::card(outlook, *key.day);
        case Hit::OutsideLimits:
            return limit_text::outside(outlook.limits, *key.day);
        case Hit::QueensDay:
        case Hit::OrderFlag:
        case Hit::PromiseWeek:
            return ordersCard(outlook, orders, key);
        case Hit::Trouble: {
            const auto* finding = at(outlook.findings, key.index);
            return finding ? chart_cards::trouble(*finding)
                           : trouble_text::lateCard(outlook, key.batch);
        }
    }
    return {};
}

namespace {

/// Troubles that share their words or their count: each by its name, the first dozen.
CardText joinedTroubles(const Outlook& outlook, const Layout& layout, const Target& target) {
    constexpr int kMost = 12;
    CardText card;
    std::vector<TargetKey> keys;
    std::set<int> findings;  // two batches may share one
    const Finding* first = nullptr;
    bool areOfAKind = true;
    int count = 0;
    for (auto other = layout.targets.rbegin(); other != layout.targets.rend(); ++other) {
        const auto& key = other->key;
        if (key.hit != Hit::Trouble || other->rect != target.rect) continue;
        keys.push_back(key);
        const auto one = cardFor(outlook, key, nullptr);
        if (one.lines.empty() || (key.index >= 0 && !findings.insert(key.index).second)) continue;
        const auto* finding = at(outlook.findings, key.index);
        if (++count == 1) first = finding;
        areOfAKind = areOfAKind && trouble_text::areOfAKind(first, finding);
        if (count > kMost) continue;
        card.lines.push_back({one.title, {}, {}, one.lines.front().tone});
    }
    if (count < 2) return {};
    const int batches = countBatches(keys);
    card.title =
        areOfAKind ? trouble_text::counted(first, batches) : trouble_text::inTrouble(batches);
    if (count > kMost) card.lines.push_back({trouble_text::more(count - kMost), {}, {}});
    return card;
}

}  // namespace

CardText cardFor(const Outlook& outlook, const Layout& layout, const Target& target,
                 const SeasonOrders* orders) {
    if (target.key.hit == Hit::LanesBelow)
        return chart_hand_text::lanesBelowCard(layout.hidden.below);
    if (target.key.hit == Hit::LanesAbove)
        return chart_hand_text::lanesAboveCard(layout.hidden.above);
    if (target.key.hit == Hit::Trouble) {
        auto card = joinedTroubles(outlook, layout, target);
        if (!card.lines.empty()) return card;
    }
    if (target.key.hit != Hit::OrderFlag || orders == nullptr)
        return cardFor(outlook, target.key, orders);
    std::vector<const OrderOutlook*> all;
    for (const auto& other : layout.targets)
        if (other.key.hit == Hit::OrderFlag && other.rect == target.rect)
            if (const auto* order = at(orders->orders, other.key.index)) all.push_back(order);
    if (all.size() < 2) return cardFor(outlook, target.key, orders);
    std::stable_sort(all.begin(), all.end(), [](const auto* a, const auto* b) {
        return a->state != b->state ? a->state > b->state : a->order->due < b->order->due;
    });
    return order_text::joinedCard(all);
}

}  // namespace tenthday
