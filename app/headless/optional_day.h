/// @file optional_day.h  A day in an option that may be left out, such as `--on`.
#pragma once
#include <optional>

#include "headless/verb.h"

namespace tenthday {

/// None where the option is not given; refused, like dayOption(), where it holds no day.
[[nodiscard]] Result<std::optional<Day>> optionalDay(const Arguments& arguments,
                                                     std::string_view option);

}  // namespace tenthday
