#include "exchange/import_file.h"

#include <algorithm>

#include "exchange/field_text.h"

namespace tenthday {
namespace {

std::string namesOf(const std::vector<KindColumn>& columns) {
    std::string names;
    for (const auto& c : columns) names += (names.empty() ? "" : ", ") + std::string(c.name);
    return names;
}

void checkHeader(const std::vector<std::string>& header, const std::vector<KindColumn>& columns,
                 std::string_view passedOver, std::int32_t line, ImportErrors& errors) {
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (!passedOver.empty() && header[i] == passedOver) continue;
        const auto known = [&](const auto& c) { return c.name == header[i]; };
        if (std::none_of(columns.begin(), columns.end(), known))
            errors.refuse(line, inQuotes(header[i]),
                          "unknown; the columns are " + namesOf(columns));
        if (std::find(header.begin(), header.begin() + static_cast<std::ptrdiff_t>(i), header[i]) !=
            header.begin() + static_cast<std::ptrdiff_t>(i))
            errors.refuse(line, header[i], "there twice");
    }
    for (const auto& c : columns)
        if (c.needed && std::find(header.begin(), header.end(), c.name) == header.end())
            errors.refuse(line, c.name, "missing");
}

void checkRecord(const std::vector<std::string>& header, const CsvRecord& record,
                 const std::vector<KindColumn>& columns, ImportErrors& errors) {
    const auto fields = record.fields.size();
    if (fields < header.size())
        return errors.refuse(record.line, header[fields], "missing: the line ends before it");
    if (fields > header.size())
        return errors.refuse(record.line, std::to_string(header.size() + 1),
                             "one too many: the header has " + std::to_string(header.size()));
    for (const auto& c : columns) {
        const auto at = std::find(header.begin(), header.end(), c.name);
        if (c.needed && record.fields[static_cast<std::size_t>(at - header.begin())].empty())
            errors.refuse(record.line, c.name, "a value is needed");
    }
}

}  // namespace

void ImportErrors::refuse(std::int32_t line, std::string_view column, std::string_view what) {
    if (first_) return;
    first_ = Error{"line " + std::to_string(line) + ", column " + std::string(column) + ": " +
                   std::string(what)};
}

std::optional<std::string_view> ImportLine::find(std::string_view column) const {
    const auto at = std::find(columns_->begin(), columns_->end(), column);
    if (at == columns_->end()) return std::nullopt;
    return record_->fields[static_cast<std::size_t>(at - columns_->begin())];
}

Result<ImportFile> ImportFile::read(std::string_view text, const std::vector<KindColumn>& columns,
                                    std::string_view passedOver) {
    auto records = readCsv(text);
    if (!records) return records.error();
    ImportErrors errors;
    if (records.value().empty()) {
        errors.refuse(1, columns.front().name, "a header line is needed: " + namesOf(columns));
        return errors.first();
    }
    ImportFile file;
    file.header_ = records.value().front().fields;
    for (auto& name : file.header_)
        for (const auto& c : columns)
            if (!c.alias.empty() && name == c.alias) name = c.name;
    checkHeader(file.header_, columns, passedOver, records.value().front().line, errors);
    if (!errors.none()) return errors.first();
    file.records_.assign(records.value().begin() + 1, records.value().end());
    for (const auto& record : file.records_) checkRecord(file.header_, record, columns, errors);
    if (!errors.none()) return errors.first();
    return file;
}

}  // namespace tenthday
