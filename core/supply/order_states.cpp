#include "supply/order_states.h"

#include <algorithm>
#include <numeric>

#include "supply/hands.h"

namespace tenthday {
namespace {

double sureOf(const Order& order) { return order.sure.value / 1000.0; }

OrderState stateOf(double chance, const Order& order) {
    if (chance >= sureOf(order) - kRounding) return OrderState::Met;
    return chance >= 0.5 ? OrderState::AtRisk : OrderState::Short;
}

/// How an order stands of which the seasons are looked at one by one: only some queens will do for
/// it, or something is earmarked.
class ApartOrder {
public:
    /// @param fit  wanted of the queens that fit, by it and those before it
    /// @param all  wanted of all queens
    ApartOrder(std::vector<QueenSums::Apart> seasons, const OrderNeed& need, bool isAny,
               std::int32_t fit, std::int32_t all)
        : seasons_(std::move(seasons)), need_(need), isAny_(isAny), fit_(fit), all_(all) {}

    /// Chance that all is there but so many.
    [[nodiscard]] double chance(std::int32_t lacking) const {
        double sum = 0;
        for (const auto& season : seasons_) sum += season.weight * chanceIn(season, lacking);
        return std::min(sum, 1.0);
    }
    /// The least lacking with this chance.
    [[nodiscard]] std::int32_t lackingAt(double sure) const {
        std::int32_t tooFew = -1;
        std::int32_t enough = need_.rest - meantAt(sure);
        while (enough - tooFew > 1) {
            const auto middle = (tooFew + enough) / 2;
            (chance(middle) < sure - kRounding ? tooFew : enough) = middle;
        }
        return enough;
    }

private:
    [[nodiscard]] double chanceIn(const QueenSums::Apart& season, std::int32_t lacking) const {
        const double inTurn = isAny_ ? season.fit.atLeast(all_ - lacking)
                                     : both(season, fit_ - lacking, all_ - lacking);
        if (need_.earmarks.empty() || need_.earmarked() < need_.rest) return inTurn;
        // All of it is meant for it: whole in its turn, or because its batches gave their parts.
        const double meant = season.own.atLeast(need_.rest);
        if (!isAny_) return std::max(meant, inTurn);
        return meant + inTurn - meant * season.fitIfOwn.atLeast(all_ - lacking);
    }
    /// What it has with this chance of what is meant for it, whoever is short.
    [[nodiscard]] std::int32_t meantAt(double sure) const {
        if (need_.earmarks.empty()) return 0;
        std::vector<double> weights;
        std::vector<CountSpread> spreads;
        for (const auto& season : seasons_) {
            weights.push_back(season.weight);
            spreads.push_back(season.own);
        }
        return std::min(mixture(weights, spreads).reachedWith(sure), need_.rest);
    }
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
    const OrderNeed& need_;
    bool isAny_;
    std::int32_t fit_;
    std::int32_t all_;
};

/// Fills the orders for queens of one book.
class Filling {
public:
    Filling(const OrderBook& book, const QueenStock& stock, QueenSums& sums)
        : book_(book), stock_(stock), sums_(sums), hands_(book, stock) {}

    std::vector<OrderOutlook> run() {
        std::vector<OrderOutlook> outlooks;
        for (std::size_t i = 0; i < book_.needs.size(); ++i) {
            const auto& need = book_.needs[i];
            if (!isForQueens(need.order->kind)) continue;
            outlooks.push_back(stand(i));
            outlooks.back().fills = hands_.fill(need);
            owed_ += need.rest;
        }
        return outlooks;
    }

private:
    OrderOutlook stand(std::size_t place) {
        const auto& need = book_.needs[place];
        const auto want = wantOf(*need.order);
        const auto before = goneBy(book_, need, {}) + owed_;
        auto outlook = orderOutlook(need, sums_.overall({}, need.wholeOn), before);
        if (need.rest == 0) return outlook;
        const auto claims = claimsAt(book_, place, true, need.wholeOn);
        if (want.isAny() && claims.empty()) return outlook;
        const ApartOrder apart(sums_.apart(want, need.wholeOn, claims), need, want.isAny(),
                               fitting(place, want), before + need.rest);
        outlook.chance = apart.chance(0);
        outlook.state = stateOf(outlook.chance, *need.order);
        outlook.lacking =
            outlook.state == OrderState::Met ? 0 : apart.lackingAt(sureOf(*need.order));
        return outlook;
    }

    /// Wanted of the queens that fit: gone, by orders before it that take no others, and by itself.
    [[nodiscard]] std::int32_t fitting(std::size_t place, const QueenWant& want) const {
        const auto& need = book_.needs[place];
        auto sum = goneBy(book_, need, [&](const QueensGone& gone) { return fits(gone, want); });
        for (std::size_t i = 0; i <= place; ++i) {
            const auto& other = *book_.needs[i].order;
            if (isForQueens(other.kind) && want.includes(wantOf(other))) sum += book_.needs[i].rest;
        }
        return sum;
    }
    /// Queens that went out were such: the order took no others, or their batch has them.
    [[nodiscard]] bool fits(const QueensGone& gone, const QueenWant& want) const {
        if (want.includes({gone.line, gone.proven})) return true;
        return gone.batch &&
               std::any_of(stock_.parts.begin(), stock_.parts.end(), [&](const auto& part) {
                   return part.batch == *gone.batch && want.takes(part);
               });
    }

    const OrderBook& book_;
    const QueenStock& stock_;
    QueenSums& sums_;
    Hands hands_;
    std::int32_t owed_ = 0;  ///< by orders filled before
};

}  // namespace

QueenWant wantOf(const Order& order) { return {order.line, order.kind == OrderKind::Proven}; }

OrderOutlook orderOutlook(const OrderNeed& need, const CountSpread& supply, std::int32_t before) {
    OrderOutlook outlook;
    outlook.order = need.order;
    outlook.delivered = need.delivered;
    outlook.rest = need.rest;
    outlook.earmarked = need.earmarked();
    outlook.wholeOn = need.wholeOn;
    outlook.days = need.days;
    outlook.owedDue = before + need.rest;
    outlook.chance = need.rest == 0 ? 1 : supply.atLeast(outlook.owedDue);
    outlook.state = stateOf(outlook.chance, *need.order);
    if (outlook.state != OrderState::Met)
        outlook.lacking =
            std::clamp(outlook.owedDue - supply.reachedWith(sureOf(*need.order)), 0, need.rest);
    return outlook;
}

std::vector<OrderOutlook> queenOrders(const OrderBook& book, const QueenStock& stock,
                                      QueenSums& sums) {
    return Filling(book, stock, sums).run();
}

std::vector<OrderOutlook> queenOrders(std::span<const Ptr<Order>> orders, const QueenStock& stock,
                                      QueenSums& sums) {
    OrderBook book;
    for (const auto& order : orders) book.needs.push_back(bareNeed(order));
    return queenOrders(book, stock, sums);
}

}  // namespace tenthday
