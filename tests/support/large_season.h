/// @file large_season.h  A big made-up season for benchmarks and slow checks. The same every time.
#pragma once
#include "records/change_set.h"
#include "records/snapshot.h"

namespace tenthday::test {

struct LargeSeason {
    int batches = 400;
    int nucs = 5000;        ///< sides; each box has two
    int weatherYears = 30;  ///< a daily record up to yesterday
};

/// A season April to October 2027 in which today is 14 June. Grafts are spread over 118 days;
/// batches before today have their counts, their cells in named nucs and queens caught.
[[nodiscard]] Snapshot largeSeason(LargeSeason size = {});
/// Its rows, for a book.
[[nodiscard]] ChangeSet largeSeasonRows(LargeSeason size = {});

/// Id of the n-th batch, from 0, in the order of graft. The last ones are still only planned.
[[nodiscard]] Id<Batch> largeSeasonBatch(int n);

}  // namespace tenthday::test
