/// @file workers.h  How many workers the cells of a builder want.
#pragma once
#include "records/snapshot.h"

namespace tenthday {

/// Workers on a deep frame full of them, on both sides: from the fewest to the most (common
/// practice).
inline constexpr std::int32_t kFewestOnFrame = 1600;
inline constexpr std::int32_t kMostOnFrame = 2000;

struct WorkersWanted {
    std::int32_t workers = 0;
    Frames fewest;  ///< full deep frames of bees, where they hold the most
    Frames most;    ///< where they hold the fewest
};
/// By the fact workers_per_cell (S77, quoting Laidlaw & Page).
[[nodiscard]] WorkersWanted workersFor(Cells cells, const Facts& facts);

/// What a make-up of a builder on a day is for.
struct Served {
    std::vector<Ptr<Batch>> batches;
    Day graft;    ///< of them all; has no meaning where there are none
    Cells cells;  ///< their grafts that go into this builder first
};
[[nodiscard]] Served servedBy(const Snapshot& snapshot, Id<Builder> builder, Day day);

}  // namespace tenthday
