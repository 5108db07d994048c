/// @file adopt.h  A plan, or some of it, taken over into the book.
#pragma once
#include <span>
#include <vector>

#include "base/id_source.h"
#include "planning/plan_answer.h"
#include "records/change_set.h"

namespace tenthday {

/// The edit that makes these proposals batches, one step to undo: labels counted on from the last
/// batch; bars with breeder queens and builders; cells by yard; cells for orders for cells and
/// virgins planned to be sold and caged; make-ups as those of the newest batch. Refused in the
/// words of the records.
[[nodiscard]] Result<ChangeSet> adopt(const Snapshot& snapshot,
                                      std::span<const ProposedBatch> batches,
                                      const IdSource& newId);

/// The same with the ids of the batches, in the order of the proposals.
struct Adopted {
    ChangeSet changes;
    std::vector<Id<Batch>> batches;
};
[[nodiscard]] Result<Adopted> adoptNamed(const Snapshot& snapshot,
                                         std::span<const ProposedBatch> batches,
                                         const IdSource& newId);

}  // namespace tenthday
