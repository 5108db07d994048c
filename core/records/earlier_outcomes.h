/// @file earlier_outcomes.h  What batches of seasons before the one shown say of the rates of
/// losses: read once beside a snapshot, which holds the batches of one season only.
#pragma once
#include <string>
#include <vector>

#include "calendar/day.h"
#include "losses/chain_rates.h"
#include "records/rows.h"

namespace tenthday {

struct EarlierOutcome {
    Id<Batch> batch;
    std::string label;
    Day day;                      ///< its graft or start
    PerStage<StageCount> counts;  ///< see ownOutcomes(); none tried where it says nothing
    friend bool operator==(const EarlierOutcome&, const EarlierOutcome&) = default;
};

struct EarlierOutcomes {
    std::vector<EarlierOutcome> batches;  ///< by day, then as their labels stand
    friend bool operator==(const EarlierOutcomes&, const EarlierOutcomes&) = default;
};

}  // namespace tenthday
