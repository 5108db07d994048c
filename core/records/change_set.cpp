#include "records/change_set.h"

#include <algorithm>

#include "records/validity.h"

namespace tenthday {
namespace {

template <class Row>
RowChange inverted(const RowChangeOf<Row>& change) {
    RowChangeOf<Row> back{change.after, change.before};
    if (back.after) {
        Row row = *back.after;
        const auto newest = back.before ? back.before->version : 0;
        row.version = std::max(row.version, newest) + 1;
        back.after = std::make_shared<const Row>(std::move(row));
    }
    return back;
}

template <class Row>
Result<void> applyRow(Snapshot& next, const RowChangeOf<Row>& change) {
    const auto& subject = change.before ? change.before : change.after;
    const auto current = next.find(subject->id);
    const std::string name(ColumnsOf<Row>::table);
    if (!change.before && current) return Error{name + ": a row with this id is there already"};
    if (change.before && (!current || !(*current == *change.before)))
        return Error{name + ": the row was changed meanwhile"};
    next.setAll(next.all<Row>().with(change.before, change.after));
    return {};
}

/// Many rows of one kind at once (an import): one new table instead of one per row.
template <class Row>
Result<void> applyAll(Snapshot& next, const std::vector<RowChange>& changes) {
    std::vector<RowChangeOf<Row>> mine;
    for (const auto& change : changes)
        if (auto c = change.as<Row>()) mine.push_back(std::move(*c));
    const bool onlyNew =
        std::all_of(mine.begin(), mine.end(), [](const auto& c) { return !c.before; });
    if (mine.size() < 8 || !onlyNew) {
        for (const auto& change : mine)
            if (auto done = applyRow(next, change); !done) return done;
        return {};
    }
    std::vector<Ptr<Row>> rows(next.all<Row>().begin(), next.all<Row>().end());
    for (const auto& change : mine) rows.push_back(change.after);
    std::vector<Uuid> ids;
    for (const auto& row : rows) ids.push_back(row->id.uuid);
    std::sort(ids.begin(), ids.end());
    if (std::adjacent_find(ids.begin(), ids.end()) != ids.end())
        return Error{std::string(ColumnsOf<Row>::table) + ": a row with this id is there already"};
    next.setAll(Table<Row>::from(std::move(rows)));
    return {};
}

}  // namespace

ChangeSet ChangeSet::inverse() const {
    ChangeSet back{verb, subject, day, {}};
    for (auto change = rows.rbegin(); change != rows.rend(); ++change)
        back.rows.push_back(visitChange([](const auto& c) { return inverted(c); }, *change));
    return back;
}

Result<Snapshot> applied(const Snapshot& snapshot, const ChangeSet& changes) {
    Snapshot next = snapshot;
    Result<void> done;
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        if (done) done = applyAll<Row>(next, changes.rows);
    });
    if (!done) return done.error();
    if (auto valid = checkChanges(next, changes); !valid) return valid.error();
    return next;
}

}  // namespace tenthday
