/// @file list_row.h  One row of a list on paper, and the heads above its columns.
#pragma once
#include "sheets/list_paper.h"
#include "sheets/piece.h"

namespace tenthday {

inline constexpr qreal kWideRow = millimetres(9);
inline constexpr qreal kCloseRow = millimetres(7);  ///< a box to tick still stands free

struct RowRoom {
    const PaperRuler& ruler;
    qreal width;
    qreal row;        ///< height of a row of one line
    bool ticks;       ///< a box before the row
    bool sideBySide;  ///< each cell has one line
};

[[nodiscard]] Piece rowPiece(const RowRoom& room, const std::vector<PaperColumn>& columns,
                             const PaperRow& row);
/// Empty where no column has a head.
[[nodiscard]] Piece columnHeads(const RowRoom& room, const std::vector<PaperColumn>& columns);

}  // namespace tenthday
