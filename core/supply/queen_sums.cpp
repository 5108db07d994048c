#include "supply/queen_sums.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// Standard deviations beyond which a normal count is left off: 1 in 10^6.
constexpr double kReach = 5;
/// A sum as narrow as this is no normal one.
constexpr double kNarrow = 1;

/// Of counts, both included.
struct Range {
    std::int32_t first;
    std::int32_t last;
};

}  // namespace

namespace {

Range rangeOf(const Cumulants& sum) {
    const double reach = kReach * std::sqrt(sum.variance);
    return {static_cast<std::int32_t>(std::max(0.0, std::floor(sum.mean - reach))),
            static_cast<std::int32_t>(std::ceil(sum.mean + reach))};
}

/// Adds the chances of such a sum, times a weight, to those of all numbers from `first` on.
/// @param scratch  room that is used again and again
void addTo(std::vector<double>& all, std::int32_t first, const Cumulants& sum, double weight,
           std::vector<double>& scratch) {
    const double sd = std::sqrt(sum.variance);
    const auto range = rangeOf(sum);
    const double skew = sum.third / (sum.variance * sd) / 6;
    // The normal curve from one count to the next by its ratio, whose own ratio is fixed.
    double z = (range.first - sum.mean) / sd;
    double normal = std::exp(-z * z / 2);
    double ratio = std::exp(-(2 * z + 1 / sd) / (2 * sd));
    const double bend = std::exp(-1 / sum.variance);
    double whole = 0;
    scratch.clear();
    for (auto n = range.first; n <= range.last; ++n) {
        scratch.push_back(std::max(0.0, normal * (1 + skew * z * (z * z - 3))));
        whole += scratch.back();
        normal *= ratio;
        ratio *= bend;
        z += 1 / sd;
    }
    auto* at = &all[static_cast<std::size_t>(range.first - first)];
    for (const double chance : scratch) *at++ += chance * weight / whole;
}

}  // namespace

CountSpread spreadOf(const Cumulants& sum) {
    const auto range = rangeOf(sum);
    std::vector<double> chances(static_cast<std::size_t>(range.last - range.first) + 1);
    std::vector<double> scratch;
    addTo(chances, range.first, sum, 1, scratch);
    return {range.first, std::move(chances)};
}

namespace {

/// The mean of sums over their seasons.
/// @param narrow  the exact spread in a season where the sum is narrow
template <class Exact>
CountSpread sumsTogether(const std::vector<Cumulants>& seasons, Exact&& narrow) {
    const double weight = 1.0 / static_cast<double>(seasons.size());
    auto range = rangeOf(seasons.front());
    for (const auto& sum : seasons) {
        const auto other = rangeOf(sum);
        range = {std::min(range.first, other.first), std::max(range.last, other.last)};
    }
    std::vector<double> wide(static_cast<std::size_t>(range.last - range.first) + 1);
    std::vector<double> scratch;
    std::vector<CountSpread> parts;
    std::vector<double> weights;
    double together = 0;
    for (std::size_t season = 0; season < seasons.size(); ++season) {
        if (seasons[season].variance < kNarrow) {
            parts.push_back(narrow(season));
            weights.push_back(weight);
            continue;
        }
        addTo(wide, range.first, seasons[season], weight, scratch);
        together += weight;
    }
    if (together > 0) {
        for (auto& chance : wide) chance /= together;
        parts.emplace_back(range.first, std::move(wide));
        weights.push_back(together);
    }
    return parts.size() == 1 ? parts.front() : mixture(weights, parts);
}

}  // namespace

PartMoments::PartMoments(const QueenPart& part) : mated_{}, judged_{} {
    for (auto n = part.mated.first(); n <= part.mated.last(); ++n) {
        const double chance = part.mated.of(n);
        const double k = n;
        mated_[0] += chance * k;
        mated_[1] += chance * k * (k - 1);
        mated_[2] += chance * k * (k - 1) * (k - 2);
    }
    const double mean = part.judged.mean;
    const double rho = correlation(part.judged);
    judged_[0] = mean;
    if (rho <= 0) {
        judged_[1] = mean * mean;
        judged_[2] = mean * mean * mean;
        return;
    }
    const double size = 1 / rho - 1;  // a + b of the beta distribution
    const double a = mean * size;
    judged_[1] = mean * (a + 1) / (size + 1);
    judged_[2] = judged_[1] * (a + 2) / (size + 2);
}

