/// @file chain.h  What is left of a graft after each stage: expected counts.
#pragma once
#include <cstdint>
#include <optional>

#include "facts/facts.h"

namespace tenthday {

/// What leaves the builder for the nucs.
enum class Given : std::uint8_t {
    Open,    ///< started cells, not yet sealed: "young cells", on day 3
    Sealed,  ///< ripe cells
    Virgin,  ///< queens that are out
};

/// Counts along the chain. Means, so not whole; an observed count is.
struct ChainCounts {
    double grafted = 0;
    double accepted = 0;  ///< started cells at the take count
    double sealed = 0;
    double ripe = 0;  ///< cells that come out on the cells day; started ones where those are given
    double emerged = 0;
    double laying = 0;  ///< mated
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
/// @param accepted  share of grafts that are started, where it is not the fact's
[[nodiscard]] ChainCounts expectedCounts(const Facts& facts, double grafts,
                                         const SeenCounts& seen = {}, Given given = Given::Sealed,
                                         std::optional<double> accepted = {});

/// Of cells or virgins placed, the chance of a laying queen at the first look.
[[nodiscard]] double layingShare(const Facts& facts, Given given = Given::Sealed);

}  // namespace tenthday
