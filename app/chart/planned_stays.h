/// @file planned_stays.h  Where a batch's queens would be in the nucs by its plan, in outline, once
/// they are there on other days.
#pragma once
#include "chart/yard_picture.h"

namespace tenthday {

/// By how much a batch was planned earlier (below 0) or later than it was grafted; none where it
/// is not grafted, or was on its day: all that follows hangs on the graft.
[[nodiscard]] std::optional<Moment::duration> shiftToPlan(const Outlook& outlook,
                                                          const BatchOutlook* batch);

/// Days in the nucs by plan, of a batch that is there on `days`; none where they are the same. Told
/// of the selected batch, and of each that was grafted on another day.
[[nodiscard]] std::optional<DayWindow> plannedDays(const LaneInput& input, Id<Batch> batch,
                                                   const DayWindow& days);

void layPlannedStays(const LaneInput& input, const YardPicture& picture, Sheet& sheet);
/// Of the rounds in one nuc, in its row.
void layPlannedStays(const LaneInput& input, const SideOutlook& side, const QRectF& row,
                     Sheet& sheet);

}  // namespace tenthday
