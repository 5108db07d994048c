/// @file own_rates.h  The rates of losses of this operation: from its batches' outcomes.
#pragma once
#include "losses/rate_fit.h"
#include "records/earlier_outcomes.h"
#include "supply/nuc_room.h"

namespace tenthday {

/// What one batch says of a stage.
struct BatchOutcome {
    Id<Batch> batch;
    std::string label;
    Day day;             ///< its graft or start
    OwnOutcome outcome;  ///< with why it is left out, where it is
};

/// By stage, each with the batches that have an outcome there: those of earlier seasons that came
/// with the snapshot, then the season's in the order of `timelines`. Rules:
///
/// - Accepted: of the grafts of bars whose graft is recorded, those started by the take count. Bars
///   in a dearth without feed have a rate of their own and say nothing.
/// - Sealed: of cells started, those counted as sealed.
/// - Emerged: of nucs looked at before her first flights, those in which the virgin was seen.
/// - Mated: of virgins that met flying weather, those seen laying. Those that were never seen are
///   reckoned: of nucs found without a queen, the share that had one by the facts. A virgin met
///   none where all days on which she could have flown are known to be without flying. One that is
///   still waited for says nothing.
/// - Judged good: of queens seen laying that wait for their brood, those judged good or caught; the
///   others were lost or laid drones.
///
/// An odd batch (LeftOut) is named with its reason.
[[nodiscard]] PerStage<std::vector<BatchOutcome>> ownOutcomes(const Snapshot& snapshot,
                                                              const Timelines& timelines,
                                                              const NucOutlook& nucs,
                                                              const MatingTable& mating);

/// What the batches of one season say: what later seasons learn from it.
[[nodiscard]] std::vector<EarlierOutcome> outcomesOfSeason(const Snapshot& snapshot,
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
/// The same, without what is only for show.
[[nodiscard]] ChainRates ratesInForce(const Snapshot& snapshot,
                                      const PerStage<std::vector<BatchOutcome>>& outcomes);

}  // namespace tenthday
