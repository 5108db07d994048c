/// @file verbs.h  Edits by name. Each looks at a snapshot and says what rows change, or why not.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// Moves a batch so that its start falls on `day`; its planned placements and make-ups move along.
/// Once grafted, only what is planned ahead of today moves, by as many days as the graft would.
/// Empty when nothing changes; refused outside the season (checkStart).
[[nodiscard]] Result<ChangeSet> moveBatch(const Snapshot& snapshot, Id<Batch> batch, Day day);

/// Refuses a start outside the season shown: the batch would be kept and not seen again.
[[nodiscard]] Result<void> checkStart(const Snapshot& snapshot, const std::string& label, Day day);

/// What is planned for a batch's nucs moves by so many days: placements not done yet, stays for
/// mating that are not past. Adds to `changes`.
void moveNucPlans(const Snapshot& snapshot, Id<Batch> batch, Days by, ChangeSet& changes);
/// Likewise the make-ups, ahead of today, that serve this batch alone.
void moveMakeUps(const Snapshot& snapshot, const Batch& batch, Days by, ChangeSet& changes);

/// Moves a batch's cells to another builder at one step: all bars that stand in `from`.
[[nodiscard]] Result<ChangeSet> moveLoad(const Snapshot& snapshot, Id<Batch> batch,
                                         std::int32_t step, Id<Builder> from, Id<Builder> to);

/// What goes into a nuc, or into many alike.
struct StockingPlan {
    Day day;
    std::optional<Hour> hour;
    std::optional<BeesMl> beesMl;
    std::optional<Frames> broodFrames;
    bool openBrood = false;
    std::string donor;
};

/// Stocks nucs, one row each. Refused where a side does not exist, where its layout is not in force
/// or its box stands nowhere on that day, or where it is stocked on that day already.
/// @param fresh  ids of the rows, as many as sides
[[nodiscard]] Result<ChangeSet> stockNucs(const Snapshot& snapshot,
                                          const std::vector<Id<NucSide>>& sides,
                                          const StockingPlan& plan,
                                          const std::vector<Id<Stocking>>& fresh);

/// Sets a trade number of the user's own, in the fact's unit; none goes back to the default.
/// Refused outside the bounds of Facts::set. @param fresh  id of the row, should it be a new one
[[nodiscard]] Result<ChangeSet> setFact(const Snapshot& snapshot, Fact fact,
                                        std::optional<double> value, Id<FactOverride> fresh);

}  // namespace tenthday
