/// @file outer_space.h  Fields that must be quoted for readers which trim what is not.
#pragma once
#include <string_view>

namespace tenthday {

/// Whether a text begins or ends with a space or a tab.
[[nodiscard]] constexpr bool hasOuterSpace(std::string_view text) {
    const auto isSpace = [](char c) { return c == ' ' || c == '\t'; };
    return !text.empty() && (isSpace(text.front()) || isSpace(text.back()));
}

}  // namespace tenthday
