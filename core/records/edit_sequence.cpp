#include "records/edit_sequence.h"

#include <map>
#include <utility>

namespace tenthday {
namespace {

RowKey keyOf(const RowChange& change) {
    return visitChange([](const auto& c) { return RowKey((c.before ? c.before : c.after)->id); },
                       change);
}

/// The two changes of one row as one.
RowChange joined(const RowChange& first, const RowChange& then) {
    return visitChange(
        [&]<class Row>(const RowChangeOf<Row>& c) -> RowChange {
            return RowChangeOf<Row>{c.before, then.as<Row>()->after};
        },
        first);
}

/// The change written anew: versions rise by one however often the row was edited.
template <class Row>
void put(const RowChangeOf<Row>& change, ChangeSet& changes) {
    if (change.before && change.after)
        changes.edit(change.before, *change.after);
    else if (change.after)
        changes.add(*change.after);
    else if (change.before)
        changes.erase(change.before);
}

}  // namespace

Result<void> EditSequence::add(const Result<ChangeSet>& edit) {
    if (!edit) return edit.error();
    auto next = applied(now_, edit.value());
    if (!next) return next.error();
    now_ = std::move(next).value();
    rows_.insert(rows_.end(), edit.value().rows.begin(), edit.value().rows.end());
    return {};
}

ChangeSet EditSequence::changes(Verb verb, std::string subject, std::optional<Day> day) const {
    std::vector<RowChange> order;
    std::map<RowKey, std::size_t> places;
    for (const auto& row : rows_) {
        const auto [place, isNew] = places.emplace(keyOf(row), order.size());
        if (isNew)
            order.push_back(row);
        else
            order[place->second] = joined(order[place->second], row);
    }
    ChangeSet changes{verb, std::move(subject), day, {}};
    for (const auto& row : order) visitChange([&](const auto& c) { put(c, changes); }, row);
    return changes;
}

}  // namespace tenthday
