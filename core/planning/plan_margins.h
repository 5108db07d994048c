/// @file plan_margins.h  What must be expected beyond what is wanted, for a plan to be as sure as
/// it must be. Inner to the room.
#pragma once
#include <vector>

#include "planning/plan_problem.h"

namespace tenthday {

/// By demand: what no plan does without. Were every cell to go by itself, with no luck that a batch
/// or a season shares, numbers would lie closest together; so many must be expected even then for
/// the chance that `sure` asks for. Of a demand that may fail oftener than not it is below 0: that
/// so many are there with chance s takes no more than s times as many expected (Markov).
[[nodiscard]] std::vector<double> leastMargins(const PlanProblem& problem);

/// Fewest pieces, each good with chance `share` by itself, of which `wanted` are good with chance
/// `sure`. @param wanted >= 1  @param share, sure  above 0, below 1
[[nodiscard]] std::int32_t fewestPieces(std::int32_t wanted, double share, double sure);

}  // namespace tenthday
