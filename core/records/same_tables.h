/// @file same_tables.h  Whether two snapshots were made of the very same rows.
#pragma once
#include "records/snapshot.h"

namespace tenthday {

/// All tables but the named ones are the very same, and so are today, the season and the facts.
template <class... Else>
[[nodiscard]] bool sameTablesBut(const Snapshot& a, const Snapshot& b) {
    if (a.today() != b.today() || a.seasonId() != b.seasonId() || a.factsPtr() != b.factsPtr())
        return false;
    bool same = true;
    forEachRowType(AllRows{}, [&]<class Row>(std::type_identity<Row>) {
        if constexpr (!(std::is_same_v<Row, Else> || ...))
            same = same && a.all<Row>().isSame(b.all<Row>());
    });
    return same;
}

}  // namespace tenthday
