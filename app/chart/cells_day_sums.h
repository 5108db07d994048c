/// @file cells_day_sums.h  What a cells day comes to in words, and where they have room.
#pragma once
#include "chart/cells_day_label.h"

namespace tenthday {

/// A cells day with its room.
struct CellsDaySum {
    std::size_t index = 0;                 ///< in the cells days
    bool brief = false;                    ///< in the fewest words
    const CellsDayLabel* label = nullptr;  ///< of the labels
    QRectF plate;
};

/// Those that have room in the row, those that matter most first; in few words where whole ones
/// have none. Which batches have too many cells is said where that takes no other day its room:
/// first in place of what the others would have, so that they move aside.
[[nodiscard]] std::vector<CellsDaySum> cellsDaySums(const LaneInput& input, const QRectF& row,
                                                    CellsDayLabels& labels, const TextRuler& ruler);

}  // namespace tenthday
