/// @file uses.h  What hangs on a row, and what goes with it.
#pragma once
#include <string_view>
#include <vector>

#include "records/change_set.h"

namespace tenthday {

/// How many rows of one table refer to a thing or to a part of it.
struct Use {
    std::string_view table;  ///< as ColumnsOf names it
    std::size_t count = 0;
    friend bool operator==(const Use&, const Use&) = default;
};

/// What refers to a row, per table in the order of AllRows. Parts are no use by themselves: a box's
/// stays, layouts and sides, a method's steps, a queen's notes, stays and catch, the ways to a
/// yard. What refers to a part is one of the whole.
[[nodiscard]] std::vector<Use> usesOf(const Snapshot& snapshot, const RowKey& key);

/// The row and its parts, each as a row that goes. Empty when there is none with this id.
[[nodiscard]] std::vector<RowChange> erasures(const Snapshot& snapshot, const RowKey& key);

}  // namespace tenthday
