/// @file legend_marks.h  Which entries the legend has: those of signs that the season has.
#pragma once
#include "chart/chart_options.h"
#include "outlook/outlook.h"

namespace tenthday {

/// Lane by lane. What a hand brings about (a chosen batch, days that clash with nothing, outlines
/// of what was) is named wherever a hand can. @param days  of the nucs that are looked at: all of
/// the season where it can be scrolled, so that the legend stays as it is meanwhile
[[nodiscard]] std::vector<LegendMark> legendMarks(const Outlook& outlook,
                                                  const ChartOptions& options,
                                                  const DayWindow& days);

}  // namespace tenthday
