/// @file natural_order.h  Labels as people order them: "Box 2" before "Box 10".
#pragma once
#include <string>
#include <string_view>

namespace tenthday {

/// Runs of digits compare as numbers, everything else byte by byte. A strict weak order.
[[nodiscard]] bool naturalLess(std::string_view a, std::string_view b);

/// A text whose plain byte order is the natural order of the labels: for sorting many at once.
[[nodiscard]] std::string naturalKey(std::string_view label);

}  // namespace tenthday
