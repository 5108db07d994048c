/// @file chart_verbs.h  Edits made by hand on the season chart.
#pragma once
#include <utility>

#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// One change set that does one after the other, named as the first. A row that both touch changes
/// once. @param then  made on the snapshot after `first`
[[nodiscard]] ChangeSet joined(ChangeSet first, const ChangeSet& then);

/// Moves several batches by as many days, in one edit (see moveBatch). Refused as a whole where one
/// of them cannot be moved. The subject names the first three.
[[nodiscard]] Result<ChangeSet> moveBatches(const Snapshot& snapshot,
                                            const std::vector<Id<Batch>>& batches, Days by);

/// A batch's cells of one step and where they go.
struct LoadMove {
    Id<Batch> batch;
    std::int32_t step = 1;
    std::vector<std::int32_t> bars;
    std::optional<Id<Builder>> from;  ///< none: they have no builder yet
    Id<Builder> to;
    friend bool operator==(const LoadMove&, const LoadMove&) = default;
};
/// Puts the bars of a step into a builder, whether they stood in one or in none yet.
/// @param fresh  makes ids of new rows
[[nodiscard]] Result<ChangeSet> putLoad(const Snapshot& snapshot, const LoadMove& move,
                                        const IdSource& fresh);

/// Grafts of one bar, 1 to 999. Refused once the graft is recorded, and for a bar there is not.
[[nodiscard]] Result<ChangeSet> setGrafts(const Snapshot& snapshot, Id<Batch> batch,
                                          std::int32_t bar, Cells cells);

/// Cells by yard.
using YardShares = std::vector<std::pair<Id<Yard>, Cells>>;

/// Plans the cells that a batch has for one yard for another one. A batch that names no yards is
/// given those it has found by itself first. Refused where it has no cells for `from`, and where
/// some of them are in nucs there already. Nucs named there by hand are let go.
/// @param now  cells by yard as they are planned or found
[[nodiscard]] Result<ChangeSet> moveShare(const Snapshot& snapshot, Id<Batch> batch, Id<Yard> from,
                                          Id<Yard> to, const YardShares& now,
                                          const IdSource& fresh);

}  // namespace tenthday
