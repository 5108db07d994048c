/// @file look_grid.h  Boxes and sides of a first look, to circle what is there.
#pragma once
#include "sheets/week_pieces.h"

namespace tenthday {

/// As many boxes beside each other as there is room for, a line of cells for each side; at least
/// one line, of a grid that is not empty.
[[nodiscard]] std::vector<Piece> gridLines(const WeekRoom& room, const LookGrid& grid);

}  // namespace tenthday
