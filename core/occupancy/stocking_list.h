/// @file stocking_list.h  A week ahead: which nucs want bees, by when, how many and from where.
#pragma once
#include "occupancy/nucs.h"
#include "records/donor_gifts.h"

namespace tenthday {

/// How far ahead it looks.
inline constexpr Days kStockingAhead{7};

enum class StockingWhy : std::uint8_t {
    Planned,    ///< a stocking that stands in the book
    CellsDay,   ///< cells of the day lack a nuc
    OpenBrood,  ///< so too; the nuc has bees, and wants open brood first
};
template <>
struct TokensOf<StockingWhy> {
    static constexpr auto names =
        std::to_array<std::string_view>({"planned", "cells_day", "open_brood"});
};

struct StockingNeed {
    StockingWhy why{};
    const SideOutlook* side = nullptr;
    Id<Yard> yard;
    /// At the latest: queenless long enough before the cell (fact nuc_queenless_h, S85), and never
    /// before today. Better some days sooner: shut and cool for 1 to 3 days (S11).
    Day dayBy;
    bool late = false;  ///< that day is over: with bees of today the cell comes too soon
    std::optional<Day> cellsDay;
    std::optional<BeesMl> bees;   ///< as planned; else as last time, else fact nuc_bees_ml (S86)
    std::optional<Frames> brood;  ///< as planned; else as last time
    std::string donor;            ///< as planned; else the one that gave least and may give so much
};

struct StockingList {
    DayWindow days;
    std::vector<StockingNeed> needs;  ///< by day, then yard in driving order, then nuc
    std::int32_t withoutNuc = 0;      ///< cells that even so find none
    std::vector<DonorGifts> donors;   ///< on the first day
};

/// Likely nucs count with their expected number, rounded down. Cells planned by name for a nuc that
/// is not stocked by then come first; then the yards the batches name, then along the round. Bees
/// of the yard the nuc stands in would fly back: no donor is named from there.
[[nodiscard]] StockingList stockingList(const Snapshot& snapshot, const NucOutlook& nucs, Day from);

}  // namespace tenthday
