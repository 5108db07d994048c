/// @file legend_text.h  In the legend of the chart: the signs that stand over all lanes.
#pragma once
#include <QString>

namespace tenthday::legend_text {

/// The arrow on the foot of the queens' lane: an order that leaves before or after it is due.
[[nodiscard]] QString leaves();
/// The broken outline of what is not so, or not yet.
[[nodiscard]] QString planned();
/// The sign of trouble.
[[nodiscard]] QString trouble();

}  // namespace tenthday::legend_text
