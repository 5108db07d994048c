/// @file year_dot.h  A queen's year mark as a coloured dot, which means nothing else anywhere.
#pragma once
#include <QIcon>

#include "look/palette.h"
#include "records/year_mark.h"

namespace tenthday {

/// A dot with an edge, sharp at any scale; the colour's name is to stand beside it.
[[nodiscard]] QIcon yearDot(YearMark mark, Look look);

}  // namespace tenthday
