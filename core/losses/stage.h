/// @file stage.h  One stage of losses: how many of a count pass it.
#pragma once
#include <cstdint>

#include "losses/count_spread.h"

namespace tenthday {

/// What is known of a stage's rate: it differs from batch to batch, and each batch has its own.
struct StageRate {
    double mean = 1;  ///< share that passes, on the mean of batches, 0..1
    double sd = 0;    ///< standard deviation of that share between batches; 0: all batches alike

    friend bool operator==(const StageRate&, const StageRate&) = default;
};

/// What was seen of one stage: so many came to it, so many passed.
struct StageCount {
    std::int32_t tried = 0;
    std::int32_t passed = 0;

    friend bool operator==(const StageCount&, const StageCount&) = default;
};

/// Correlation between two cells of one batch, rho = sd^2 / (mean (1 - mean)), 0 to
/// kMostCorrelation. A spread between batches that no share could have is cut to that.
inline constexpr double kMostCorrelation = 0.9;
[[nodiscard]] double correlation(const StageRate& rate);

/// How many pass. The batch's own share is a beta variable, so of n cells the number that pass is
/// beta-binomial (standard statistics: mean n m, variance n m (1 - m) (1 + (n - 1) rho)), binomial
/// where batches do not differ; of an uncertain number it is the mixture of these.
[[nodiscard]] CountSpread passed(const CountSpread& before, const StageRate& rate);

/// The rate for the rest of a batch of which a part is seen: the beta distribution updated by it,
/// a' = a + passed, b' = b + tried - passed. What is impossible (more passed than tried) is
/// ignored.
[[nodiscard]] StageRate given(const StageRate& rate, const StageCount& seen);

}  // namespace tenthday
