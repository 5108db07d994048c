/// @file order_flags.h  Orders as flags over their due days: how each stands by shape and word.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Flags hang in rows under the lane's top, the worst orders first; a mast goes from each down to
/// the foot. One that finds no room keeps its mast, so that it can still be asked.
class OrderFlags {
public:
    /// Height of so many rows.
    [[nodiscard]] static qreal heightOf(int rows, const TextRuler& ruler);

    /// @param area  rows of flags, then the room their masts run through
    void lay(const LaneInput& input, const QRectF& area, int rows, Sheet& sheet) const;
};

}  // namespace tenthday
