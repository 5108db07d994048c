/// @file top_up.h  A second graft into the box of a batch: a top-up, or one as insurance.
#pragma once
#include "records/snapshot.h"

namespace tenthday {

/// The later batch fills cups again whose larvae of the earlier one were not started, by count: no
/// more cells than such cups, bars of the same breeder queens, the same method. It belongs to the
/// same filling of the builder; whether it comes in time (fact top_up_by_h) is not asked here.
[[nodiscard]] bool isTopUpOf(const Snapshot& snapshot, Id<Batch> earlier, Id<Batch> later);

/// The later batch is the earlier one once more, as insurance: the same method and start and, bar
/// by bar, the same breeder queens, which are named, and grafts. Cells of two ages stand in one box
/// then; whether it comes in time and while the first still stand there is not asked here.
[[nodiscard]] bool isRepeatOf(const Snapshot& snapshot, Id<Batch> earlier, Id<Batch> later);

}  // namespace tenthday
