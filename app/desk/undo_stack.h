/// @file undo_stack.h  The edits made since the window opened, as ChangeSets.
///
///     [ a ][ b ][ c ][ d ]
///               ^ place: a and b are in force; c and d were undone
///
/// Undoing is a new edit, so row versions rise each time: an entry is kept as it was last applied,
/// and refreshed to the versions of the snapshot it is applied to next. The place moves only by
/// undone() and redone(), which the desk calls once the file has the edit.
#pragma once
#include <vector>

#include "desk/changes.h"

namespace tenthday {

class UndoStack {
public:
    /// Takes an edit that has been saved; what was undone before is forgotten.
    /// @param season  that was shown when it was made
    void push(ChangeSet done, Id<Season> season);

    [[nodiscard]] bool canUndo() const { return place_ > 0; }
    [[nodiscard]] bool canRedo() const { return place_ < edits_.size(); }
    [[nodiscard]] std::optional<EditName> undoName() const;
    [[nodiscard]] std::optional<EditName> redoName() const;
    /// The season in which it was made; none when there is nothing to do.
    [[nodiscard]] Id<Season> undoSeason() const;
    [[nodiscard]] Id<Season> redoSeason() const;

    /// The edit that takes back the newest one in force, or brings back the next undone one, for
    /// this snapshot. Only when there is one.
    [[nodiscard]] Result<ChangeSet> toUndo(const Snapshot& snapshot) const;
    [[nodiscard]] Result<ChangeSet> toRedo(const Snapshot& snapshot) const;
    /// The edit got from toUndo or toRedo has been saved.
    void undone(const ChangeSet& saved) { edits_[--place_].edit = saved.inverse(); }
    void redone(ChangeSet saved) { edits_[place_++].edit = std::move(saved); }
    void clear();

private:
    struct Step {
        ChangeSet edit;
        Id<Season> season;
    };
    std::vector<Step> edits_;
    std::size_t place_ = 0;
};

/// The same edit on rows whose versions have risen since. An Error when a row differs in more than
/// its version.
[[nodiscard]] Result<ChangeSet> refreshed(const Snapshot& snapshot, const ChangeSet& changes);

}  // namespace tenthday
