#include "book/connection.h"

#include <QSqlRecord>
#include <QUuid>
#include <QVariant>
#include <limits>

namespace tenthday {
namespace {

QVariant toVariant(const CellValue& value) {
    if (const auto* number = std::get_if<std::int32_t>(&value)) return *number;
    if (const auto* text = std::get_if<std::string>(&value))
        // A null QString would be bound as NULL.
        return text->empty() ? QStringLiteral("") : QString::fromStdString(*text);
    return {};
}

/// A number that does not fit becomes text, which no integer column accepts.
CellValue fromVariant(const QVariant& value) {
    if (value.isNull()) return {};
    const auto type = value.typeId();
    if (type == QMetaType::LongLong || type == QMetaType::Int) {
        const auto number = value.toLongLong();
        using Limits = std::numeric_limits<std::int32_t>;
        if (number >= Limits::min() && number <= Limits::max())
            return static_cast<std::int32_t>(number);
    }
    return value.toString().toStdString();
}

}  // namespace

Connection::Connection(Dialect dialect) : dialect_(std::move(dialect)) {}

Result<std::unique_ptr<Connection>> Connection::open(Dialect dialect) {
    std::unique_ptr<Connection> connection(new Connection(std::move(dialect)));
    if (auto opened = connection->openNow(); !opened) return opened.error();
    return connection;
}

Connection::~Connection() { close(); }

Result<void> Connection::openNow() {
    key_ = QUuid::createUuid().toString(QUuid::WithoutBraces);
    database_ = QSqlDatabase::addDatabase(dialect_.driver, key_);
    database_.setConnectOptions(dialect_.options);
    database_.setDatabaseName(dialect_.name);
    if (!database_.open()) return dialect_.words(database_.lastError());
    for (const auto& sql : dialect_.setUp) {
        QSqlQuery query(database_);
        if (!query.exec(sql)) return dialect_.words(query.lastError());
    }
    return {};
}

void Connection::close() {
    prepared_.clear();
    database_.close();
    database_ = QSqlDatabase();  // the handle must be gone before the name is taken away
    QSqlDatabase::removeDatabase(key_);
}

Result<void> Connection::reopen() {
    close();
    return openNow();
}

Result<void> Connection::execute(QSqlQuery& query, const QString& sql, const Values& values) {
    if (saboteur_ && saboteur_(sql)) return Error{"the statement was made to fail"};
    if (values.empty()) {
        if (!query.exec(sql)) return dialect_.words(query.lastError());
        return {};
    }
    for (int i = 0; i < static_cast<int>(values.size()); ++i)
        query.bindValue(i, toVariant(values[static_cast<std::size_t>(i)]));
    if (!query.exec()) return dialect_.words(query.lastError());
    return {};
}

Result<int> Connection::rowsTouched(QSqlQuery& query, const QString& sql, const Values& values) {
    const auto done = execute(query, sql, values);
    const int rows = query.numRowsAffected();
    query.finish();
    if (!done) return done.error();
    return rows;
}

Result<int> Connection::run(const QString& sql, const Values& values) {
    if (values.empty()) {
        QSqlQuery query(database_);
        return rowsTouched(query, sql, values);
    }
    auto known = prepared_.find(sql);
    if (known == prepared_.end()) {
        QSqlQuery query(database_);
        if (!query.prepare(sql)) return dialect_.words(query.lastError());
        known = prepared_.emplace(sql, std::move(query)).first;
    }
    return rowsTouched(known->second, sql, values);
}

Result<void> Connection::read(const QString& sql, const Values& values,
                              const std::function<Result<void>(const Values&)>& visit) {
    QSqlQuery query(database_);
    query.setForwardOnly(true);
    if (!values.empty() && !query.prepare(sql)) return dialect_.words(query.lastError());
    if (auto done = execute(query, sql, values); !done) return done;
    Values row(static_cast<std::size_t>(query.record().count()));
    Result<void> result;
    while (result && query.next()) {
        for (std::size_t i = 0; i < row.size(); ++i)
            row[i] = fromVariant(query.value(static_cast<int>(i)));
        result = visit(row);
    }
    if (result && query.lastError().isValid()) result = dialect_.words(query.lastError());
    query.finish();
    return result;
}

Result<CellValue> Connection::readOne(const QString& sql, const Values& values) {
    std::optional<CellValue> first;
    auto done = read(sql, values, [&](const Values& row) -> Result<void> {
        if (!first) first = row.front();
        return {};
    });
    if (!done) return done.error();
    if (!first) return Error{"no row: " + sql.toStdString()};
    return *first;
}

}  // namespace tenthday
