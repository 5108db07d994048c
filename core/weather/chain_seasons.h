/// @file chain_seasons.h  Possible seasons that a chain of flying days can make, spread evenly.
#pragma once
#include <cstdint>
#include <vector>

#include "weather/flying_chain.h"

namespace tenthday {

/// How many seasons stand for a chain.
inline constexpr std::size_t kChainSeasons = 240;

/// Seasons as likely as one another that stand for a chain where chances of several batches hang on
/// its weather together. The same at every call: day by day, of the seasons that flew the day
/// before and of those that did not, as many fly as the chain's chances say, picked in a fixed,
/// mixed order. So each day flies in its share of seasons but for rounding. Gaps do not fly.
/// @return flags of the window's days, by season
[[nodiscard]] std::vector<std::vector<std::uint8_t>> chainSeasons(
    const FlyingChain& chain, std::size_t seasons = kChainSeasons);

}  // namespace tenthday
