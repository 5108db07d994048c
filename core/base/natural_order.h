/// @file natural_order.h  Labels as people order them: "Box 2" before "Box 10".
#pragma once
#include <string_view>

namespace tenthday {

/// Runs of digits compare as numbers, everything else byte by byte. A strict weak order.
[[nodiscard]] bool naturalLess(std::string_view a, std::string_view b);

}  // namespace tenthday
