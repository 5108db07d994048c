#include "exchange/field_text.h"

#include <charconv>

#include "exchange/csv.h"

namespace tenthday {
namespace {

constexpr std::size_t kQuotedMost = 60;  // bytes of user text shown in an error line

template <class Number>
bool readWhole(std::string_view text, Number& value) {
    const auto* end = text.data() + text.size();
    const auto [stop, failed] = std::from_chars(text.data(), end, value);
    return failed == std::errc{} && stop == end;
}

}  // namespace

std::string inQuotes(std::string_view text) {
    std::string shown = "'";
    while (!text.empty() && shown.size() < kQuotedMost) {
        const auto length = utf8Length(text);
        const bool plain =
            length > 1 || (length == 1 && text.front() >= ' ' && text.front() != 127);
        plain ? shown.append(text.substr(0, length)) : shown.append("?");
        text.remove_prefix(std::max<std::size_t>(length, 1));
    }
    return shown + (text.empty() ? "'" : "...'");
}

FieldComplaint readField(std::string_view text, std::string& value) {
    value = text;
    return std::nullopt;
}

FieldComplaint readField(std::string_view text, Tenths& value) {
    const auto complaint = "a number with one decimal at most is needed, not " + inQuotes(text);
    const bool negative = text.starts_with('-');
    const auto digits = text.substr(negative ? 1 : 0);
    const auto point = digits.find('.');
    const auto decimals = point == std::string_view::npos ? "0" : digits.substr(point + 1);
    std::int32_t front = 0;
    std::int32_t back = 0;
    if (!readWhole(digits.substr(0, point), front) || front < 0 || front > 100'000 ||
        digits.starts_with('-') || decimals.size() != 1 || !readWhole(decimals, back) || back < 0)
        return complaint;
    value = Tenths{(negative ? -1 : 1) * (front * 10 + back)};
    return std::nullopt;
}

FieldComplaint readField(std::string_view text, std::int32_t& value) {
    if (readWhole(text, value)) return std::nullopt;
    return "a whole number is needed, not " + inQuotes(text);
}

FieldComplaint readField(std::string_view text, bool& value) {
    if (text != "yes" && text != "no") return "yes or no is needed, not " + inQuotes(text);
    value = text == "yes";
    return std::nullopt;
}

FieldComplaint readField(std::string_view text, Day& value) {
    const auto day = dayFromText(text);
    if (!day) return "a day of the calendar as YYYY-MM-DD is needed, not " + inQuotes(text);
    value = *day;
    return std::nullopt;
}

FieldComplaint readField(std::string_view text, Hour& value) {
    if (!readWhole(text, value.value) || value.value < 0 || value.value > 23)
        return "an hour from 0 to 23 is needed, not " + inQuotes(text);
    return std::nullopt;
}

std::string oneOfNeeded(const std::string_view* names, std::size_t count, std::string_view text) {
    std::string list;
    for (std::size_t i = 0; i < count; ++i) {
        if (names[i].empty()) continue;
        if (!list.empty()) list += ", ";
        list += names[i];
    }
    return "one of " + list + " is needed, not " + inQuotes(text);
}

FieldComplaint readThousandths(std::string_view text, std::int32_t& value) {
    const std::string complaint =
        "a number with three decimals at most is needed, not " + inQuotes(text);
    const auto point = text.find('.');
    const auto whole = text.substr(0, point);
    auto decimals = std::string(point == std::string_view::npos ? "0" : text.substr(point + 1));
    std::uint32_t front = 0;
    std::uint32_t back = 0;
    if (decimals.empty() || decimals.size() > 3 || !readWhole(whole, front) || front > 1'000'000)
        return complaint;
    decimals.resize(3, '0');
    if (!readWhole(std::string_view(decimals), back)) return complaint;
    value = static_cast<std::int32_t>(front * 1000 + back);
    return std::nullopt;
}

}  // namespace tenthday
