/// @file hidden_lanes.h  Where lanes are scrolled, a line under the plot names those above and
/// below.
#pragma once
#include <vector>

#include "chart/sheet.h"

namespace tenthday {

/// A lane as it was laid.
struct LaneSpan {
    QString name;
    qreal top = 0;
    qreal bottom = 0;
    bool isRowsOfBefore = false;  ///< hidden as soon as some of them are
};

[[nodiscard]] HiddenLanes hiddenLanes(const std::vector<LaneSpan>& lanes, const QRectF& plot,
                                      const TextRuler& ruler);

/// px that the line takes.
[[nodiscard]] qreal hiddenLanesHeight(const TextRuler& ruler);

/// Can be pressed: Hit::LanesBelow at its left, Hit::LanesAbove at its right. As many are named as
/// have room.
void layHiddenLanes(const HiddenLanes& hidden, const QRectF& line, Sheet& sheet);
/// In a picture, which nobody scrolls: which lanes it lacks.
void layLackingLanes(const QStringList& lanes, const QRectF& line, Sheet& sheet);

}  // namespace tenthday
