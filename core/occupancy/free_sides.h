/// @file free_sides.h  Which sides of a yard could take a cell on a day. Inner to the room.
#pragma once
#include <span>

#include "occupancy/nucs.h"

namespace tenthday {

/// A side that could take a cell.
struct FreeSide {
    Day since;         ///< free since then
    bool certain;      ///< surely so, not by plan only
    std::size_t side;  ///< index into the sides

    /// Surely free before planned to be, longest free first, then as the sides are ordered.
    friend bool operator<(const FreeSide& a, const FreeSide& b) {
        if (a.certain != b.certain) return a.certain;
        return a.since != b.since ? a.since < b.since : a.side < b.side;
    }
};

/// The sides of one yard. Days are asked for in rising order, so that what was found for one day
/// is looked at again only once it has run out: with thousands of nucs this is asked at every move.
class FreeSides {
public:
    FreeSides(std::span<const SideOutlook> sides, Id<Yard> yard) : sides_(sides), yard_(yard) {}
    void add(std::size_t side) { slots_.push_back({side}); }

    /// Sides that could take a cell on `day` and hold it until `heldUntil` without meeting another.
    [[nodiscard]] std::vector<FreeSide> on(Day day, Day heldUntil, bool certainOnly);
    /// How many these are.
    [[nodiscard]] std::int32_t count(Day day, Day heldUntil, bool certainOnly);
    /// A side got a round: its segments have changed.
    void forget(std::size_t side);

private:
    struct Slot {
        std::size_t side;
        Day known = kFirstDay - Days{1};  ///< what follows holds up to this day
        Day free = kLastDay;              ///< free from here, up to `known`
        Day nextRound = kLastDay;         ///< another cell comes then, or the nuc ends
        bool certain = false;

        [[nodiscard]] bool takes(Day day, Day heldUntil, bool certainOnly) const {
            return free <= day && nextRound > heldUntil && (certain || !certainOnly);
        }
    };
    void look(Slot& slot, Day day) const;

    std::span<const SideOutlook> sides_;
    Id<Yard> yard_;
    std::vector<Slot> slots_;  ///< by side
};

}  // namespace tenthday
