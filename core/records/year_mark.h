/// @file year_mark.h  The colour a queen is marked with, by the year of her birth.
#pragma once
#include <cstdint>

namespace tenthday {

/// The international convention (S105): years that end in 1 or 6 white, 2 or 7 yellow, 3 or 8 red,
/// 4 or 9 green, 5 or 0 blue.
enum class YearMark : std::uint8_t { Blue, White, Yellow, Red, Green };

/// @param year  of birth, not negative
[[nodiscard]] constexpr YearMark yearMark(std::int32_t year) {
    return static_cast<YearMark>(year % 5);
}

}  // namespace tenthday
