/// @file row_sql.h  Row statements and values, made from ColumnsOf: plain SQL that PostgreSQL
/// shares.
#pragma once
#include <QString>
#include <QStringList>

#include "book/connection.h"
#include "records/validity.h"

namespace tenthday {

[[nodiscard]] QString selectStatement(std::string_view table, const QStringList& columns);
[[nodiscard]] QString insertStatement(std::string_view table, const QStringList& columns);
/// Values: version and columns, then id and the version it must still have.
[[nodiscard]] QString updateStatement(std::string_view table, const QStringList& columns);
/// Values: id and the version it must still have.
[[nodiscard]] QString deleteStatement(std::string_view table);

/// `id`, `version`, then the columns of ColumnsOf, as they stand in the table.
template <class Row>
[[nodiscard]] QStringList columnNames() {
    QStringList names{QStringLiteral("id"), QStringLiteral("version")};
    forEachColumn<Row>([&](const auto& column) {
        names += QString::fromUtf8(column.name.data(), column.name.size());
    });
    return names;
}

/// The row's values in the order of columnNames.
template <class Row>
[[nodiscard]] Values valuesOf(const Row& row) {
    Values values{toCell(row.id), toCell(row.version)};
    forEachColumn<Row>([&](const auto& column) { values.push_back(toCell(row.*column.member)); });
    return values;
}

/// "batch 01890000-..." for messages about a row.
[[nodiscard]] std::string rowName(std::string_view table, const Values& values);

/// The row of values in the order of columnNames, checked by itself; or which row and column of it
/// cannot be right.
template <class Row>
[[nodiscard]] Result<Row> rowOf(const Values& values) {
    Row row;
    std::string_view wrong;
    if (!fromCell(values[0], row.id)) wrong = "id";
    if (!fromCell(values[1], row.version) || row.version < 1) wrong = "version";
    std::size_t place = 2;
    forEachColumn<Row>([&](const auto& column) {
        if (!fromCell(values[place++], row.*column.member)) wrong = column.name;
    });
    const auto table = ColumnsOf<Row>::table;
    if (!wrong.empty())
        return Error{rowName(table, values) + ": " + std::string(wrong) + " cannot be read"};
    if (auto valid = checkRow(row); !valid)
        return Error{rowName(table, values) + ": " + valid.error().text};
    return row;
}

}  // namespace tenthday
