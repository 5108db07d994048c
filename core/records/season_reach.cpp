#include "records/season_reach.h"

#include <set>

#include "records/references.h"

namespace tenthday {
namespace {

class Reach {
public:
    Reach(const Snapshot& shown, const ChangeSet& changes) : shown_(shown) {
        for (const auto& change : changes.rows)
            visitChange(
                [&](const auto& c) {
                    if (!c.before) brought_.insert(c.after->id);
                },
                change);
    }

    template <class Row>
    [[nodiscard]] bool isBeyond(const RowChangeOf<Row>& change) const {
        if (change.before && !isThere(change.before->id)) return true;
        if (!change.after) return false;
        if constexpr (std::is_same_v<Row, Batch>)
            if (!shown_.startDays().contains(change.after->day)) return true;
        return refersBeyond(*change.after);
    }

private:
    template <class Row>
    [[nodiscard]] bool isThere(Id<Row> id) const {
        return shown_.find(id) != nullptr || brought_.contains(id);
    }
    template <class Row>
    [[nodiscard]] bool refersBeyond(const Row& row) const {
        bool beyond = false;
        forEachReference(
            row, [&](const auto&, const auto& id) { beyond = beyond || (id && !isThere(*id)); });
        return beyond;
    }

    const Snapshot& shown_;
    std::set<RowKey> brought_;
};

}  // namespace

bool reachesBeyond(const Snapshot& shown, const ChangeSet& changes) {
    if (shown.seasonId().isNone()) return false;
    const Reach reach(shown, changes);
    for (const auto& change : changes.rows)
        if (visitChange([&](const auto& c) { return reach.isBeyond(c); }, change)) return true;
    return false;
}

}  // namespace tenthday
