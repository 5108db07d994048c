/// @file nuc_memo.h  What is kept of the nucs from one outlook to the next.
#pragma once
#include <memory>

#include "occupancy/bare_sides.h"
#include "occupancy/nucs.h"

namespace tenthday {

struct FittedNucs;

/// Give the same memo to each call of nucOutlook(). Where a season differs from the one kept in its
/// batches alone, only what their cells change is made anew; the result is always what it would be
/// without a memo.
class NucMemo {
public:
    /// What no batch changes about the nucs; never null.
    [[nodiscard]] const std::shared_ptr<const BareSides>& bareSides(const Snapshot& snapshot);
    /// The season that others are compared with; null at first.
    [[nodiscard]] const std::shared_ptr<const FittedNucs>& fitted() const { return fitted_; }
    void keep(std::shared_ptr<const FittedNucs> fitted) { fitted_ = std::move(fitted); }

private:
    std::shared_ptr<const BareSides> bareSides_;
    std::shared_ptr<const FittedNucs> fitted_;
};

}  // namespace tenthday
