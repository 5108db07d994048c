/// @file list_row.h  One row of a list on paper, and the heads above its columns.
#pragma once
#include "sheets/list_paper.h"
#include "sheets/piece.h"

namespace tenthday {

struct RowRoom {
    const PaperRuler& ruler;
    qreal width;
    bool ticks;       ///< a box before the row
    bool sideBySide;  ///< each cell has one line
};

[[nodiscard]] Piece rowPiece(const RowRoom& room, const std::vector<PaperColumn>& columns,
                             const PaperRow& row);
/// Empty where no column has a head.
[[nodiscard]] Piece columnHeads(const RowRoom& room, const std::vector<PaperColumn>& columns);

}  // namespace tenthday
