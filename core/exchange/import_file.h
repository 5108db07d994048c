/// @file import_file.h  A CSV text checked against the columns of its kind, and the one place where
/// a bad line gets its name.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.h"
#include "exchange/csv.h"
#include "exchange/kinds.h"

namespace tenthday {

/// The first thing that was wrong, as "line 7, column layout: ...". Later ones are dropped.
class ImportErrors {
public:
    void refuse(std::int32_t line, std::string_view column, std::string_view what);
    [[nodiscard]] bool none() const { return !first_; }
    [[nodiscard]] const Error& first() const { return *first_; }

private:
    std::optional<Error> first_;
};

/// One line of the file by column name.
class ImportLine {
public:
    ImportLine(const std::vector<std::string>& columns, const CsvRecord& record)
        : columns_(&columns), record_(&record) {}
    [[nodiscard]] std::int32_t number() const { return record_->line; }
    /// The field's text, or nothing when the file has no such column.
    [[nodiscard]] std::optional<std::string_view> find(std::string_view column) const;
    /// The field's text; empty when the file has no such column.
    [[nodiscard]] std::string_view text(std::string_view column) const {
        return find(column).value_or(std::string_view{});
    }

private:
    const std::vector<std::string>* columns_;
    const CsvRecord* record_;
};

/// A file whose header is good, whose lines are as long as it, and whose needed fields are filled.
class ImportFile {
public:
    /// @param passedOver  a column that may stand there and says nothing to us; empty: none
    [[nodiscard]] static Result<ImportFile> read(std::string_view text,
                                                 const std::vector<KindColumn>& columns,
                                                 std::string_view passedOver = {});
    [[nodiscard]] std::size_t size() const { return records_.size(); }
    [[nodiscard]] ImportLine line(std::size_t i) const { return {header_, records_[i]}; }

private:
    std::vector<std::string> header_;
    std::vector<CsvRecord> records_;
};

/// Refuses a value that stands in the file twice.
template <class Value>
class SeenOnce {
public:
    explicit SeenOnce(std::string_view column) : column_(column) {}
    void add(const ImportLine& line, const Value& value, ImportErrors& errors) {
        const auto [at, isNew] = seen_.emplace(value, line.number());
        if (!isNew)
            errors.refuse(line.number(), column_,
                          "there twice, first on line " + std::to_string(at->second));
    }

private:
    std::string_view column_;
    std::map<Value, std::int32_t> seen_;
};

}  // namespace tenthday
