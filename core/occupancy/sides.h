/// @file sides.h  Building the sides of a snapshot, their rounds and stretches. Inner to the room.
#pragma once
#include "occupancy/nucs.h"

namespace tenthday {

using Timelines = std::vector<std::pair<Id<Batch>, const BatchTimeline*>>;

/// All sides with their stays, stockings and the rounds that stored placements give them.
/// `stays` is filled and must outlive the sides, which look into it.
[[nodiscard]] std::vector<SideOutlook> storedSides(const Snapshot& snapshot,
                                                   const Timelines& timelines,
                                                   std::vector<BoxStayFrom>& stays);

/// A round of a batch in a side from a day on, held and looked at by the batch's plan.
[[nodiscard]] SideRound plannedRound(Id<Batch> batch, const BatchTimeline& timeline, Day transfer,
                                     Day today);

/// Fills `segments` from stockings and rounds.
void divide(SideOutlook& side, const Facts& facts);

/// Gives the cells that no stored placement names their sides: the planned yards first, then the
/// fewest yards that take the rest. What is surely ready comes before what is only planned to be,
/// longest ready first. Returns how many cells found a side, per timeline.
std::vector<std::int32_t> placeByFirstFit(std::vector<SideOutlook>& sides, const Snapshot& snapshot,
                                          const Timelines& timelines);

/// Ripe cells of a batch that are meant for nucs: all but those placed elsewhere.
[[nodiscard]] std::int32_t cellsForNucs(const Snapshot& snapshot, Id<Batch> batch,
                                        const BatchTimeline& timeline);

}  // namespace tenthday
