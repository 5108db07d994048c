/// @file small_book.h  A small valid book: one yard, one box of two sides, one builder, one batch.
#pragma once
#include "records/change_set.h"
#include "support/days.h"
#include "support/ids.h"

namespace tenthday::test {

/// Ids of the one row of each kind in smallBook().
inline constexpr auto kYard = id<Yard>(1);
inline constexpr auto kBox = id<Box>(1);
inline constexpr auto kLayout = id<BoxLayout>(1);
inline constexpr auto kSideA = id<NucSide>(1);
inline constexpr auto kSideB = id<NucSide>(2);
inline constexpr auto kBuilder = id<Builder>(1);
inline constexpr auto kMethod = id<Method>(1);
inline constexpr auto kQueen = id<Queen>(1);
inline constexpr auto kBatch = id<Batch>(1);

/// The rows of the small book as one edit.
[[nodiscard]] ChangeSet smallBookRows();
/// The book after that edit, today being 1 June 2027. Throws if the edit is refused.
[[nodiscard]] Snapshot smallBook();

}  // namespace tenthday::test
