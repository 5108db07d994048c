/// @file free_sides.h  Which sides of a yard could take a cell on a day. Inner to the room.
#pragma once
#include <cstdint>
#include <functional>
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

/// What a nuc could do with a cell that comes on a day.
struct Freedom {
    Day free = kLastDay;       ///< free from here; kLastDay: not on that day
    bool certain = false;      ///< surely so
    Day nextRound = kLastDay;  ///< where it is free: another cell comes, or the nuc ends or leaves
    Day holds{};  ///< last day for which this is so, were none ignored; before kLastDay

    [[nodiscard]] bool takes(Day day, Day heldUntil) const {
        return free <= day && nextRound > heldUntil;
    }
};
using RoundTest = std::function<bool(const SideRound&)>;
/// @param ignored  rounds that are taken as not there; none of them begins by `day`
[[nodiscard]] Freedom freedomOn(const SideOutlook& side, Id<Yard> yard, Day day,
                                const RoundTest& ignored = {});

/// The sides of one yard. Days are asked for in rising order: a side is looked at again only on the
/// day on which what was found has run out.
class FreeSides {
public:
    FreeSides(std::span<const SideOutlook> sides, Id<Yard> yard) : sides_(sides), yard_(yard) {}
    /// In rising order, each once, before the first question.
    void add(std::size_t side);

    /// Looks at all of them on a day that no question comes before.
    void begin(Day day) { goTo(day); }
    /// Sides that could take a cell on `day` and hold it until `heldUntil` without meeting another,
    /// rising.
    [[nodiscard]] std::vector<FreeSide> on(Day day, Day heldUntil);
    /// A side got a round: its segments have changed.
    void forget(std::size_t side);

private:
    struct Slot {
        std::size_t side = 0;
        Freedom found;
        Day lookAgain = kLastDay;  ///< once what was found has run out, or when it becomes free
        std::int32_t before = -1, after = -1;  ///< neighbours among those looked at on one day
    };
    void goTo(Day day);
    /// @param changed  the side is another than when it was looked at last
    void look(std::int32_t slot, bool changed);
    void wait(std::int32_t slot);
    void wake(std::int32_t slot);
    [[nodiscard]] std::int32_t& waitingFor(Day day);

    std::span<const SideOutlook> sides_;
    Id<Yard> yard_;
    std::vector<Slot> slots_;          ///< by side
    std::vector<std::uint64_t> free_;  ///< a bit for each slot: most are not
    Day first_, now_;                  ///< days asked for: the first and the latest
    bool asked_ = false;
    std::vector<std::int32_t> waiting_;  ///< per day from `first_`: first slot to look at; -1: none
};

}  // namespace tenthday
