/// @file own_rates.h  The rates of losses of this operation: from its batches' outcomes.
#pragma once
#include "losses/rate_fit.h"
#include "supply/nuc_room.h"

namespace tenthday {

/// What one batch says of a stage.
struct BatchOutcome {
    Id<Batch> batch;
    std::string label;
    OwnOutcome outcome;  ///< with why it is left out, where it is
};

/// By stage, each with the batches that have an outcome there, in the order of `timelines`. Rules:
///
/// - Accepted: grafts and the take count of bars (or the batch). Bars that stood in a dearth, and
///   batches of bought cells, say nothing.
/// - Sealed: from the take count to the count of sealed cells.
/// - Emerged: of cells that went into nucs, those whose queen was seen out, or lays; all nucs of
///   the batch that have anything seen.
/// - Mated: virgins known to be out that met flying weather, and of these, those seen laying. A
///   round that still waits says nothing. A virgin whose days at risk had fewer flying days than
///   she needs met none; without weather all met it.
/// - Judged good: laying queens under a rule by sealed brood that were caught or judged good, of
///   these and the drone layers.
[[nodiscard]] PerStage<std::vector<BatchOutcome>> ownOutcomes(const Snapshot& snapshot,
                                                              const Timelines& timelines,
                                                              const NucOutlook& nucs,
                                                              const MatingTable& mating);

/// Prior, own record and result, side by side.
struct OwnRates {
    PerStage<std::vector<BatchOutcome>> outcomes;
    PerStage<RateFit> fits;
};
[[nodiscard]] OwnRates ownRates(const Snapshot& snapshot, const Timelines& timelines,
                                const NucOutlook& nucs, const MatingTable& mating);

/// Batches whose outcomes speak for a stage before its own rate is used in chances.
inline constexpr std::int32_t kBatchesToSpeak = 3;

/// A rate of one's own is used for a stage: kBatchesToSpeak batches or more speak for it, and its
/// fact is not set by hand, which always goes first.
[[nodiscard]] bool isOwnRateInForce(const Snapshot& snapshot, const OwnRates& rates,
                                    LossStage stage);

/// The rates for chances of orders and promises; elsewhere (counts in timelines, tasks, nucs) the
/// facts stand.
[[nodiscard]] ChainRates ratesInForce(const Snapshot& snapshot, const OwnRates& rates);

}  // namespace tenthday