Cumulants PartMoments::at(double share, const KnownQueens& seen) const {
    // Factorial moments: a share s of each takes their j-th times s^j; those of a sum of two
    // follow the binomial rule.
    const double n = seen.laying;
    const double m1 = mated_[0] * share;
    const double m2 = mated_[1] * share * share;
    const double m3 = mated_[2] * share * share * share;
    const double f1 = (m1 + n) * judged_[0];
    const double f2 = (m2 + 2 * m1 * n + n * (n - 1)) * judged_[1];
    const double f3 = (m3 + 3 * m2 * n + 3 * m1 * n * (n - 1) + n * (n - 1) * (n - 2)) * judged_[2];
    const double variance = f2 + f1 - f1 * f1;
    const double third = f3 + 3 * f2 + f1 - 3 * f1 * (f2 + f1) + 2 * f1 * f1 * f1;
    return {f1 + seen.certain, variance, third};
}

QueenSums::QueenSums(const QueenStock& stock) : stock_(&stock) {
    for (const auto& part : stock.parts) {
        moments_.emplace_back(part);
        end_ = std::max(end_, part.lastDay());
    }
}

QueenSums::Sum QueenSums::sumOf(const QueenWant& want, bool fits, Day day,
                                std::span<const BatchClaim> claims) const {
    const auto isClaimed = [&](const QueenPart& part) {
        return std::any_of(claims.begin(), claims.end(),
                           [&](const auto& claim) { return claim.batch == part.batch; });
    };
    Sum sum;
    std::int32_t certain = 0;
    for (std::size_t i = 0; i < stock_->parts.size(); ++i) {
        const auto& part = stock_->parts[i];
        if (want.takes(part) != fits || isClaimed(part)) continue;
        if (part.isCertainOn(day))
            certain += part.knownOn(day).certain;
        else
            sum.open.push_back(i);
    }
    sum.certain = CountSpread(certain);
    return sum;
}

std::vector<double> QueenSums::sharesOf(const Parts& parts, Day day, std::size_t season) const {
    std::vector<double> shares;
    shares.reserve(parts.size());
    for (const auto i : parts) shares.push_back(stock_->parts[i].shareOn(day, season));
    return shares;
}

CountSpread QueenSums::exact(const Sum& sum, std::span<const double> shares, Day day) const {
    auto total = sum.certain;
    for (std::size_t i = 0; i < sum.open.size(); ++i)
        total = total + stock_->parts[sum.open[i]].caught(shares[i], day);
    return total;
}

CountSpread QueenSums::exactOverall(const Sum& sum, Day day) const {
    std::map<std::vector<double>, double> alike;
    const double weight = 1.0 / static_cast<double>(stock_->seasons);
    for (std::size_t season = 0; season < stock_->seasons; ++season)
        alike[sharesOf(sum.open, day, season)] += weight;
    // Each part's spread once for each share it meets.
    std::vector<std::map<double, CountSpread>> made(sum.open.size());
    std::vector<double> weights;
    std::vector<CountSpread> spreads;
    for (const auto& [shares, together] : alike) {
        auto total = sum.certain;
        for (std::size_t i = 0; i < shares.size(); ++i) {
            const auto [at, isNew] = made[i].try_emplace(shares[i]);
            if (isNew) at->second = stock_->parts[sum.open[i]].caught(shares[i], day);
            total = total + at->second;
        }
        weights.push_back(together);
        spreads.push_back(std::move(total));
    }
    return mixture(weights, spreads);
}

