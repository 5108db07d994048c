#include "exchange/import_rows.h"

#include <array>

namespace tenthday {
namespace {

/// Columns whose names in a file are not those of the table.
std::string_view inFile(std::string_view column) {
    static constexpr std::array<std::pair<std::string_view, std::string_view>, 5> kNames{
        {{"from_day", "from"},
         {"until_day", "until"},
         {"where_kind", "where"},
         {"sure_permille", "sure"},
         {"value_milli", "override"}}};
    for (const auto& [table, file] : kNames)
        if (table == column) return file;
    return column;
}

}  // namespace

Uuid idOf(const ImportLine& line, ImportErrors& errors) {
    const auto text = line.text("id");
    if (text.empty()) return {};
    const auto uuid = uuidFromText(text);
    if (!uuid || *uuid == Uuid{}) errors.refuse(line.number(), "id", "no id: " + inQuotes(text));
    return uuid.value_or(Uuid{});
}

std::set<Uuid> idsNamed(const ImportFile& file, ImportErrors& errors) {
    std::set<Uuid> ids;
    for (std::size_t i = 0; i < file.size(); ++i)
        if (const auto id = idOf(file.line(i), errors); id != Uuid{}) ids.insert(id);
    return ids;
}

void refuseInvalid(std::int32_t line, const Error& invalid, ImportErrors& errors) {
    const std::string_view text = invalid.text;
    const auto colon = text.find(": ");
    const auto point = text.find('.');
    if (colon == std::string_view::npos || point > colon) return errors.refuse(line, "id", text);
    errors.refuse(line, inFile(text.substr(point + 1, colon - point - 1)), text.substr(colon + 2));
}

}  // namespace tenthday
