#include "supply/hands.h"

#include <algorithm>
#include <numeric>

namespace tenthday {
namespace {

constexpr double kLeast = 1e-6;

void addFill(std::vector<OrderFill>& fills, Id<Batch> batch, double count) {
    const auto same = std::find_if(fills.begin(), fills.end(),
                                   [&](const auto& fill) { return fill.batch == batch; });
    if (same == fills.end())
        fills.push_back({batch, count});
    else
        same->count += count;
}

}  // namespace

Hands::Hands(const OrderBook& book, const QueenStock& stock)
    : stock_(stock), given_(stock.parts.size()), order_(stock.parts.size()) {
    for (const auto& part : stock.parts)
        most_.push_back(expected(part, std::max(part.lastDay(), part.from)));
    std::vector<int> claims(stock.parts.size());
    for (const auto& need : book.needs) {
        const auto want = wantOf(*need.order);
        if (want.isAny() || !isForQueens(need.order->kind)) continue;
        for (std::size_t i = 0; i < claims.size(); ++i)
            if (want.takes(stock.parts[i])) claims[i] = 1;
    }
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::stable_sort(order_.begin(), order_.end(), [&](auto a, auto b) {
        if (claims[a] != claims[b]) return claims[a] < claims[b];
        return stock.parts[a].lastDay() < stock.parts[b].lastDay();
    });
    for (const auto& gone : book.gone) takeGone(gone);
    for (const auto& need : book.needs) keepEarmarked(need);
}

double Hands::expected(const QueenPart& part, Day day) const {
    if (part.isCertainOn(day)) return part.knownOn(day).certain;
    return part.meanCaught(part.meanShareOn(day), day);
}

double Hands::give(std::size_t part, Day day, double most) {
    if (given_[part] >= most_[part] - kLeast) return 0;
    const double share = std::min(expected(stock_.parts[part], day) - given_[part], most);
    if (share <= kLeast) return 0;
    given_[part] += share;
    return share;
}

void Hands::takeGone(const QueensGone& gone) {
    const QueenWant want{gone.line, gone.proven};
    double left = gone.count;
    // Those that fit first: a batch can have others too.
    for (const bool fits : {true, false})
        for (const auto i : order_) {
            const auto& part = stock_.parts[i];
            if (left <= 0) return;
            if (want.takes(part) != fits || (gone.batch && part.batch != *gone.batch)) continue;
            left -= give(i, gone.day, left);
        }
}

void Hands::keepEarmarked(const OrderNeed& need) {
    const auto want = wantOf(*need.order);
    std::vector<OrderFill> fills;
    for (const auto& mark : need.earmarks) {
        double left = mark.count;
        for (const auto i : order_) {
            const auto& part = stock_.parts[i];
            if (left <= 0 || part.batch != mark.batch || !want.takes(part)) continue;
            const double share = give(i, need.wholeOn, left);
            left -= share;
            if (share > 0) addFill(fills, part.batch, share);
        }
    }
    if (!fills.empty()) kept_.emplace_back(need.order.get(), std::move(fills));
}

std::vector<OrderFill> Hands::fill(const OrderNeed& need) {
    const auto want = wantOf(*need.order);
    std::vector<OrderFill> fills;
    double left = need.rest;
    for (const auto& [order, kept] : kept_)
        if (order == need.order.get()) fills = kept;
    for (const auto& fill : fills) left -= fill.count;
    for (const auto i : order_) {
        if (left <= kLeast) break;
        const auto& part = stock_.parts[i];
        if (!want.takes(part)) continue;
        const double share = give(i, need.wholeOn, left);
        left -= share;
        if (share > 0) addFill(fills, part.batch, share);
    }
    return fills;
}

}  // namespace tenthday
