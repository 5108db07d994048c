/// @file legend_mark.h  One entry of the legend.
#pragma once
#include <variant>

#include "screen_text/chart_text.h"
#include "screen_text/legend_text.h"

namespace tenthday {

/// A colour of the lanes, or a sign.
using LegendMark = std::variant<chart_text::LegendEntry, LegendSign>;

}  // namespace tenthday
