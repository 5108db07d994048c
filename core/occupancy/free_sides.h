/// @file free_sides.h  Which sides of a yard could take a cell on a day. Inner to the room.
#pragma once
#include <cstdint>
#include <optional>
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

/// The sides of one yard. Days are asked for in rising order: a side is looked at again only on the
/// day on which what was found has run out, and the free ones are counted as they come and go. With
/// thousands of nucs this is asked at every move.
class FreeSides {
public:
    FreeSides(std::span<const SideOutlook> sides, Id<Yard> yard) : sides_(sides), yard_(yard) {}
    /// In rising order, before the first question; a box that comes back is named again: it counts
    /// once.
    void add(std::size_t side);

    /// Looks at all of them on a day that no question comes before.
    void begin(Day day) { goTo(day); }
    /// Sides that could take a cell on `day` and hold it until `heldUntil` without meeting another.
    [[nodiscard]] std::vector<FreeSide> on(Day day, Day heldUntil, bool certainOnly);
    /// How many these are.
    [[nodiscard]] std::int32_t count(Day day, Day heldUntil, bool certainOnly);
    /// A side got a round: its segments have changed.
    void forget(std::size_t side);

private:
    struct Slot {
        std::size_t side = 0;
        Day ends = kLastDay;       ///< first day on which the nuc is there no longer
        std::optional<Day> comes;  ///< its box has one stay: in the yard, from here
        Day free = kLastDay;       ///< free from here
        Day nextRound = kLastDay;  ///< another cell comes then, or the nuc ends
        Day holds{};               ///< last day for which this is so; before kLastDay
        Day lookAgain = kLastDay;  ///< then, or when it becomes free
        bool certain = false;
        bool isFree = false;                   ///< counted as such, or listed
        std::int32_t before = -1, after = -1;  ///< neighbours among those looked at on one day

        [[nodiscard]] bool takes(Day heldUntil, bool certainOnly) const {
            return isFree && nextRound > heldUntil && (certain || !certainOnly);
        }
        [[nodiscard]] bool isBounded() const { return nextRound < kLastDay; }
    };
    void goTo(Day day);
    /// @param changed  the side is another than when it was looked at last
    void look(std::int32_t slot, bool changed);
    void find(Slot& slot) const;
    void count(std::int32_t slot, std::int32_t by);
    void wait(std::int32_t slot);
    void wake(std::int32_t slot);
    [[nodiscard]] std::int32_t& waitingFor(Day day);

    std::span<const SideOutlook> sides_;
    Id<Yard> yard_;
    std::vector<Slot> slots_;           ///< by side
    std::vector<std::uint8_t> isFree_;  ///< of each slot, close together: most are not
    Day first_, now_;                   ///< days asked for: the first and the latest
    bool asked_ = false;
    std::vector<std::int32_t> waiting_;  ///< per day from `first_`: first slot to look at; -1: none
    std::vector<std::int32_t> bounded_;  ///< free ones that another cell comes to
    std::int32_t certain_ = 0, planned_ = 0;  ///< free ones without end, surely or by plan
};

}  // namespace tenthday
