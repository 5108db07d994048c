/// @file reader.h  From the file to a Snapshot.
#pragma once
#include <optional>

#include "book/connection.h"
#include "options/clock.h"
#include "records/snapshot.h"

namespace tenthday {

/// How much of a book to read.
struct ReadRange {
    /// The season to show. Empty: that of today; while its last batches can still be in their nucs
    /// the one that ended; else the next to come, else the last one.
    std::optional<Id<Season>> season;
    /// Batches of all seasons, for export.
    bool allSeasons = false;
};

/// The season that is meant when none is named; none in a book without seasons.
[[nodiscard]] Id<Season> seasonOf(const Table<Season>& seasons, Day today);

/// Reads lasting things whole and, of batches and what hangs on them, those whose day lies in the
/// season or up to kLeadIn before it. All from one moment, also while another program writes.
/// An Error names the first row that cannot be right.
[[nodiscard]] Result<Snapshot> readSnapshot(Connection& connection, const Clock& clock,
                                            const ReadRange& range);

}  // namespace tenthday
