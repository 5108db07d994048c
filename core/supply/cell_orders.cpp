#include "supply/cell_orders.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tenthday {
namespace {

/// Fills the orders of one kind.
class Filler {
public:
    /// @param gone   by part, what went out of it
    /// @param taken  by part, what orders take beside that
    Filler(std::span<const RaisedPart> parts, OrderKind kind, std::span<const TakenCells> gone,
           std::vector<TakenCells>& taken)
        : parts_(parts), kind_(kind), gone_(gone), taken_(taken) {
        for (std::size_t i = 0; i < parts.size(); ++i) supply_.push_back(supplyOf(i));
    }

    OrderOutlook fill(const OrderNeed& need) {
        const auto serving = servingParts(need);
        std::int32_t before = 0;
        for (const auto& [count, parts] : earlier_)
            if (overlap(parts, serving)) before += count;
        std::vector<std::size_t> from;
        auto outlook = orderOutlook(need, CountSpread(0), before);
        for (const auto& choice : choices(*need.order, serving)) {
            auto chosen = orderOutlook(need, sum(choice), before);
            if (!from.empty() && chosen.chance <= outlook.chance &&
                chosen.lacking >= outlook.lacking)
                continue;
            outlook = std::move(chosen);
            from = choice;
        }
        outlook.fills = take(need, from);
        earlier_.emplace_back(need.rest, serving);
        return outlook;
    }

private:
    using Parts = std::vector<std::size_t>;

    [[nodiscard]] CountSpread supplyOf(std::size_t i) const {
        const auto& part = parts_[i];
        const auto& away = part.elsewhere;
        if (kind_ == OrderKind::RipeCell) {
            if (part.given != Given::Sealed) return CountSpread(0);
            const auto there =
                part.isSettled ? CountSpread(away.sold) : part.ripe.without(away.kept + away.other);
            return there.without(gone_[i].cells);
        }
        const auto sold = std::max(away.sold, gone_[i].cells + taken_[i].cells);
        const auto cells =
            part.isSettled ? CountSpread(away.kept) : part.ripe.without(away.other + sold);
        return part.emerged(cells).without(gone_[i].virgins);
    }

    [[nodiscard]] Parts servingParts(const OrderNeed& need) const {
        const auto& order = *need.order;
        auto days = need.goDays.value_or(std::vector<Day>{});
        if (!need.goDays)
            for (Day day = order.notBefore.value_or(order.due); day <= order.due; day += Days{1})
                days.push_back(day);
        if (days.empty()) return {};
        const Day alive = order.partOk ? days.front() : days.back();
        Parts serving;
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const auto& part = parts_[i];
            if (order.line && part.line != order.line) continue;
            const bool serves =
                kind_ == OrderKind::RipeCell
                    ? std::binary_search(days.begin(), days.end(), part.cellsDay())
                    : DayWindow{alive - kVirginServes, days.back()}.contains(part.outDay());
            if (serves && supply_[i].last() > 0) serving.push_back(i);
        }
        std::stable_sort(serving.begin(), serving.end(), [&](auto a, auto b) {
            return parts_[a].cellsDay() < parts_[b].cellsDay();
        });
        return serving;
    }

    /// All of them; or, of cells that must go together, those of each day.
    [[nodiscard]] std::vector<Parts> choices(const Order& order, const Parts& serving) const {
        if (serving.empty()) return {};
        if (kind_ == OrderKind::Virgin || order.partOk) return {serving};
        std::vector<Parts> byDay;
        for (const auto i : serving) {
            if (byDay.empty() || parts_[byDay.back().front()].cellsDay() != parts_[i].cellsDay())
                byDay.emplace_back();
            byDay.back().push_back(i);
        }
        return byDay;
    }

    [[nodiscard]] CountSpread sum(const Parts& parts) const {
        CountSpread all;
        for (const auto i : parts) all = all + supply_[i];
        return all;
    }

    static bool overlap(const Parts& a, const Parts& b) {
        return std::any_of(a.begin(), a.end(),
                           [&](auto i) { return std::find(b.begin(), b.end(), i) != b.end(); });
    }

    /// Takes whole cells as far as they are expected; what is wanted beyond that, and may come by
    /// good luck, from the last batch.
    std::vector<OrderFill> take(const OrderNeed& need, const Parts& from) {
        std::vector<OrderFill> fills;
        std::int32_t left = need.rest;
        for (const auto i : from) {
            auto& taken = kind_ == OrderKind::RipeCell ? taken_[i].cells : taken_[i].virgins;
            const auto there = static_cast<std::int32_t>(std::floor(supply_[i].mean() + kRound));
            const auto share = std::clamp(there - taken, 0, left);
            taken += share;
            left -= share;
            if (share > 0) fills.push_back({parts_[i].batch, static_cast<double>(share)});
            if (i == from.back()) taken += left;
        }
        return fills;
    }

    static constexpr double kRound = 1e-9;

    std::span<const RaisedPart> parts_;
    OrderKind kind_;
    std::span<const TakenCells> gone_;
    std::vector<TakenCells>& taken_;
    std::vector<CountSpread> supply_;  ///< by part
    std::vector<std::pair<std::int32_t, Parts>> earlier_;
};

}  // namespace

CellOrders cellOrders(const OrderBook& book, std::span<const RaisedPart> parts) {
    CellOrders made;
    made.taken.resize(parts.size());
    const auto gone = cellsGoneOf(book.cellsGone, parts);
    // Cells before virgins: they leave their batch earlier, whatever the order.
    for (const auto kind : {OrderKind::RipeCell, OrderKind::Virgin}) {
        Filler filler(parts, kind, gone, made.taken);
        for (const auto& need : book.needs)
            if (need.order->kind == kind) made.orders.push_back(filler.fill(need));
    }
    for (std::size_t i = 0; i < gone.size(); ++i) {
        made.taken[i].cells += gone[i].cells;
        made.taken[i].virgins += gone[i].virgins;
    }
    return made;
}

CellOrders cellOrders(std::span<const Ptr<Order>> orders, std::span<const RaisedPart> parts) {
    OrderBook book;
    for (const auto& order : orders) book.needs.push_back(bareNeed(order));
    return cellOrders(book, parts);
}

}  // namespace tenthday
