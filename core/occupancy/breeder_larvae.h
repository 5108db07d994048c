/// @file breeder_larvae.h  Whether larvae fit to graft were seen of each breeder queen the day
/// before.
#pragma once
#include <optional>
#include <vector>

#include "base/id_source.h"
#include "records/change_set.h"

namespace tenthday {

/// One breeder queen of a batch that is grafted.
struct LarvaeLook {
    Ptr<Queen> queen;
    Day due;  ///< the day before the graft
    std::optional<QueenNoteKind>
        seen;  ///< on that day or the graft's; the newest; none: not looked
};
/// A look for each breeder queen of the batch's bars, in order of bars; none where nothing is
/// grafted. Common practice.
[[nodiscard]] std::vector<LarvaeLook> larvaeLooks(const Snapshot& snapshot, Id<Batch> batch);

/// Breeder queens of her line that are not confined while she is for the batch; by label.
[[nodiscard]] std::vector<Ptr<Queen>> reserveFor(const Snapshot& snapshot, Id<Queen> queen,
                                                 Id<Batch> batch);

/// Notes what was seen of a queen's comb on a day, in place of what was noted for it.
/// @param fresh  id of the row, should it be new
[[nodiscard]] Result<ChangeSet> noteLarvae(const Snapshot& snapshot, Id<Queen> queen, Day day,
                                           QueenNoteKind kind, Id<QueenNote> fresh);

/// Her newest note up to a day, or null.
[[nodiscard]] Ptr<QueenNote> larvaeNoteBy(const Snapshot& snapshot, Id<Queen> queen, Day day);

}  // namespace tenthday