CountSpread QueenSums::bulkOverall(const QueenWant& want, const Sum& sum, Day day) {
    auto& bulk = bulks_[want];
    const auto& parts = stock_->parts;
    if (bulk.byEnd.empty()) {
        for (std::size_t i = 0; i < parts.size(); ++i)
            if (want.takes(parts[i])) bulk.byEnd.push_back(i);
        std::sort(bulk.byEnd.begin(), bulk.byEnd.end(),
                  [&](auto a, auto b) { return parts[a].lastDay() < parts[b].lastDay(); });
    }
    if (bulk.seasons.empty() || day < bulk.day) {
        bulk.joined = 0;
        bulk.seasons.assign(stock_->seasons, {});
    }
    bulk.day = day;
    const auto add = [&](std::size_t i, std::vector<Cumulants>& seasons) {
        const auto seen = parts[i].knownOn(day);
        const auto shares = parts[i].sharesOn(day);
        for (std::size_t season = 0; season < seasons.size(); ++season)
            seasons[season] += moments_[i].at(shares.in(season), seen);
    };
    for (; bulk.joined < bulk.byEnd.size(); ++bulk.joined) {
        if (parts[bulk.byEnd[bulk.joined]].lastDay() > day) break;
        add(bulk.byEnd[bulk.joined], bulk.seasons);
    }
    auto seasons = bulk.seasons;
    for (auto at = bulk.joined; at < bulk.byEnd.size(); ++at) {
        const auto i = bulk.byEnd[at];
        if (!parts[i].isCertainOn(day))
            add(i, seasons);
        else if (const auto certain = parts[i].knownOn(day).certain; certain > 0)
            for (auto& season : seasons) season.mean += certain;
    }
    return sumsTogether(seasons, [&](std::size_t season) {
        return exact(sum, sharesOf(sum.open, day, season), day);
    });
}

const CountSpread& QueenSums::overall(const QueenWant& want, Day day) {
    const auto asked = std::min(day, end_);
    const auto [at, isNew] = known_.try_emplace({want, asked});
    if (!isNew) return at->second;
    const auto sum = sumOf(want, true, asked);
    at->second =
        sum.open.size() <= kMostExact ? exactOverall(sum, asked) : bulkOverall(want, sum, asked);
    return at->second;
}

CountSpread QueenSums::in(const Sum& sum, Day day, std::size_t season) const {
    if (sum.open.size() <= kMostExact) return exact(sum, sharesOf(sum.open, day, season), day);
    Cumulants total;
    for (const auto i : sum.open)
        total +=
            moments_[i].at(stock_->parts[i].shareOn(day, season), stock_->parts[i].knownOn(day));
    if (total.variance < kNarrow) return exact(sum, sharesOf(sum.open, day, season), day);
    return sum.certain + spreadOf(total);
}

void QueenSums::addClaimed(const QueenWant& want, Day day, std::size_t season,
                           const BatchClaim& claim, Apart& apart) const {
    CountSpread fit;
    CountSpread other;
    bool anyFit = false;
    bool anyOther = false;
    for (const auto& part : stock_->parts) {
        if (part.batch != claim.batch) continue;
        const bool fits = want.takes(part);
        (fits ? anyFit : anyOther) = true;
        auto& sum = fits ? fit : other;
        sum = sum + part.caught(part.isCertainOn(day) ? 0 : part.shareOn(day, season), day);
    }
    if (!anyFit) {
        apart.other = apart.other + claim.serving(other);
        return;
    }
    const auto serving = [&](const CountSpread& queens) {
        return anyOther ? queens.without(claim.later) : claim.serving(queens);
    };
    apart.own = apart.own + claim.ownOf(fit);
    apart.fitIfOwn = apart.fitIfOwn + serving(claim.ifOwnIsThere(fit));
    apart.fit = apart.fit + serving(fit);
    if (anyOther) apart.other = apart.other + other.without(claim.later);
}

std::vector<QueenSums::Apart> QueenSums::apart(const QueenWant& want, Day day,
                                               std::span<const BatchClaim> claims) const {
    const auto fit = sumOf(want, true, day, claims);
    const auto other = sumOf(want, false, day, claims);
    auto open = fit.open;
    open.insert(open.end(), other.open.begin(), other.open.end());
    for (std::size_t i = 0; i < stock_->parts.size(); ++i)
        for (const auto& claim : claims)
            if (claim.batch == stock_->parts[i].batch && !stock_->parts[i].isCertainOn(day))
                open.push_back(i);
    const double weight = 1.0 / static_cast<double>(stock_->seasons);
    std::map<std::vector<double>, std::size_t> alike;
    std::vector<Apart> all;
    for (std::size_t season = 0; season < stock_->seasons; ++season) {
        const auto [at, isNew] = alike.try_emplace(sharesOf(open, day, season), all.size());
        if (isNew) {
            auto& apart = all.emplace_back();
            apart.fit = in(fit, day, season);
            apart.fitIfOwn = apart.fit;
            apart.other = in(other, day, season);
            for (const auto& claim : claims) addClaimed(want, day, season, claim, apart);
        }
        all[at->second].weight += weight;
    }
    return all;
}

}  // namespace tenthday
