/// @file cell_value.h  A column's value as it is stored: nothing, a 32-bit integer, or text.
#pragma once
#include <optional>
#include <string>
#include <type_traits>
#include <variant>

#include "base/count.h"
#include "base/id.h"
#include "base/tokens.h"
#include "calendar/day.h"

namespace tenthday {

using CellValue = std::variant<std::monostate, std::int32_t, std::string>;

inline CellValue toCell(std::int32_t value) { return value; }
inline CellValue toCell(bool value) { return std::int32_t{value}; }
inline CellValue toCell(const std::string& value) { return value; }
inline CellValue toCell(Day day) { return toText(day); }
inline CellValue toCell(Hour hour) { return hour.value; }
template <class Kind>
CellValue toCell(Count<Kind> count) {
    return count.value;
}
inline CellValue toCell(Tenths tenths) { return tenths.value; }
template <class Kind>
CellValue toCell(Id<Kind> id) {
    return toText(id.uuid);
}
template <HasTokens Enum>
CellValue toCell(Enum value) {
    return std::string(token(value));
}
template <class T>
CellValue toCell(const std::optional<T>& value) {
    return value ? toCell(*value) : CellValue{};
}

/// Each reads a stored value back; false when it is not of the right form.
inline bool fromCell(const CellValue& cell, std::int32_t& value) {
    const auto* number = std::get_if<std::int32_t>(&cell);
    return number != nullptr && ((value = *number), true);
}
inline bool fromCell(const CellValue& cell, bool& value) {
    const auto* number = std::get_if<std::int32_t>(&cell);
    return number != nullptr && (*number == 0 || *number == 1) && ((value = *number == 1), true);
}
inline bool fromCell(const CellValue& cell, std::string& value) {
    const auto* text = std::get_if<std::string>(&cell);
    return text != nullptr && ((value = *text), true);
}
inline bool fromCell(const CellValue& cell, Day& day) {
    const auto* text = std::get_if<std::string>(&cell);
    const auto read = text != nullptr ? dayFromText(*text) : std::nullopt;
    return read && ((day = *read), true);
}
inline bool fromCell(const CellValue& cell, Hour& hour) {
    const auto* number = std::get_if<std::int32_t>(&cell);
    return number != nullptr && *number >= 0 && *number <= 23 && ((hour = Hour{*number}), true);
}
template <class Kind>
bool fromCell(const CellValue& cell, Count<Kind>& count) {
    return fromCell(cell, count.value);
}
inline bool fromCell(const CellValue& cell, Tenths& tenths) { return fromCell(cell, tenths.value); }
template <class Kind>
bool fromCell(const CellValue& cell, Id<Kind>& id) {
    const auto* text = std::get_if<std::string>(&cell);
    const auto read = text != nullptr ? uuidFromText(*text) : std::nullopt;
    return read && ((id.uuid = *read), true);
}
template <HasTokens Enum>
bool fromCell(const CellValue& cell, Enum& value) {
    const auto* text = std::get_if<std::string>(&cell);
    const auto read = text != nullptr ? fromToken<Enum>(*text) : std::nullopt;
    return read && ((value = *read), true);
}
template <class T>
bool fromCell(const CellValue& cell, std::optional<T>& value) {
    if (std::holds_alternative<std::monostate>(cell)) return value.reset(), true;
    return fromCell(cell, value.emplace());
}

}  // namespace tenthday
