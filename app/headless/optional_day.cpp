#include "headless/optional_day.h"

namespace tenthday {

Result<std::optional<Day>> optionalDay(const Arguments& arguments, std::string_view option) {
    if (!arguments.has(option)) return std::optional<Day>{};
    const auto day = dayOption(arguments, option);
    if (!day) return day.error();
    return std::optional(day.value());
}

}  // namespace tenthday
