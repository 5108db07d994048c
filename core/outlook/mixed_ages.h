/// @file mixed_ages.h  Cells of several ages in one builder: the box goes by the oldest.
#pragma once
#include <optional>

#include "outlook/outlook.h"

namespace tenthday {

/// Of all cells that stand together in a builder, those a queen comes out of first.
struct OldestCells {
    Id<Batch> batch;
    Moment latestMove;  ///< the last moment at which none of them is out, at the set risk
};
/// Of the cells that stand in a builder at any time together with a batch's, its own among them.
/// None where they stand alone, or no queen can come out of any.
[[nodiscard]] std::optional<OldestCells> oldestCells(const Outlook& outlook, Id<Builder> builder,
                                                     Id<Batch> batch);

}  // namespace tenthday
