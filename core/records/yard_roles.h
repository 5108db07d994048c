/// @file yard_roles.h  What a yard can be used for: the words of Yard::roles.
#pragma once
#include <array>
#include <string_view>

namespace tenthday {

inline constexpr std::array<std::string_view, 4> kYardRoles{"mating", "builder", "donor", "drone"};

/// @param roles  words with a space between, as in Yard::roles
[[nodiscard]] constexpr bool hasRole(std::string_view roles, std::string_view role) {
    while (!roles.empty()) {
        const auto word = roles.substr(0, roles.find(' '));
        if (word == role) return true;
        roles.remove_prefix(word.size() < roles.size() ? word.size() + 1 : word.size());
    }
    return false;
}

}  // namespace tenthday
