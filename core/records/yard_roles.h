/// @file yard_roles.h  What a yard can be used for: the words of Yard::roles.
#pragma once
#include <array>
#include <string_view>

namespace tenthday {

inline constexpr std::array<std::string_view, 4> kYardRoles{"mating", "builder", "donor", "drone"};

}  // namespace tenthday
