#include "desk/undo_stack.h"

#include <map>

namespace tenthday {
namespace {

EditName nameOf(const ChangeSet& edit) { return {edit.verb, edit.subject, edit.day}; }

/// Rows as they stand after the changes gone through so far.
class Standing {
public:
    explicit Standing(const Snapshot& snapshot) : snapshot_(snapshot) {}

    template <class Row>
    [[nodiscard]] Ptr<Row> find(Id<Row> id) const {
        const auto known = rows_.find(id);
        return known == rows_.end() ? snapshot_.find(id) : known->second.template as<Row>()->after;
    }
    template <class Row>
    void put(const RowChangeOf<Row>& change, Id<Row> id) {
        rows_.insert_or_assign(id, RowChange(change));
    }

private:
    const Snapshot& snapshot_;
    std::map<RowKey, RowChange> rows_;
};

template <class Row>
bool sameButVersion(const Row& a, const Row& b) {
    Row copy = a;
    copy.version = b.version;
    return copy == b;
}

template <class Row>
Result<RowChangeOf<Row>> refreshedRow(Standing& standing, RowChangeOf<Row> change) {
    const auto id = (change.before ? change.before : change.after)->id;
    const auto current = standing.find(id);
    if (change.before) {
        if (!current || !sameButVersion(*current, *change.before))
            return Error{std::string(ColumnsOf<Row>::table) + ": the row was changed meanwhile"};
        change.before = current;
        if (change.after && change.after->version <= current->version) {
            Row risen = *change.after;
            risen.version = current->version + 1;
            change.after = std::make_shared<const Row>(std::move(risen));
        }
    }
    standing.put(change, id);
    return change;
}

}  // namespace

Result<ChangeSet> refreshed(const Snapshot& snapshot, const ChangeSet& changes) {
    ChangeSet result{changes.verb, changes.subject, changes.day, {}};
    Standing standing(snapshot);
    Result<void> done;
    for (const auto& change : changes.rows) {
        visitChange(
            [&](const auto& c) {
                auto fresh = refreshedRow(standing, c);
                if (fresh)
                    result.rows.push_back(std::move(fresh).value());
                else
                    done = fresh.error();
            },
            change);
        if (!done) return done.error();
    }
    return result;
}

void UndoStack::push(ChangeSet done, Id<Season> season) {
    edits_.resize(place_);
    edits_.push_back({std::move(done), season});
    ++place_;
}

std::optional<EditName> UndoStack::undoName() const {
    return canUndo() ? std::optional(nameOf(edits_[place_ - 1].edit)) : std::nullopt;
}

std::optional<EditName> UndoStack::redoName() const {
    return canRedo() ? std::optional(nameOf(edits_[place_].edit)) : std::nullopt;
}

Id<Season> UndoStack::undoSeason() const {
    return canUndo() ? edits_[place_ - 1].season : Id<Season>{};
}

Id<Season> UndoStack::redoSeason() const {
    return canRedo() ? edits_[place_].season : Id<Season>{};
}

Result<ChangeSet> UndoStack::toUndo(const Snapshot& snapshot) const {
    return refreshed(snapshot, edits_[place_ - 1].edit.inverse());
}

Result<ChangeSet> UndoStack::toRedo(const Snapshot& snapshot) const {
    return refreshed(snapshot, edits_[place_].edit);
}

void UndoStack::clear() {
    edits_.clear();
    place_ = 0;
}

}  // namespace tenthday
