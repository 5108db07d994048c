/// @file season_counts.h  Several batches under the weather of one season, over all that can be.
#pragma once
#include <cstddef>
#include <span>
#include <vector>

#include "losses/batch_losses.h"

namespace tenthday {

/// A batch with the weather it meets in each possible season.
struct SeasonBatch {
    BatchStanding standing;
    ChainRates rates;
    /// By season, as many as there are; see reached(). Empty: 1 in all of them.
    std::vector<double> seasonShare;
};

/// How many come of some batches together. Given the season batches do not hang on each other, so
/// they add (convolution); the season is shared by all, so chances are means over the seasons. One
/// bad season takes from every batch: many batches are no surety against it.
class SeasonCounts {
public:
    /// @param weights  of the possible seasons, none negative, not all 0, scaled to sum 1; empty:
    ///        one season
    SeasonCounts(std::span<const SeasonBatch> batches, std::span<const double> weights,
                 ChainPoint point);

    [[nodiscard]] std::size_t seasons() const { return which_.size(); }
    /// The spread in one season, 0..seasons()-1.
    [[nodiscard]] const CountSpread& in(std::size_t season) const {
        return counts_[which_[season]];
    }
    /// How likely a season is, 0..1.
    [[nodiscard]] double weight(std::size_t season) const { return seasonWeights_[season]; }
    /// Chance of so many or more, over all seasons.
    [[nodiscard]] double atLeast(std::int32_t count) const;
    /// The spread over all seasons.
    [[nodiscard]] CountSpread overall() const { return mixture(weights_, counts_); }

private:
    std::vector<double> seasonWeights_;
    std::vector<std::size_t> which_;   ///< season to its spread
    std::vector<CountSpread> counts_;  ///< of seasons with different weather
    std::vector<double> weights_;      ///< of counts_
};

}  // namespace tenthday
