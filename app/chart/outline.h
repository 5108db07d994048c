/// @file outline.h  The broken outline of what is planned or proposed and not (yet) so: unlike
/// every frame of what is.
#pragma once
#include "chart/sheet.h"

namespace tenthday {

/// Along the inner edge of a rectangle.
void layOutline(Layer layer, const QRectF& rect, Sheet& sheet);

}  // namespace tenthday
