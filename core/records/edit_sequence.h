/// @file edit_sequence.h  Several edits, one after the other, as one edit.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// Each edit looks at what the ones before it made. Together they are one ChangeSet of the first
/// snapshot: one transaction, one undo step.
class EditSequence {
public:
    explicit EditSequence(Snapshot start) : start_(std::move(start)), now_(start_) {}

    /// Applies one more edit; a refusal is passed on, and the sequence stays as it was.
    [[nodiscard]] Result<void> add(const Result<ChangeSet>& edit);
    /// After the edits so far.
    [[nodiscard]] const Snapshot& snapshot() const { return now_; }
    /// Every row as it was at the start and as it is now; rows that came and went, or are as they
    /// were, are not named.
    [[nodiscard]] ChangeSet changes(Verb verb, std::string subject, std::optional<Day> day) const;

private:
    Snapshot start_;
    Snapshot now_;
    std::vector<RowChange> rows_;
};

}  // namespace tenthday
