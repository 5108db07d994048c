/// @file open_sides.h  Which nucs could take the ripe cells of one day, were none planned yet.
#pragma once
#include <span>
#include <vector>

#include "occupancy/nucs.h"

namespace tenthday {

/// A nuc that could take a cell on a day and hold it until its catch without meeting another.
struct OpenSide {
    std::size_t side = 0;  ///< index into NucOutlook::sides
    Id<Yard> yard;
    Day since;             ///< ready since then
    bool certain = false;  ///< surely ready; else by plan only: a queen is to be caught before
};

/// A cell that is planned, and not recorded, may be planned anew on `day`: it is of that day, or of
/// one that is over.
[[nodiscard]] constexpr bool isReplaceable(bool done, Day planned, Day day, Day today) {
    return !done && (planned == day || (planned < day && planned < today));
}

/// In the order of NucOutlook::sides. The cells of `batches` that may be planned anew, and whatever
/// first fit gave later batches, are taken as not there.
/// @param heldUntil  catch day of the cells, inclusive
[[nodiscard]] std::vector<OpenSide> openSides(const NucOutlook& nucs, const Snapshot& snapshot,
                                              std::span<const Id<Batch>> batches, Day day,
                                              Day heldUntil);

}  // namespace tenthday
