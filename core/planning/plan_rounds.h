/// @file plan_rounds.h  Solved again until every order is as sure as it must be. Inner to the room.
#pragma once
#include "planning/plan_solve.h"
#include "planning/plan_told.h"

namespace tenthday {

struct PlanRounds {
    PlanSolution solution;
    std::vector<double> margins;  ///< by demand, with which it was solved
    std::vector<ProposedBatch> batches;
    PlannedSeason season;
    std::int32_t rounds = 0;
};

/// Margins begin with nothing: enough is expected. After each plan the exact chance of each order
/// tells how many it lacks at the chance it must have; so many more are asked for. It ends when all
/// are as sure as they must be, when no more can be had, or after 20 rounds.
[[nodiscard]] Result<PlanRounds> planInRounds(const Snapshot& snapshot, const PlanSite& site,
                                              const Solver& solver, PlanBudget& budget);

}  // namespace tenthday
