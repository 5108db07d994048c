/// @file chain.h  What is left of a graft after each stage: expected counts.
#pragma once
#include <optional>

#include "facts/facts.h"

namespace tenthday {

/// Counts along the chain. Means, so not whole; an observed count is.
struct ChainCounts {
    double grafted = 0;
    double accepted = 0;  ///< started cells at the take count
    double sealed = 0;
    double ripe = 0;  ///< cells that come out on the cells day
    double emerged = 0;
    double laying = 0;  ///< mated in fair weather
    double good = 0;    ///< judged good

    ChainCounts& operator+=(const ChainCounts& other);
};

/// Counts seen; each replaces its expectation and carries the rest.
struct SeenCounts {
    std::optional<double> grafted;
    std::optional<double> accepted;
    std::optional<double> sealed;
    std::optional<double> ripe;
    std::optional<double> emerged;
};

/// Expected counts from so many grafts. Rates: facts accepted, sealed, emerged, mated, judged_good.
[[nodiscard]] ChainCounts expectedCounts(const Facts& facts, double grafts,
                                         const SeenCounts& seen = {});

/// Of cells placed, the chance of a laying queen at the first look; of virgins, where they are out
/// already.
[[nodiscard]] double layingShare(const Facts& facts, bool emerged = false);

}  // namespace tenthday
