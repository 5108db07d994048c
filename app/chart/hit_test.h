/// @file hit_test.h  What lies under the pointer, from the rectangles that were painted.
#pragma once
#include "chart/chart_item.h"

namespace tenthday {

/// The topmost place at a point; a bar thinner or shorter than 8 px can be hit 4 px beside it.
/// A yard's name can be hit beside the plot; else Hit::None outside the plot and its head.
[[nodiscard]] const Target* targetAt(const Layout& layout, QPointF point);
/// The place of this name, or null where it is not laid out.
[[nodiscard]] const Target* findTarget(const Layout& layout, const TargetKey& key);

}  // namespace tenthday
