#include "losses/count_spread.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace tenthday {

CountSpread::CountSpread(std::int32_t first, std::vector<double> chances)
    : first_(first), chances_(std::move(chances)) {
    assert(first >= 0 && !chances_.empty());
    trim();
}

void CountSpread::trim() {
    std::size_t from = 0;
    double below = 0;
    while (from + 1 < chances_.size() && below + chances_[from] < kTail) below += chances_[from++];
    std::size_t to = chances_.size();
    double above = 0;
    while (to > from + 1 && above + chances_[to - 1] < kTail) above += chances_[--to];
    chances_[from] += below;
    chances_[to - 1] += above;
    chances_.resize(to);
    chances_.erase(chances_.begin(), chances_.begin() + static_cast<std::ptrdiff_t>(from));
    first_ += static_cast<std::int32_t>(from);
}

double CountSpread::of(std::int32_t count) const {
    if (count < first_ || count > last()) return 0;
    return chances_[static_cast<std::size_t>(count - first_)];
}

double CountSpread::atLeast(std::int32_t count) const {
    if (count <= first_) return 1;
    if (count > last()) return 0;
    // From the small end: the far tail keeps its digits, and more is never likelier than fewer.
    const auto stop = chances_.rend() - (count - first_);
    return std::min(1.0, std::accumulate(chances_.rbegin(), stop, 0.0));
}

std::int32_t CountSpread::reachedWith(double chance) const {
    double sum = 0;
    for (auto count = last(); count > first_; --count) {
        sum += of(count);
        if (sum >= chance - kTail) return count;
    }
    return first_;
}

std::int32_t CountSpread::quantile(double q) const {
    double sum = 0;
    for (auto count = first_; count < last(); ++count) {
        sum += of(count);
        if (sum >= q - kTail) return count;
    }
    return last();
}

double CountSpread::mean() const {
    double sum = 0;
    for (auto count = first_; count <= last(); ++count) sum += count * of(count);
    return sum;
}

double CountSpread::sd() const {
    const double middle = mean();
    double sum = 0;
    for (auto count = first_; count <= last(); ++count)
        sum += (count - middle) * (count - middle) * of(count);
    return std::sqrt(sum);
}

CountSpread CountSpread::shifted(std::int32_t by) const {
    assert(by >= 0);
    auto more = *this;
    more.first_ += by;
    return more;
}

CountSpread CountSpread::without(std::int32_t taken) const {
    assert(taken >= 0);
    if (taken <= first_) {
        auto fewer = *this;
        fewer.first_ -= taken;
        return fewer;
    }
    if (taken >= last()) return CountSpread(0);
    const auto none = chances_.begin() + (taken - first_);
    std::vector<double> left(none, chances_.end());
    left[0] = std::accumulate(chances_.begin(), none + 1, 0.0);
    return {0, std::move(left)};
}

CountSpread CountSpread::cappedAt(std::int32_t most) const {
    assert(most >= 0);
    if (most >= last()) return *this;
    if (most <= first_) return CountSpread(most);
    const auto end = chances_.begin() + (most - first_);
    std::vector<double> kept(chances_.begin(), end + 1);
    kept.back() = std::accumulate(end, chances_.end(), 0.0);
    return {first_, std::move(kept)};
}

CountSpread operator+(const CountSpread& a, const CountSpread& b) {
    if (a.chances().size() == 1) return b.shifted(a.first());
    if (b.chances().size() == 1) return a.shifted(b.first());
    std::vector<double> sum(a.chances().size() + b.chances().size() - 1);
    for (std::size_t i = 0; i < a.chances().size(); ++i)
        for (std::size_t j = 0; j < b.chances().size(); ++j)
            sum[i + j] += a.chances()[i] * b.chances()[j];
    return {a.first() + b.first(), std::move(sum)};
}

double atLeastTogether(const CountSpread& a, const CountSpread& b, std::int32_t count) {
    double chance = 0;
    double enough = b.atLeast(count - a.first() + 1);  // with one fewer of a
    for (auto n = a.first(); n <= a.last(); ++n) {
        enough += b.of(count - n);
        chance += a.of(n) * enough;
    }
    return std::min(1.0, chance);
}

CountSpread mixture(std::span<const double> weights, std::span<const CountSpread> parts) {
    assert(!parts.empty() && weights.size() == parts.size());
    auto first = parts[0].first();
    auto last = parts[0].last();
    for (const auto& part : parts) {
        first = std::min(first, part.first());
        last = std::max(last, part.last());
    }
    std::vector<double> chances(static_cast<std::size_t>(last - first) + 1);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto at = static_cast<std::size_t>(parts[i].first() - first);
        for (const double chance : parts[i].chances()) chances[at++] += weights[i] * chance;
    }
    return {first, std::move(chances)};
}

}  // namespace tenthday
