/// @file random_season.h  A made-up season from a seed, with rows of every kind.
#pragma once
#include <cstdint>

#include "records/snapshot.h"

namespace tenthday::test {

/// The same snapshot for the same seed on every machine. Labels hold commas, quotes, line breaks
/// and other letters; boxes move and are laid out anew; some rows have all fields, some few.
[[nodiscard]] Snapshot randomSeason(std::uint32_t seed);

}  // namespace tenthday::test
