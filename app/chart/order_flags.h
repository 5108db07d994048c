/// @file order_flags.h  Orders as flags over their due days: how each stands by shape and word.
#pragma once
#include "chart/lane.h"

namespace tenthday {

/// Flags hang in rows under the lane's top, the worst orders first; a mast goes from each down to
/// the foot. Orders due so close together that one finds no room share a flag, "3 orders", on the
/// mast of the worst of them; each keeps its mast, so that it can be asked.
class OrderFlags {
public:
    /// Height of so many rows.
    [[nodiscard]] static qreal heightOf(int rows, const TextRuler& ruler);

    /// @param area  rows of flags, then the room their masts run through
    void lay(const LaneInput& input, const QRectF& area, int rows, Sheet& sheet) const;
};

}  // namespace tenthday
