/// @file bare_sides.h  Every nuc side before any cell: what hangs on boxes and stockings alone.
#pragma once
#include <memory>
#include <optional>
#include <utility>
#include <vector>

#include "occupancy/nucs.h"

namespace tenthday {

/// All sides with their boxes, stays and stockings, divided into stretches as if no cell ever came.
/// A move of a batch leaves them as they are: kept from one outlook to the next, they need not be
/// found and sorted anew.
class BareSides {
public:
    explicit BareSides(const Snapshot& snapshot);
    BareSides(const BareSides&) = delete;
    BareSides& operator=(const BareSides&) = delete;

    /// Made of the very rows of this snapshot.
    [[nodiscard]] bool areOf(const Snapshot& snapshot) const;
    /// By box label, then day of layout, then side. Their stays lie in `stays()`.
    [[nodiscard]] const std::vector<SideOutlook>& sides() const { return sides_; }
    [[nodiscard]] const std::vector<BoxStayFrom>& stays() const { return stays_; }
    /// Index into `sides()`, or nothing.
    [[nodiscard]] std::optional<std::size_t> find(Id<NucSide> id) const;

private:
    Table<Box> boxes_;
    Table<BoxStay> boxStays_;
    Table<BoxLayout> layouts_;
    Table<NucSide> nucSides_;
    Table<Stocking> stockings_;
    Table<NucCare> cares_;
    std::shared_ptr<const Facts> facts_;
    std::vector<BoxStayFrom> stays_;
    std::vector<SideOutlook> sides_;
    std::vector<std::pair<Id<NucSide>, std::size_t>> byId_;  ///< bisected: one piece of memory
};

}  // namespace tenthday
