/// @file nuc_memo.h  What is kept of the nucs from one outlook to the next.
#pragma once
#include <memory>

#include "occupancy/bare_sides.h"
#include "occupancy/nucs.h"

namespace tenthday {

/// Give the same memo to each call of nucOutlook(). Where a season differs in a few batches alone
/// from the one kept, only what their cells change is made anew; the result is always what it would
/// be without a memo.
class NucMemo {
public:
    NucMemo() = default;
    /// As after the season of these nucs.
    explicit NucMemo(const NucOutlook& nucs) : bareSides_(nucs.bare), fitted_(nucs.fitted) {}

    /// What no batch changes about the nucs; never null.
    [[nodiscard]] const std::shared_ptr<const BareSides>& bareSides(const Snapshot& snapshot);
    /// The season that others are compared with; null at first, and once it is out of date.
    [[nodiscard]] const std::shared_ptr<const FittedNucs>& fitted() const { return fitted_; }
    void keep(std::shared_ptr<const FittedNucs> fitted);

    /// A batch that is not as in the season kept, with its timeline; null: there is none any more.
    using Differing = Timelines;
    /// A season was told by what differs. Batches that stay what they became would be followed each
    /// time: once a few do, the season kept is out of date.
    void sawDiffering(Differing differing);

private:
    std::shared_ptr<const BareSides> bareSides_;
    std::shared_ptr<const FittedNucs> fitted_;
    Differing differing_;  ///< of the last season; its timelines may be gone, or others
};

}  // namespace tenthday
