/// @file brood_run.h  From the brood that comes into a colony to its days without. Inner to the
/// room.
#pragma once
#include "occupancy/broodless.h"

namespace tenthday {

/// Brood that comes in on one day, or that a queen lays from one day to another.
struct BroodGiven {
    Day from;
    Day last;     ///< of the eggs; `from` where it is put in
    bool open;    ///< eggs or larvae among it
    bool sealed;  ///< there may be some
};

/// The spans between. @param brood  by day; the first one begins what is known
/// @param worker  fact worker_d
/// @param end  the colony's last day; none: as far as is noted, still there
[[nodiscard]] std::vector<BroodlessSpan> spansBetween(const std::vector<BroodGiven>& brood,
                                                      Days worker, std::optional<Day> end);

}  // namespace tenthday
