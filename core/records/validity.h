/// @file validity.h  What a row must be to be kept.
#pragma once
#include <string_view>

#include "base/result.h"
#include "records/change_set.h"

namespace tenthday {

/// From a season's first day to its last: a season may cross the new year, no more.
inline constexpr Days kLongestSeason{550};

/// Checks a row by itself: ranges, order of days, forms of text. The text names table and column.
template <class Row>
[[nodiscard]] Result<void> checkRow(const Row& row);

/// Checks every row an edit brings or takes against the snapshot it leads to: ranges, references
/// that must exist, labels that must be unique, rows still referred to.
[[nodiscard]] Result<void> checkChanges(const Snapshot& next, const ChangeSet& changes);

/// The frames of each side a layout text means: "7" -> {7}, "3+3" -> {3, 3}.
/// Empty when the text is no layout (1 to 6 sides of 1 to 20 frames).
[[nodiscard]] std::vector<std::int32_t> framesOfLayout(std::string_view layout);
/// Name of the n-th side (from 0) of so many: "-" alone, else A, B, C ...
[[nodiscard]] std::string sideName(std::size_t index, std::size_t sides);

}  // namespace tenthday
