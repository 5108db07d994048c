/// @file chart_head.h  Months, weeks and days along the top, with today's and the chosen day's
/// flag; and the ground under all lanes: weekends, days off, weeks.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Height of the head at an axis: a row for single days appears when there is room for them.
[[nodiscard]] qreal headHeight(const DayAxis& axis, const TextRuler& ruler);
void layHead(const LaneInput& input, const QRectF& area, Sheet& sheet);
/// @param area the plot under the head
void layGround(const LaneInput& input, const QRectF& area, Sheet& sheet);
/// Lines of today and of the chosen day through the plot.
void layDayLines(const LaneInput& input, const QRectF& area, Sheet& sheet);

/// Days are so wide that hours are told.
[[nodiscard]] bool hasHours(const DayAxis& axis);

}  // namespace tenthday
