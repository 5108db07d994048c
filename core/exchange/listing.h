/// @file listing.h  A table of answers, and its three written forms.
#pragma once
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/tokens.h"
#include "calendar/day.h"

namespace tenthday {

/// One value of a listing. Texts are stable English tokens or the user's own words.
struct ListingCell {
    enum class Kind : std::uint8_t { None, Number, Text };
    Kind kind = Kind::None;
    std::string text;  ///< what CSV shows; empty for None
    friend bool operator==(const ListingCell&, const ListingCell&) = default;
};

inline ListingCell cell(std::string text) { return {ListingCell::Kind::Text, std::move(text)}; }
inline ListingCell cell(std::string_view text) { return cell(std::string(text)); }
inline ListingCell cell(const char* text) { return cell(std::string(text)); }
inline ListingCell cell(Day day) { return cell(toText(day)); }
inline ListingCell cell(Moment moment) { return cell(toText(moment)); }
inline ListingCell cell(std::int32_t number) {
    return {ListingCell::Kind::Number, std::to_string(number)};
}
inline ListingCell yesNo(bool yes) { return cell(yes ? "yes" : "no"); }
template <HasTokens Enum>
ListingCell cell(Enum value) {
    return cell(token(value));
}
/// None when empty.
template <class T>
ListingCell cell(const std::optional<T>& value) {
    return value ? cell(*value) : ListingCell{};
}
/// A number with so many decimals, ties away from zero; never "-0".
[[nodiscard]] ListingCell decimal(double number, int decimals);
/// The shortest text that reads back as the same number.
[[nodiscard]] ListingCell shortest(double number);

/// Columns and rows; every row has as many cells as there are columns.
struct Listing {
    std::vector<std::string> columns;
    std::vector<std::vector<ListingCell>> rows;
};

enum class ListingForm : std::uint8_t { Csv, Json, Table };

/// CSV (header line, LF), JSON (an array of objects, a line each, None as null), or a padded
/// table for people (a cell to a line, numbers to the right). All end with LF.
[[nodiscard]] std::string render(const Listing& listing, ListingForm form);

}  // namespace tenthday
