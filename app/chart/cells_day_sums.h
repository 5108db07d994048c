/// @file cells_day_sums.h  What a cells day comes to in words, and where they have room.
#pragma once
#include <array>

#include "chart/lane.h"

namespace tenthday {

/// "today", or the date.
[[nodiscard]] QString cellsDayName(const LaneInput& input, Day day);

struct CellsDayLabel {
    struct Line {
        QString text;
        Type type{};
    };
    std::array<Line, 4> lines;  ///< the day, ripe, ready, left
    qreal width = 0;            ///< px, with air beside the words
};

/// A cells day with its room.
struct CellsDaySum {
    std::size_t index = 0;  ///< in the cells days
    bool brief = false;     ///< in the fewest words
    CellsDayLabel label;
    QRectF plate;
};

/// Those that have room in the row, those that matter most first; in few words where whole ones
/// have none. Which batches have too many cells is said where that takes no other day its room:
/// first in place of what the others would have, so that they move aside.
[[nodiscard]] std::vector<CellsDaySum> cellsDaySums(const LaneInput& input, const QRectF& row,
                                                    const TextRuler& ruler);

}  // namespace tenthday
