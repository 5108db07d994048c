/// @file choose_nucs.h  Which of the ready nucs get the cells: fewest yards, then longest ready.
#pragma once
#include <set>
#include <span>
#include <vector>

#include "calendar/day.h"

namespace tenthday {

/// A nuc on offer for a cell.
struct NucOffer {
    std::size_t nuc = 0;   ///< whatever the caller knows it by
    std::size_t stop = 0;  ///< place of its yard on the round
    Day since;             ///< ready since then
    bool certain = false;  ///< surely ready, not by plan only
};

/// Yards up to this number are tried in all ways; of more, those with most nucs are taken.
inline constexpr std::size_t kExactYards = 12;

/// Chooses nucs for so many cells (all there are where they are fewer). In this order: most surely
/// ready nucs; fewest yards, those of `used` costing nothing; longest ready, by the sum of days;
/// yards early on the round. Exact up to kExactYards yards that are not used yet.
/// @return  indices into `offers`, rising
[[nodiscard]] std::vector<std::size_t> chooseNucs(std::span<const NucOffer> offers,
                                                  std::size_t cells,
                                                  const std::set<std::size_t>& used);

}  // namespace tenthday
