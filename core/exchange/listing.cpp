#include "exchange/listing.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

#include "exchange/csv.h"
#include "exchange/json.h"

namespace tenthday {
namespace {

using Kind = ListingCell::Kind;

std::string csvOf(const Listing& listing) {
    std::string text;
    appendCsv(text, listing.columns);
    std::vector<std::string> fields;
    for (const auto& row : listing.rows) {
        fields.clear();
        for (const auto& c : row) fields.push_back(c.text);
        appendCsv(text, fields);
    }
    return text;
}

void appendJson(std::string& json, const ListingCell& c) {
    switch (c.kind) {
        case Kind::None:
            json += "null";
            return;
        case Kind::Number:
            json += c.text;
            return;
        case Kind::Text:
            appendJsonText(json, c.text);
            return;
    }
}

std::string jsonOf(const Listing& listing) {
    std::string json = "[";
    for (std::size_t r = 0; r < listing.rows.size(); ++r) {
        json += r == 0 ? "\n  {" : ",\n  {";
        for (std::size_t i = 0; i < listing.columns.size(); ++i) {
            if (i > 0) json += ", ";
            appendJsonText(json, listing.columns[i]);
            json += ": ";
            appendJson(json, listing.rows[r][i]);
        }
        json += '}';
    }
    return json + (listing.rows.empty() ? "]\n" : "\n]\n");
}

/// Line breaks and other control characters would tear the table.
std::string onOneLine(std::string text) {
    for (char& c : text)
        if (static_cast<unsigned char>(c) < 0x20) c = ' ';
    return text;
}

std::size_t charactersIn(std::string_view text) {
    return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
    }));
}

void appendPadded(std::string& line, const std::string& text, std::size_t width, bool right) {
    const std::string gap(width - charactersIn(text), ' ');
    if (!line.empty()) line += "  ";
    line += right ? gap + text : text + gap;
}

std::string tableOf(const Listing& listing) {
    const auto columns = listing.columns.size();
    std::vector<std::size_t> widths(columns);
    std::vector<bool> numbers(columns, !listing.rows.empty());
    for (std::size_t i = 0; i < columns; ++i) {
        widths[i] = charactersIn(listing.columns[i]);
        for (const auto& row : listing.rows) {
            widths[i] = std::max(widths[i], charactersIn(row[i].text));
            if (row[i].kind == Kind::Text) numbers[i] = false;
        }
    }
    std::string text;
    const auto append = [&](auto&& textOf) {
        std::string line;
        for (std::size_t i = 0; i < columns; ++i)
            appendPadded(line, textOf(i), widths[i], numbers[i]);
        line.erase(line.find_last_not_of(' ') + 1);
        text += line + '\n';
    };
    append([&](std::size_t i) { return listing.columns[i]; });
    append([&](std::size_t i) { return std::string(widths[i], '-'); });
    for (const auto& row : listing.rows)
        append([&](std::size_t i) { return onOneLine(row[i].text); });
    return text;
}

}  // namespace

ListingCell decimal(double number, int decimals) {
    const double scale = std::pow(10.0, decimals);
    // The tiny push makes ties such as 0.25 and 0.35, which binary holds unequally, go one way.
    const double rounded = std::copysign(std::floor(std::abs(number) * scale + 0.5 + 1e-9), number);
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), rounded == 0 ? 0.0 : rounded / scale,
                      std::chars_format::fixed, decimals);
    return {Kind::Number, std::string(text.data(), end.ptr)};
}

ListingCell shortest(double number) {
    std::array<char, 64> text{};
    const auto end =
        std::to_chars(text.data(), text.data() + text.size(), number, std::chars_format::fixed);
    return {Kind::Number, std::string(text.data(), end.ptr)};
}

std::string render(const Listing& listing, ListingForm form) {
    switch (form) {
        case ListingForm::Csv:
            return csvOf(listing);
        case ListingForm::Json:
            return jsonOf(listing);
        case ListingForm::Table:
            break;
    }
    return tableOf(listing);
}

}  // namespace tenthday
