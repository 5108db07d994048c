/// @file yard_days.h  From sides to each yard's days. Inner to the room.
#pragma once
#include <utility>

#include "occupancy/sides.h"

namespace tenthday {

/// A whole number per day, built from spans: first differences, summed once at the end.
class DaySums {
public:
    explicit DaySums(DayWindow season)
        : season_(season), change_(static_cast<std::size_t>(season.size()) + 1) {}

    void add(DayWindow days, std::int32_t value);
    [[nodiscard]] std::vector<std::int32_t> sums() const;

private:
    DayWindow season_;
    std::vector<std::int32_t> change_;
};

/// Everything of one yard while it is summed. Sides are counted in whole numbers: one that is taken
/// out again leaves no trace.
class YardSums {
public:
    YardSums(DayWindow season, Day today);

    /// Counts a side for the days of its stay in the yard.
    /// @param by  1, or -1 to take it out as it was counted
    void add(const SideOutlook& side, DayWindow stay, std::int32_t by);
    /// None stays there on any day of the season.
    [[nodiscard]] bool isEmpty() const { return stays_ == 0; }
    [[nodiscard]] YardOutlook finish(const Ptr<Yard>& yard) const;

private:
    /// Nucs of a batch that go alike: counted first, and reckoned once.
    struct Held {
        SideRound round;
        DayWindow days;
    };
    void addState(NucState state, DayWindow days, std::int32_t by);
    void addHeld(const SideRound& round, DayWindow days, std::int32_t by);
    /// A stretch without a cell or queen of this season.
    void addStill(const SideOutlook& side, std::size_t segment, DayWindow days, DayWindow here,
                  std::int32_t by);
    [[nodiscard]] std::vector<BatchBlock> blocks() const;

    DayWindow season_;
    Day today_;
    std::int32_t stays_ = 0;
    DaySums sides_, ready_, likely_, canStock_, needsBrood_;
    std::vector<DaySums> states_;
    std::vector<std::pair<Held, std::int32_t>> held_;  ///< by day, then batch
};

/// Calls `each` with a yard and the days of every stay of a side that touches the season.
template <class Each>
void eachStay(const SideOutlook& side, DayWindow season, Each each) {
    for (std::size_t i = 0; i < side.stays.size(); ++i) {
        const auto& [from, yard] = side.stays[i];
        const Day last = i + 1 < side.stays.size() ? side.stays[i + 1].from - Days{1} : kLastDay;
        if (yard && last >= season.first && from <= season.last) each(*yard, DayWindow{from, last});
    }
}

/// Stacks, numbers and blocks of every yard with a side in the season, in driving order, then by
/// label.
/// @param yards  in the order of `sums`
[[nodiscard]] std::vector<YardOutlook> yardOutlooks(const std::vector<Ptr<Yard>>& yards,
                                                    const std::vector<YardSums>& sums);

}  // namespace tenthday
