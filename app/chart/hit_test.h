/// @file hit_test.h  What lies under the pointer, from the rectangles that were painted.
#pragma once
#include "chart/chart_item.h"

namespace tenthday {

/// The topmost place at a point; a bar thinner or shorter than 8 px can be hit 4 px beside it.
/// The names of yards and lanes can be hit beside the plot, legend and strip under it; else
/// Hit::None outside the plot and its head.
[[nodiscard]] const Target* targetAt(const Layout& layout, QPointF point);
/// The topmost place of one kind at a point, whatever else lies over it; null where there is none.
[[nodiscard]] const Target* targetAt(const Layout& layout, QPointF point, Hit hit);
/// What of a place is in sight: not scrolled behind head, foot or names. Empty where nothing is.
[[nodiscard]] QRectF seenPart(const Layout& layout, const Target& target);
/// The place of this name, or null where it is not laid out.
[[nodiscard]] const Target* findTarget(const Layout& layout, const TargetKey& key);

}  // namespace tenthday
