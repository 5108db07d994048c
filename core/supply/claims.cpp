#include "supply/claims.h"

#include <algorithm>

namespace tenthday {
namespace {

/// The spread of f(count), for an f that never falls.
template <class F>
CountSpread mapped(const CountSpread& counts, F&& f) {
    const auto first = f(counts.first());
    std::vector<double> chances(static_cast<std::size_t>(f(counts.last()) - first) + 1);
    for (auto n = counts.first(); n <= counts.last(); ++n)
        chances[static_cast<std::size_t>(f(n) - first)] += counts.of(n);
    return {first, std::move(chances)};
}

BatchClaim& claimOn(std::vector<BatchClaim>& claims, Id<Batch> batch) {
    const auto found = std::find_if(claims.begin(), claims.end(),
                                    [&](const auto& claim) { return claim.batch == batch; });
    if (found != claims.end()) return *found;
    BatchClaim claim;
    claim.batch = batch;
    return claims.emplace_back(claim);
}

}  // namespace

std::int32_t BatchClaim::serving(std::int32_t queens) const {
    return std::min(queens, first) + std::max(queens - first - later, 0);
}

std::int32_t BatchClaim::ownOf(std::int32_t queens) const {
    return std::clamp(queens - (first - own), 0, own);
}

CountSpread BatchClaim::serving(const CountSpread& queens) const {
    return mapped(queens, [&](std::int32_t n) { return serving(n); });
}

CountSpread BatchClaim::ownOf(const CountSpread& queens) const {
    return mapped(queens, [&](std::int32_t n) { return ownOf(n); });
}

CountSpread BatchClaim::ifOwnIsThere(const CountSpread& queens) const {
    const double chance = queens.atLeast(first);
    if (own == 0 || queens.first() >= first || chance <= 0) return queens;
    std::vector<double> chances;
    for (auto n = first; n <= queens.last(); ++n) chances.push_back(queens.of(n) / chance);
    return {first, std::move(chances)};
}

std::vector<BatchClaim> claimsAt(const OrderBook& book, std::size_t place, bool own, Day day) {
    std::vector<BatchClaim> claims;
    for (std::size_t i = 0; i < book.needs.size(); ++i)
        for (const auto& mark : book.needs[i].earmarks) {
            auto& claim = claimOn(claims, mark.batch);
            const bool isOwn = own && i == place;
            (i < place || isOwn ? claim.first : claim.later) += mark.count;
            if (isOwn) claim.own += mark.count;
        }
    std::erase_if(claims, [](const auto& claim) { return claim.later == 0 && claim.own == 0; });
    if (claims.empty()) return claims;
    for (const auto& gone : book.gone)
        for (auto& claim : claims)
            if (gone.batch == claim.batch && gone.day <= day) claim.first += gone.count;
    return claims;
}

}  // namespace tenthday
