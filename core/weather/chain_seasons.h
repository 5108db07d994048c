/// @file chain_seasons.h  Possible seasons that a chain of flying days can make, spread evenly.
#pragma once
#include <cstdint>
#include <vector>

#include "weather/flying_chain.h"

namespace tenthday {

/// How many seasons stand for a chain.
inline constexpr std::size_t kChainSeasons = 240;

/// Seasons as likely as one another that stand for a chain where chances of several batches hang on
/// its weather together. The same at every call: on each day the chances 0 to 1 are cut into as
/// many equal steps as there are seasons and handed out in a fixed, mixed order (a Latin square),
/// so that each day flies in very nearly the share of seasons that is its chance. Gaps do not fly.
/// @return flags of the window's days, by season
[[nodiscard]] std::vector<std::vector<std::uint8_t>> chainSeasons(
    const FlyingChain& chain, std::size_t seasons = kChainSeasons);

}  // namespace tenthday
