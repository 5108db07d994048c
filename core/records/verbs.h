/// @file verbs.h  Edits by name. Each looks at a snapshot and says what rows change, or why not.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// Moves a batch so that its start falls on `day`; its planned placements and the planned make-ups
/// of its builders move along. Once grafted, only what is planned ahead of today moves, by as many
/// days as the graft would. Empty when nothing changes.
[[nodiscard]] Result<ChangeSet> moveBatch(const Snapshot& snapshot, Id<Batch> batch, Day day);

/// Moves a batch's cells to another builder at one step: all bars that stand in `from`.
[[nodiscard]] Result<ChangeSet> moveLoad(const Snapshot& snapshot, Id<Batch> batch,
                                         std::int32_t step, Id<Builder> from, Id<Builder> to);

/// Sets a trade number of the user's own, in the fact's unit; none goes back to the default.
/// Refused outside the bounds of Facts::set. @param fresh  id of the row, should it be a new one
[[nodiscard]] Result<ChangeSet> setFact(const Snapshot& snapshot, Fact fact,
                                        std::optional<double> value, Id<FactOverride> fresh);

}  // namespace tenthday
