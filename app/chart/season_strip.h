/// @file season_strip.h  The whole season in small under the lanes: what is shown of it, framed.
#pragma once
#include "chart/lane.h"

namespace tenthday {

[[nodiscard]] qreal stripHeight(const TextRuler& ruler);
/// Batches from graft to catch, dues of orders, today, and a frame about the days shown.
void layStrip(const LaneInput& input, const QRectF& area, Sheet& sheet);
/// The day of the season at an x of the strip, which is as wide as the axis.
[[nodiscard]] Day stripDayAt(const DayAxis& axis, qreal x);

}  // namespace tenthday
