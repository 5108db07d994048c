#include "supply/order_states.h"

#include <algorithm>
#include <numeric>

#include "base/natural_order.h"

namespace tenthday {
namespace {

/// Chances are sums of many: one that only rounding keeps below its mark is as good as it.
constexpr double kRounding = 1e-9;

double sureOf(const Order& order) { return order.sure.value / 1000.0; }

OrderState stateOf(double chance, const Order& order) {
    if (chance >= sureOf(order) - kRounding) return OrderState::Met;
    return chance >= 0.5 ? OrderState::AtRisk : OrderState::Short;
}

bool isOfSeason(const Snapshot& snapshot, Day due) {
    const auto season = snapshot.season();
    if (season.contains(due)) return true;
    if (due < season.first || due > season.last + kLeadIn) return false;
    const auto& all = snapshot.all<Season>();
    return std::none_of(all.begin(), all.end(), [&](const auto& other) {
        return other->from <= due && due <= other->until;
    });
}

/// How an order that only some queens will do for stands.
class NarrowOrder {
public:
    /// @param own  wanted of these queens, by it and those before it
    /// @param all  wanted of all queens
    NarrowOrder(std::vector<QueenSums::Apart> seasons, std::int32_t own, std::int32_t all)
        : seasons_(std::move(seasons)), own_(own), all_(all) {}

    /// Chance that all is there but so many.
    [[nodiscard]] double chance(std::int32_t lacking) const {
        double sum = 0;
        for (const auto& season : seasons_)
            sum += season.weight * both(season, own_ - lacking, all_ - lacking);
        return std::min(sum, 1.0);
    }
    /// The least lacking with this chance, of `count`.
    [[nodiscard]] std::int32_t lackingAt(double sure, std::int32_t count) const {
        std::int32_t tooFew = -1;
        std::int32_t enough = count;
        while (enough - tooFew > 1) {
            const auto middle = (tooFew + enough) / 2;
            (chance(middle) < sure - kRounding ? tooFew : enough) = middle;
        }
        return enough;
    }

private:
    /// Enough that fit, and enough in all.
    static double both(const QueenSums::Apart& season, std::int32_t own, std::int32_t all) {
        const auto& fit = season.fit;
        const auto from = std::max(own, fit.first());
        double chance = 0;
        double others = season.other.atLeast(all - from + 1);
        for (auto n = from; n <= fit.last(); ++n) {
            others += season.other.of(all - n);
            chance += fit.of(n) * std::min(others, 1.0);
        }
        return chance;
    }

    std::vector<QueenSums::Apart> seasons_;
    std::int32_t own_;
    std::int32_t all_;
};

/// Hands the queens that are expected out to orders, in the order of filling.
class Hands {
public:
    Hands(const QueenStock& stock, std::span<const Ptr<Order>> orders)
        : stock_(stock), given_(stock.parts.size()), order_(stock.parts.size()) {
        std::vector<int> claims(stock.parts.size());
        for (const auto& order : orders) {
            const auto want = wantOf(*order);
            if (want.isAny() || !isForQueens(order->kind)) continue;
            for (std::size_t i = 0; i < claims.size(); ++i)
                if (want.takes(stock.parts[i])) claims[i] = 1;
        }
        std::iota(order_.begin(), order_.end(), std::size_t{0});
        std::stable_sort(order_.begin(), order_.end(), [&](auto a, auto b) {
            if (claims[a] != claims[b]) return claims[a] < claims[b];
            return stock.parts[a].lastDay() < stock.parts[b].lastDay();
        });
    }

    std::vector<OrderFill> fill(const Order& order) {
        const auto want = wantOf(order);
        std::vector<OrderFill> fills;
        double left = order.count;
        for (const auto i : order_) {
            if (left <= 0) break;
            const auto& part = stock_.parts[i];
            if (!want.takes(part)) continue;
            const double share = std::min(expected(part, order.due) - given_[i], left);
            if (share <= kLeast) continue;
            given_[i] += share;
            left -= share;
            const auto same = std::find_if(fills.begin(), fills.end(), [&](const auto& fill) {
                return fill.batch == part.batch;
            });
            if (same == fills.end())
                fills.push_back({part.batch, share});
            else
                same->count += share;
        }
        return fills;
    }

private:
    static constexpr double kLeast = 1e-6;

    [[nodiscard]] double expected(const QueenPart& part, Day day) const {
        if (part.isCertainOn(day)) return part.knownOn(day).certain;
        double share = 0;
        const auto rows = part.eggs->rows();
        for (std::size_t row = 0; row < rows; ++row) share += part.shareOn(day, row);
        return part.meanCaught(share / static_cast<double>(rows), day);
    }

    const QueenStock& stock_;
    std::vector<double> given_;
    std::vector<std::size_t> order_;  ///< parts, those nobody asks for by line or proof first
};

}  // namespace

std::vector<Ptr<Order>> ordersOf(const Snapshot& snapshot) {
    std::vector<Ptr<Order>> orders;
    for (const auto& order : snapshot.all<Order>())
        if (isOfSeason(snapshot, order->due)) orders.push_back(order);
    std::sort(orders.begin(), orders.end(), [](const auto& a, const auto& b) {
        if (a->due != b->due) return a->due < b->due;
        if (a->weight != b->weight) return a->weight > b->weight;
        return a->label != b->label ? naturalLess(a->label, b->label) : a->id < b->id;
    });
    return orders;
}

QueenWant wantOf(const Order& order) { return {order.line, order.kind == OrderKind::Proven}; }

OrderOutlook orderOutlook(const Ptr<Order>& order, const CountSpread& supply, std::int32_t before) {
    OrderOutlook outlook;
    outlook.order = order;
    outlook.owedDue = before + order->count;
    outlook.chance = supply.atLeast(outlook.owedDue);
    outlook.state = stateOf(outlook.chance, *order);
    if (outlook.state != OrderState::Met)
        outlook.lacking =
            std::clamp(outlook.owedDue - supply.reachedWith(sureOf(*order)), 0, order->count);
    return outlook;
}

std::vector<OrderOutlook> queenOrders(std::span<const Ptr<Order>> orders, const QueenStock& stock,
                                      QueenSums& sums) {
    std::vector<OrderOutlook> outlooks;
    Hands hands(stock, orders);
    std::int32_t before = 0;
    for (const auto& order : orders) {
        if (!isForQueens(order->kind)) continue;
        const auto want = wantOf(*order);
        auto outlook = orderOutlook(order, sums.overall({}, order->due), before);
        before += order->count;
        if (!want.isAny()) {
            std::int32_t own = order->count;
            for (const auto& other : outlooks)
                if (want.includes(wantOf(*other.order))) own += other.order->count;
            const NarrowOrder narrow(sums.apart(want, order->due), own, before);
            outlook.chance = narrow.chance(0);
            outlook.state = stateOf(outlook.chance, *order);
            outlook.lacking = outlook.state == OrderState::Met
                                  ? 0
                                  : narrow.lackingAt(sureOf(*order), order->count);
        }
        outlook.fills = hands.fill(*order);
        outlooks.push_back(std::move(outlook));
    }
    return outlooks;
}

}  // namespace tenthday
