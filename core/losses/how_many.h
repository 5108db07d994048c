/// @file how_many.h  How many grafts for so many queens at this chance; both ways round.
#pragma once
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

#include "losses/season_counts.h"

namespace tenthday {

/// A batch still to be grafted: its part of the grafts and the weather it would meet.
struct SplitBatch {
    double share = 1;  ///< part of all grafts, in proportion; > 0
    ChainRates rates;
    std::vector<double> seasonShare;  ///< as in SeasonBatch
};

/// How grafts are split over batches. The answer hangs on it: batches differ, and one of ten is no
/// such blow as one of two.
struct Split {
    std::vector<SplitBatch> batches;
    std::vector<SeasonBatch> underway;    ///< grafted already: they count towards the number wanted
    std::vector<double> seasonWeights;    ///< as in SeasonCounts
    ChainPoint point = ChainPoint::Good;  ///< what is wanted
};

/// The whole grafts of each batch, of so many in all (>= 0): the method of odd divisors (Webster),
/// so that more in all never means fewer in one of them.
[[nodiscard]] std::vector<std::int32_t> graftsOf(const Split& split, std::int32_t total);

/// What comes of these grafts, by batch of the split.
[[nodiscard]] SeasonCounts countsOf(const Split& split, std::span<const std::int32_t> grafts);

/// Chance that these grafts give so many or more, 0..1.
[[nodiscard]] double chanceOf(const Split& split, std::span<const std::int32_t> grafts,
                              std::int32_t wanted);

/// Answer to "how many grafts".
struct GraftsNeeded {
    /// The fewest in all that reach the chance; nothing where no number up to the most does.
    std::optional<std::int32_t> total;
    std::vector<std::int32_t> grafts;  ///< by batch: of the total, or of the most
    double chance = 0;                 ///< that these give so many
    /// Chance of a season in which this split can give any more at all: no number of grafts comes
    /// above it. 1 where enough is underway.
    double ceiling = 1;
};

/// More than this is no answer to work with.
inline constexpr std::int32_t kMostGrafts = 1000;

/// The fewest grafts, split in proportion, for `wanted` (>= 0) or more with this chance (0..1).
[[nodiscard]] GraftsNeeded graftsNeeded(const Split& split, std::int32_t wanted, double chance,
                                        std::int32_t most = kMostGrafts);

/// The split with one batch more, as large as the others on the mean and with the rates of the
/// last. A split without a batch stays without.
/// @param seasonShare  the weather that batch would meet
[[nodiscard]] Split withOneMore(const Split& split, std::vector<double> seasonShare);

}  // namespace tenthday
