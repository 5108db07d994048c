#include "book/row_sql.h"

namespace tenthday {
namespace {

QString text(std::string_view view) { return QString::fromUtf8(view.data(), view.size()); }

}  // namespace

QString selectStatement(std::string_view table, const QStringList& columns) {
    return QStringLiteral("SELECT %1 FROM %2").arg(columns.join(u", "), text(table));
}

QString insertStatement(std::string_view table, const QStringList& columns) {
    const QStringList marks(columns.size(), QStringLiteral("?"));
    return QStringLiteral("INSERT INTO %1 (%2) VALUES (%3)")
        .arg(text(table), columns.join(u", "), marks.join(u", "));
}

QString updateStatement(std::string_view table, const QStringList& columns) {
    QStringList settings;
    for (const auto& column : columns.mid(1)) settings += column + QStringLiteral(" = ?");
    return QStringLiteral("UPDATE %1 SET %2 WHERE id = ? AND version = ?")
        .arg(text(table), settings.join(u", "));
}

QString deleteStatement(std::string_view table) {
    return QStringLiteral("DELETE FROM %1 WHERE id = ? AND version = ?").arg(text(table));
}

std::string rowName(std::string_view table, const Values& values) {
    const auto* id = std::get_if<std::string>(&values.front());
    return std::string(table) + " " + (id != nullptr ? *id : "without id");
}

}  // namespace tenthday
