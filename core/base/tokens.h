/// @file tokens.h  Stable English tokens of enums: the same in SQL, CSV, JSON and on the command
/// line.
#pragma once
#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace tenthday {

/// Specialised beside each enum that has tokens: `static constexpr std::array names{...}`,
/// one name per enumerator, in order from 0.
template <class Enum>
struct TokensOf;

template <class Enum>
concept HasTokens = requires {
    TokensOf<Enum>::names.size();
};

template <HasTokens Enum>
[[nodiscard]] constexpr std::string_view token(Enum value) {
    return TokensOf<Enum>::names[static_cast<std::size_t>(value)];
}

template <HasTokens Enum>
[[nodiscard]] constexpr std::optional<Enum> fromToken(std::string_view text) {
    const auto& names = TokensOf<Enum>::names;
    for (std::size_t i = 0; i < names.size(); ++i)
        if (names[i] == text) return static_cast<Enum>(i);
    return std::nullopt;
}

/// How many enumerators there are.
template <HasTokens Enum>
inline constexpr std::size_t kTokenCount = TokensOf<Enum>::names.size();

}  // namespace tenthday
