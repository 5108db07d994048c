#include "losses/stage.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace tenthday {
namespace {

// Of n cells k pass with the chance A(k) B(n - k) / C(n), where A, B and C are negative binomial of
// sizes a, b and a + b (Poisson where batches do not differ): counts that are independent, given
// their sum. So a whole mixture is one convolution, without a logarithm per number. All three can
// be tilted to one mean sum M; they then span a range that a double holds as long as n is near M.
// Therefore numbers n are taken in blocks, each with an M of its own.
constexpr std::int32_t kBlock = 512;
constexpr double kNothing = 1e-280;  // before numbers get slow and inexact

using Chances = std::vector<double>;

/// One of A, B, C up to a factor. Terms f(k + 1) / f(k) = (share + k widening) t / (k + 1).
struct Series {
    double share;     ///< m, 1 - m or 1
    double widening;  ///< 1 / (a + b)
    double t;         ///< tilt

    [[nodiscard]] double ratio(std::int32_t k) const {
        return (share + k * widening) * t / (k + 1);
    }
    /// Values of 0..last, 1 at `start`.
    [[nodiscard]] Chances values(std::int32_t last, std::int32_t start) const {
        Chances f(static_cast<std::size_t>(last) + 1);
        f[static_cast<std::size_t>(start)] = 1;
        for (auto k = start; k < last && f[k] > kNothing; ++k) f[k + 1] = f[k] * ratio(k);
        for (auto k = start; k > 0 && f[k] > kNothing; --k) f[k - 1] = f[k] / ratio(k - 1);
        return f;
    }
};

/// Adds to `chances` what comes of the numbers lo..hi before the stage.
void addBlock(Chances& chances, const CountSpread& before, std::int32_t lo, std::int32_t hi,
              double mean, double widening) {
    const auto middle = (lo + hi) / 2;
    const double sum = std::max(0.5, static_cast<double>(middle));
    const double t = sum / (1 + sum * widening);
    const auto pass = static_cast<std::int32_t>(std::lround(mean * middle));
    const auto a = Series{mean, widening, t}.values(hi, pass);
    const auto b = Series{1 - mean, widening, t}.values(hi, middle - pass);
    const auto c = Series{1, widening, t}.values(hi, middle);
    double scale = 0;  // of C: the chances for one n must sum to 1
    for (std::int32_t k = 0; k <= middle; ++k) scale += a[k] * b[middle - k];

    Chances sums(static_cast<std::size_t>(hi) + 1);
    for (auto n = lo; n <= hi; ++n) {
        const double weight = before.of(n) / (c[n] * scale);
        for (std::int32_t k = 0; k <= n; ++k) sums[k] += weight * b[n - k];
    }
    for (std::int32_t k = 0; k <= hi; ++k) chances[k] += a[k] * sums[k];
}

}  // namespace

double correlation(const StageRate& rate) {
    const double most = rate.mean * (1 - rate.mean);
    if (rate.sd <= 0 || most <= 0) return 0;
    return std::min(rate.sd * rate.sd / most, kMostCorrelation);
}

CountSpread passed(const CountSpread& before, const StageRate& rate) {
    if (rate.mean <= 0) return CountSpread(0);
    if (rate.mean >= 1) return before;
    const double rho = correlation(rate);
    const double widening = rho / (1 - rho);  // 1 / (a + b), as rho = 1 / (a + b + 1)
    Chances chances(static_cast<std::size_t>(before.last()) + 1);
    for (auto lo = before.first(); lo <= before.last(); lo += kBlock)
        addBlock(chances, before, lo, std::min(lo + kBlock - 1, before.last()), rate.mean,
                 widening);
    return {0, std::move(chances)};
}

StageRate given(const StageRate& rate, const StageCount& seen) {
    const double rho = correlation(rate);
    if (rho <= 0 || seen.tried <= 0 || seen.passed < 0 || seen.passed > seen.tried) return rate;
    const double size = 1 / rho - 1;  // a + b
    const double mean = (rate.mean * size + seen.passed) / (size + seen.tried);
    return {mean, std::sqrt(mean * (1 - mean) / (size + seen.tried + 1))};
}

}  // namespace tenthday
