/// @file connection.h  One database connection: statements in, values out. Knows no dialect.
#pragma once
#include <QSqlDatabase>
#include <QSqlError>
#include <QSqlQuery>
#include <QStringList>
#include <functional>
#include <memory>
#include <unordered_map>
#include <vector>

#include "base/result.h"
#include "records/cell_value.h"

namespace tenthday {

using Values = std::vector<CellValue>;

/// How to open a database, and how to say what it complains of.
struct Dialect {
    QString driver;
    QString name;       ///< file or database
    QString options;    ///< connect options of the driver
    QStringList setUp;  ///< statements run after each opening
    std::function<Error(const QSqlError&)> words;
};

/// Belongs to the thread that opened it. Every query is finished before a call returns, so no
/// read lock outlives one.
class Connection {
public:
    /// Asked before each statement, COMMIT and ROLLBACK included; true makes it fail untried.
    /// For tests of what happens when a disk or a server gives up.
    using Saboteur = std::function<bool(const QString& sql)>;

    [[nodiscard]] static Result<std::unique_ptr<Connection>> open(Dialect dialect);
    ~Connection();
    Connection(const Connection&) = delete;
    Connection& operator=(const Connection&) = delete;

    /// Runs one statement with values for its `?` in order; gives the number of rows it touched.
    [[nodiscard]] Result<int> run(const QString& sql, const Values& values = {});
    /// Reads rows one by one; stops at the first error the visitor gives, and gives it back.
    [[nodiscard]] Result<void> read(const QString& sql, const Values& values,
                                    const std::function<Result<void>(const Values&)>& visit);
    /// The first column of the first row; an Error when there is none.
    [[nodiscard]] Result<CellValue> readOne(const QString& sql, const Values& values = {});

    /// Closes and opens again: ends a transaction that could not be rolled back.
    [[nodiscard]] Result<void> reopen();

    void setSaboteur(Saboteur saboteur) { saboteur_ = std::move(saboteur); }

private:
    explicit Connection(Dialect dialect);
    [[nodiscard]] Result<void> openNow();
    void close();
    [[nodiscard]] Result<void> execute(QSqlQuery& query, const QString& sql, const Values& values);
    [[nodiscard]] Result<int> rowsTouched(QSqlQuery& query, const QString& sql,
                                          const Values& values);

    Dialect dialect_;
    QString key_;  ///< unique name Qt knows the connection by
    QSqlDatabase database_;
    std::unordered_map<QString, QSqlQuery>
        prepared_;  ///< statements with values, kept for the next row
    Saboteur saboteur_;
};

}  // namespace tenthday
