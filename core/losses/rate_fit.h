/// @file rate_fit.h  What a breeder's own outcomes say of a stage's rate.
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <string>

#include "losses/chain_rates.h"

namespace tenthday {

/// The outcome of one batch at one stage. Of mating: tried are the virgins that met flying weather
/// (all, where it is not known), as weather is reckoned apart.
struct OwnOutcome {
    StageCount count;
    /// Why it is left out of the fit: an odd batch, in the user's words. Empty: it counts.
    std::string leftOut;
};

/// A share with the range that holds it with 80 % (10 to 90 % of its distribution).
struct RangedShare {
    double value = 0;
    double low = 0;
    double high = 0;

    friend bool operator==(const RangedShare&, const RangedShare&) = default;
};

/// What is believed before any outcome. The rate of an operation is a beta variable, the spread
/// between its batches log-normal, each independent of the other.
struct RatePrior {
    double rate = 0.5;       ///< mean of the rate, above 0 and below 1
    double rateSd = 0.1;     ///< standard deviation of the rate between operations
    double spread = 0;       ///< mean of the standard deviation between batches; 0: surely none
    double spreadLogSd = 0;  ///< standard deviation of the logarithm of that

    friend bool operator==(const RatePrior&, const RatePrior&) = default;
};

/// The prior a fact stands for: its value in force is the mean; its range, lowest to highest found
/// in print or use, is taken as four standard deviations (two each way), of the spread in its
/// logarithm. A rate's is narrowed until a and b of the beta distribution are 2 or more, so that
/// neither "none" nor "all" is the likeliest of operations. A value of the user's own outside the
/// range widens it.
[[nodiscard]] RatePrior priorOf(const Facts& facts, LossStage stage);

/// Prior, own record and what follows from both, side by side.
struct RateFit {
    RangedShare priorRate;
    RangedShare priorSpread;  ///< standard deviation between batches
    /// Pooled share of the own record; the range is what it alone says (every rate as likely as
    /// any other beforehand, spread between batches reckoned in). Nothing without outcomes.
    std::optional<RangedShare> ownRate;
    RangedShare rate;
    RangedShare spread;
    std::int32_t batches = 0;  ///< that counted
    StageCount record;         ///< their sum
    std::int32_t leftOut = 0;  ///< batches left out, each with its reason

    /// The rate to reckon with: means of both. With no outcome that is the prior's own.
    [[nodiscard]] StageRate use() const { return {rate.value, spread.value}; }
};

/// The posterior over rate and spread on a grid (Bayes' rule; each batch's outcome beta-binomial,
/// see passed()). Where batches do not differ it is the conjugate beta distribution. Outcomes that
/// cannot be (none tried, more passed than tried) do not count.
[[nodiscard]] RateFit fitRate(const RatePrior& prior, std::span<const OwnOutcome> outcomes);

/// RateFit::use() of that, on a coarser grid and without what is only for show: within 0.002 of it.
[[nodiscard]] StageRate fittedRate(const RatePrior& prior, std::span<const OwnOutcome> outcomes);

/// Outcomes that count: not left out, and such as can be.
[[nodiscard]] std::int32_t batchesThatCount(std::span<const OwnOutcome> outcomes);

}  // namespace tenthday
