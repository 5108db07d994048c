/// @file legend_fold.h  Whether the chart's legend is folded to its head.
#pragma once
#include <cstdint>

namespace tenthday {

/// As room is, or as a hand left it.
enum class LegendFold : std::uint8_t { ByRoom, Folded, Opened };

}  // namespace tenthday
