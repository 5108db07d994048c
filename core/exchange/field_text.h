/// @file field_text.h  Values of records as the text of one field, both ways.
///
/// Numbers are plain digits, days `YYYY-MM-DD`, yes/no for flags, tokens for enums. An empty field
/// is no value. `readField` returns nothing when done, else what was wrong, in words.
#pragma once
#include <optional>
#include <string>
#include <string_view>

#include "base/count.h"
#include "base/tokens.h"
#include "calendar/day.h"
#include "exchange/listing.h"

namespace tenthday {

using FieldComplaint = std::optional<std::string>;

/// The text in quotes for an error line: on one line and not endless.
[[nodiscard]] std::string inQuotes(std::string_view text);

inline ListingCell fieldOf(const std::string& value) { return cell(value); }
inline ListingCell fieldOf(std::int32_t value) { return cell(value); }
inline ListingCell fieldOf(bool value) { return yesNo(value); }
inline ListingCell fieldOf(Day value) { return cell(value); }
inline ListingCell fieldOf(Hour value) { return cell(value.value); }
template <class Kind>
ListingCell fieldOf(Count<Kind> value) {
    return cell(value.value);
}
inline ListingCell fieldOf(Tenths value) { return decimal(value.value / 10.0, 1); }
template <HasTokens Enum>
ListingCell fieldOf(Enum value) {
    return cell(value);
}
template <class T>
ListingCell fieldOf(const std::optional<T>& value) {
    return value ? fieldOf(*value) : ListingCell{};
}

[[nodiscard]] FieldComplaint readField(std::string_view text, std::string& value);
[[nodiscard]] FieldComplaint readField(std::string_view text, std::int32_t& value);
[[nodiscard]] FieldComplaint readField(std::string_view text, bool& value);
[[nodiscard]] FieldComplaint readField(std::string_view text, Day& value);
[[nodiscard]] FieldComplaint readField(std::string_view text, Hour& value);
template <class Kind>
FieldComplaint readField(std::string_view text, Count<Kind>& value) {
    return readField(text, value.value);
}
/// A decimal number, one decimal at most, may be negative: "-3.5".
[[nodiscard]] FieldComplaint readField(std::string_view text, Tenths& value);
/// "one of a, b, c is needed, not 'x'".
[[nodiscard]] std::string oneOfNeeded(const std::string_view* names, std::size_t count,
                                      std::string_view text);
template <HasTokens Enum>
FieldComplaint readField(std::string_view text, Enum& value) {
    if (const auto read = fromToken<Enum>(text)) return value = *read, std::nullopt;
    const auto& names = TokensOf<Enum>::names;
    return oneOfNeeded(names.data(), names.size(), text);
}
/// A decimal number as thousandths, three decimals at most: "34.5" -> 34500.
[[nodiscard]] FieldComplaint readThousandths(std::string_view text, std::int32_t& value);

}  // namespace tenthday
