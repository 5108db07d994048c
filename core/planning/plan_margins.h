/// @file plan_margins.h  What must be expected beyond what is wanted, for a plan to be as sure as
/// it must be. Inner to the room.
#pragma once
#include <vector>

#include "planning/plan_problem.h"

namespace tenthday {

/// By demand: what no plan does without. Were every cell to go by itself, with no luck that a batch
/// or a season shares, numbers would lie closest together; so many must be expected even then for
/// the chance that `sure` asks for. Of very few, and of a demand that must be less sure than kOften
/// it is below 0: that so many are there with chance s takes no more than s times as many expected
/// (Markov). It holds of the problem in its best season (inBestSeason()); with the mean of seasons
/// it is what a search for a plan may begin with, and a plan could do with less.
[[nodiscard]] std::vector<double> leastMargins(const PlanProblem& problem);
/// The same beyond what those demands want whose queens fit it, where it asks for a line or for
/// proven queens; of other demands 0.
[[nodiscard]] std::vector<double> leastOwnMargins(const PlanProblem& problem);

/// Luck that cells share makes an order surer where it may fail nearly as often as not; from here
/// on it does not, for spreads between batches up to thrice those of the facts (a test goes through
/// them by the exact chances).
inline constexpr double kOften = 0.6;

/// Fewest pieces, each good with chance `share` by itself, of which `wanted` are good with chance
/// `sure`. @param wanted >= 1  @param share, sure  above 0, below 1
[[nodiscard]] std::int32_t fewestPieces(std::int32_t wanted, double share, double sure);

}  // namespace tenthday
