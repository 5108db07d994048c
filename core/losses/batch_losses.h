/// @file batch_losses.h  What becomes of one batch: how likely each number of cells or queens is.
#pragma once
#include <array>
#include <cstdint>

#include "losses/chain_rates.h"
#include "losses/count_spread.h"

namespace tenthday {

/// How a batch stands: what is known of it, and so where its further way is open. Bars add up,
/// and so do the nucs of a batch that are looked at on different days.
struct BatchStanding {
    /// Known to have come so far and no further yet, by ChainPoint. What was lost stands nowhere.
    std::array<std::int32_t, kChainPoints> at{};
    /// Outcomes of its own: they speak for the part of the batch that is not seen yet. Those of
    /// mating do not, as they hold the weather too.
    PerStage<StageCount> seen;

    [[nodiscard]] std::int32_t& operator[](ChainPoint point) {
        return at[static_cast<std::size_t>(point)];
    }
    [[nodiscard]] std::int32_t operator[](ChainPoint point) const {
        return at[static_cast<std::size_t>(point)];
    }
    BatchStanding& operator+=(const BatchStanding& other);
    friend bool operator==(const BatchStanding&, const BatchStanding&) = default;
};

/// A bar or batch of so many grafts (>= 0), of which the last count seen replaces all before it.
[[nodiscard]] BatchStanding standing(std::int32_t grafts, const SeenCounts& seen = {},
                                     Given given = Given::Sealed);

/// How many come to a point of the chain or beyond; of a point that lies behind the batch, what is
/// left now and not what was then. Stages compound: the number before a stage is a
/// mixture after it; a batch has one share of its own at each stage (see passed()).
/// @param seasonShare  the weather of one season, 0..1: of virgins that would mate in fair weather,
///        the share that finds flying days (and, where a day is asked about, lays or is good by
///        then). Each virgin has this chance, given the season. Counts from Laying on.
[[nodiscard]] CountSpread reached(const BatchStanding& batch, const ChainRates& rates,
                                  ChainPoint point, double seasonShare = 1);

/// The two halves of reached() for Laying and Good, so that many seasons share the first: queens
/// that would mate in fair weather, and what a season's weather leaves of them. Those that are
/// known to have mated come in the second.
[[nodiscard]] CountSpread matedInFairWeather(const BatchStanding& batch, const ChainRates& rates);
[[nodiscard]] CountSpread reachedUnder(const CountSpread& matedInFair, const BatchStanding& batch,
                                       const ChainRates& rates, ChainPoint point,
                                       double seasonShare);

}  // namespace tenthday
