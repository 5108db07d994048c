#include "exchange/spreadsheet.h"

#include <algorithm>
#include <set>

#include "exchange/csv.h"
#include "exchange/kind_columns.h"
#include "exchange/kinds.h"
#include "exchange/outer_space.h"

namespace tenthday {
namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

template <class Row, class Member>
void addDecimal(std::set<std::string_view>& names, const FileColumn<Row, Member>& column) {
    if (std::is_same_v<Member, Tenths> || std::is_same_v<Member, std::optional<Tenths>>)
        names.insert(column.name);
}
template <class Row, class Member>
void addDecimal(std::set<std::string_view>&, const SideColumns<Row, Member>&) {}

/// Columns of a kind whose numbers have decimals.
std::set<std::string_view> decimalColumns(std::string_view kind) {
    if (kind == kFacts) return {"value", "override"};
    std::set<std::string_view> names;
    forEachRowType(FileKinds{}, [&]<class Row>(std::type_identity<Row>) {
        if (KindOf<Row>::name == kind)
            std::apply([&](const auto&... c) { (addDecimal(names, c), ...); },
                       KindOf<Row>::columns);
    });
    return names;
}

/// "-12.5" and the like, with this sign and no other.
bool isDecimal(std::string_view text, char sign) {
    if (!text.empty() && text.front() == '-') text.remove_prefix(1);
    const auto at = text.find(sign);
    const auto digits = [](std::string_view part) {
        return !part.empty() && part.find_first_not_of("0123456789") == std::string_view::npos;
    };
    return at != std::string_view::npos && digits(text.substr(0, at)) &&
           digits(text.substr(at + 1));
}

std::string withSign(std::string text, char from, char to) {
    if (isDecimal(text, from)) text[text.find(from)] = to;
    return text;
}

void appendCell(std::string& text, const std::string& cell, char part) {
    const std::string marks{part, '"', '\r', '\n'};
    if (cell.find_first_of(marks) == std::string::npos && !hasOuterSpace(cell)) {
        text += cell;
        return;
    }
    text += '"';
    for (const char c : cell) text += c == '"' ? "\"\"" : std::string(1, c);
    text += '"';
}

void appendLine(std::string& text, const std::vector<std::string>& cells, char part,
                std::string_view end) {
    if (cells.size() == 1 && cells[0].empty()) text += "\"\"";  // else an empty line
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (i > 0) text += part;
        appendCell(text, cells[i], part);
    }
    text += end;
}

/// What parts the cells of a text, by its first line.
char partOf(std::string_view text) {
    const auto line = text.substr(0, text.find_first_of("\r\n"));
    const auto count = [&](char part) { return std::count(line.begin(), line.end(), part); };
    if (count('\t') > count(',') && count('\t') >= count(';')) return '\t';
    return count(';') > count(',') ? ';' : ',';
}

/// Parts the cells with commas instead: a cell that holds one is quoted, what is quoted stays.
std::string partedByCommas(std::string_view text, char part) {
    std::string csv;
    std::string plain;
    bool quoted = false;
    bool atStart = true;
    const auto flush = [&] {
        if (!plain.empty()) appendCell(csv, plain, ',');
        plain.clear();
    };
    for (const char c : text) {
        if (quoted || (atStart && c == '"')) {
            csv += c;
            if (c == '"') quoted = !quoted;
            atStart = c == '"' && !quoted;  // a doubled quote opens again
            continue;
        }
        atStart = c == part || c == '\n';
        if (c != part && c != '\n' && c != '\r') {
            plain += c;
            continue;
        }
        flush();
        csv += c == part ? ',' : c;
    }
    flush();
    return csv;
}

}  // namespace

std::string renderForSpreadsheet(const Listing& listing, std::string_view kind,
                                 SpreadsheetForm form) {
    const auto decimals = decimalColumns(kind);
    std::string text(kByteOrderMark);
    appendLine(text, listing.columns, form.part, "\r\n");
    for (const auto& row : listing.rows) {
        std::vector<std::string> cells;
        for (std::size_t i = 0; i < row.size(); ++i)
            cells.push_back(decimals.contains(listing.columns[i])
                                ? withSign(row[i].text, '.', form.decimal)
                                : row[i].text);
        appendLine(text, cells, form.part, "\r\n");
    }
    return text;
}

std::string plainCsv(std::string_view text, std::string_view kind) {
    auto rest = text;
    if (rest.substr(0, kByteOrderMark.size()) == kByteOrderMark)
        rest.remove_prefix(kByteOrderMark.size());
    const char part = partOf(rest);
    if (part == ',') return std::string(text);
    auto csv = partedByCommas(rest, part);
    const auto decimals = decimalColumns(kind);
    const auto records = readCsv(csv);
    if (decimals.empty() || !records || records.value().empty()) return csv;
    const auto& header = records.value().front().fields;
    std::string plain;
    std::int32_t line = 1;
    for (const auto& record : records.value()) {
        for (; line < record.line; ++line) plain += '\n';  // blank lines keep the count
        auto cells = record.fields;
        for (std::size_t i = 0; i < cells.size() && i < header.size(); ++i) {
            if (decimals.contains(header[i])) cells[i] = withSign(cells[i], ',', '.');
            line += static_cast<std::int32_t>(std::count(cells[i].begin(), cells[i].end(), '\n'));
        }
        appendCsv(plain, cells);
        ++line;
    }
    return plain;
}

}  // namespace tenthday
