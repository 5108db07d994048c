/// @file rate_grid.h  Weights on a grid over a stage's rate and its spread between batches.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

#include "losses/stage.h"

namespace tenthday {

/// Outcomes of some batches, kept as their likelihood needs them: how many of them reach a number.
class OutcomeTally {
public:
    /// @param outcomes  each with 0 <= passed <= tried
    explicit OutcomeTally(std::span<const StageCount> outcomes);

    /// Logarithm of the chance of these outcomes, but for a constant. With w = 1 / (a + b) and m
    /// the mean, the beta-binomial chance of k of n is C(n, k) prod_{i<k} (m + i w) prod_{i<n-k} (1
    /// - m + i w) / prod_{i<n} (1 + i w); w = 0: binomial.
    [[nodiscard]] double logChance(const StageRate& rate) const;

private:
    /// From one number to another, as many batches have more than that.
    struct Run {
        std::int32_t from;
        std::int32_t to;
        int batches;
    };
    using Runs = std::vector<Run>;
    static Runs runsOf(std::vector<std::int32_t> counts);
    static double logProduct(const Runs& runs, double share, double widening);

    Runs passed_;
    Runs failed_;
    Runs tried_;
};

/// Cells side by side, each with a value and a weight; the weights sum to 1. One cell without width
/// is a value that is sure.
struct WeightedGrid {
    std::vector<double> edges;  ///< one more than values
    std::vector<double> values;
    std::vector<double> weights;

    /// Sum of value times weight.
    [[nodiscard]] double mean() const;
    /// Where a share q lies below (0 < q < 1), linear within a cell.
    [[nodiscard]] double quantile(double q) const;
};

/// How many cells a grid has.
struct GridCells {
    std::size_t coarse = 80;   ///< rates, while what is likely is sought
    std::size_t rates = 200;   ///< over what is likely
    std::size_t spreads = 25;  ///< over three standard deviations of the logarithm either way
};
/// Enough for means, to the third digit, at a fifth of the time.
inline constexpr GridCells kForMeans{20, 30, 25};

/// A log-normal spread on a grid: its mean, and the standard deviation of its logarithm. A mean of
/// 0 is sure; so is any without a standard deviation.
[[nodiscard]] WeightedGrid logNormalGrid(double mean, double logSd, const GridCells& cells = {});

/// A beta density, up to a factor: x^(a - 1) (1 - x)^(b - 1).
struct BetaShape {
    double a = 1;
    double b = 1;
};

/// What is believed of rate and spread, each by itself (marginal distributions).
struct RateBelief {
    WeightedGrid rate;
    WeightedGrid spread;
};

/// Prior times likelihood over rate and spread, then the margins. The grid of rates narrows to
/// where they can be; that of spreads is the prior's.
[[nodiscard]] RateBelief beliefAfter(const BetaShape& rate, const WeightedGrid& spread,
                                     const OutcomeTally& outcomes, const GridCells& cells = {});

}  // namespace tenthday
