/// @file sources.h  What the keys of published sources stand for.
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace tenthday {

/// "S1, S2; S7" -> one line for each key, "S1 Queensland ...". Words that are no key of the list
/// ("common practice", "from memory", "derived") stay a line by themselves.
[[nodiscard]] std::vector<std::string> sourceLines(std::string_view keys);

}  // namespace tenthday
