/// @file sides.h  Building the sides of a snapshot, their rounds and stretches. Inner to the room.
#pragma once
#include "occupancy/bare_sides.h"
#include "occupancy/nucs.h"

namespace tenthday {

[[nodiscard]] inline Days days(const Facts& facts, Fact fact) {
    return Days{static_cast<int>(facts[fact])};
}

/// The bare sides with the rounds that stored placements give them, divided. `bare` must outlive
/// them: they look into its stays.
[[nodiscard]] std::vector<SideOutlook> storedSides(const Snapshot& snapshot,
                                                   const Timelines& timelines,
                                                   const BareSides& bare);

/// A round of a batch in a side from a day on, held and looked at by the batch's plan.
[[nodiscard]] SideRound plannedRound(Id<Batch> batch, const BatchTimeline& timeline, Day transfer,
                                     Day today);

/// SideRound::sharesOn for one that is so many days behind its batch: that is the same every day.
[[nodiscard]] StateShares sharesOf(const SideRound& round, Day day, Days behind);

/// Fills `segments` from stockings, brood put in and rounds.
void divide(SideOutlook& side, const Snapshot& snapshot);
/// The same for a side without rounds or wintered queens: as the bare one is.
void divideAs(const SideOutlook& bare, SideOutlook& side);

/// The stretch a side is in at the start of work on a day, before cells only planned for that day;
/// null on days on which it does not stand.
[[nodiscard]] const SideSegment* segmentOn(const SideOutlook& side, Day day);

struct PlacedCells {
    std::int32_t forNucs = 0;                          ///< ripe cells meant for nucs
    std::int32_t placed = 0;                           ///< of these, found a side
    std::vector<std::pair<Day, std::int32_t>> stored;  ///< by record or named plan: day, cells
};

}  // namespace tenthday
