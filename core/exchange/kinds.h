/// @file kinds.h  The kinds `export` and `import` know, with their columns.
#pragma once
#include <span>
#include <string_view>
#include <vector>

namespace tenthday {

inline constexpr std::string_view kBoxes = "boxes";
inline constexpr std::string_view kMethods = "methods";
inline constexpr std::string_view kFacts = "facts";

/// All kinds, in an order in which each refers only to itself and to earlier ones: importing
/// them in turn fills an empty book.
[[nodiscard]] std::span<const std::string_view> exportKinds();
[[nodiscard]] bool isKind(std::string_view text);

struct KindColumn {
    std::string_view name;
    bool needed;  ///< a file to import must have it and every line a value
    std::string_view alias = {};
};
/// In the order of the contract. `kind` must be one of exportKinds().
[[nodiscard]] std::vector<KindColumn> columnsOf(std::string_view kind);

}  // namespace tenthday
