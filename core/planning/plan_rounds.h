/// @file plan_rounds.h  Solved again until every order is as sure as it must be. Inner to the room.
#pragma once
#include "planning/plan_solve.h"
#include "planning/plan_told.h"

namespace tenthday {

/// What no plan is better than: solved with the least margins and with cuts alone, in the season
/// whose weather is best. Where hours a day are limited all of it is 0.
struct PlanFloor {
    bool isProven = false;
    double weighed = 0;  ///< short at the least, by weight
    std::int32_t graftDays = 0;
    double grafts = 0;  ///< of plans with so few graft days
};

struct PlanRounds {
    PlanSolution solution;
    std::vector<ProposedBatch> batches;
    PlannedSeason season;
    PlanFloor floor;
    std::int32_t rounds = 0;
    bool isMet = false;  ///< every order of the problem is as sure as it must be
};

/// Margins begin with what no plan does without. The exact chance of each order tells which are not
/// sure enough yet: where it hangs on one batch at the most, a cut says that some batch gives it
/// more, and it is solved anew, up to 20 rounds. Where several batches share the number a cut would
/// only make them share it in other ways, and after the 20 rounds: so many more are asked for as
/// the order lacks at the chance it must have, up to 20 rounds again. It ends when all are sure, or
/// no more can be had. The best plan of all rounds is the answer.
/// @param onlyWhole  ends as soon as it is known that something stays short
[[nodiscard]] Result<PlanRounds> planInRounds(const Snapshot& snapshot, const PlanSite& site,
                                              const Solver& solver, PlanBudget& budget,
                                              bool onlyWhole = false);

}  // namespace tenthday
