/// @file draft_writers.h  A draft tried out, and the parts of its edit: each looks at a snapshot
/// that has the batch's row, and gives the rows of its part. Within this room.
#pragma once
#include <set>

#include "drafting/batch_draft.h"

namespace tenthday {

[[nodiscard]] inline Error refusal(const BatchDraft& draft, const std::string& why) {
    return Error{"batch " + draft.label + ": " + why};
}

/// Adds a row, or edits the one there is.
template <class Row>
void put(ChangeSet& changes, const Ptr<Row>& before, Row row, const IdSource& newId) {
    if (before) {
        changes.edit(before, std::move(row));
        return;
    }
    row.id = {newId()};
    changes.add(std::move(row));
}

/// The snapshot with a draft in it, under ids that are never saved.
[[nodiscard]] Result<Snapshot> withDraft(const Snapshot& snapshot, const BatchDraft& draft,
                                         const Repeat& repeat = {});

/// Bars, where they stand, and the cells of each yard, of a draft whose bars have their numbers. A
/// bar that is gone takes its counts with it. A yard with no cells has no row.
[[nodiscard]] ChangeSet partsEdit(const Snapshot& snapshot, const BatchDraft& draft,
                                  const IdSource& newId);

/// Days for mating as the draft says. One that is past and was not changed stays as it is, wherever
/// the batch moves.
/// @param before  the draft's batch as it was, if it was there
[[nodiscard]] ChangeSet stayEdit(const Snapshot& snapshot, const BatchDraft& draft,
                                 const std::optional<BatchDraft>& before, const IdSource& newId);

/// How it was before the edit.
struct MakeUpsUntil {
    std::vector<Ptr<MakeUp>> all;  ///< what was made up for the batch, as the rows are now
    std::set<Id<MakeUp>> own;      ///< those of them that served no other batch
    bool replanned = false;        ///< the user wants it with, without or no open brood now
};
/// Make-ups as the draft plans them. One that was planned for a builder no longer used goes along
/// to the builder that came; what lies behind today, or serves another batch too, stays as it was.
[[nodiscard]] ChangeSet makeUpEdit(const Snapshot& snapshot, const BatchDraft& draft,
                                   const IdSource& newId, const MakeUpsUntil& before);
/// With the ticks of what was to be done about it.
void eraseMakeUp(const Snapshot& snapshot, const Ptr<MakeUp>& makeUp, ChangeSet& changes);

/// Counted started cells: the newest count of each bar says what the draft says. Counts by bar
/// replace one of the whole batch, which would stand above them.
[[nodiscard]] Result<ChangeSet> takeEdit(const Snapshot& snapshot, const BatchDraft& draft,
                                         const IdSource& newId);

}  // namespace tenthday
