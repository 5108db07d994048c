#include "book/sqlite.h"

#include <fcntl.h>
#include <unistd.h>

#include <QFile>
#include <QFileInfo>
#include <QtEndian>

namespace tenthday {
namespace {

/// SQLite's result codes, extended ones included.
enum Code {
    Busy = 5,
    CannotWrite = 8,
    InputOutput = 10,
    Corrupt = 11,
    Full = 13,
    CannotOpen = 14,
    NotADatabase = 26,
    CheckFailed = 275,
    ReferenceFailed = 787,
    UniqueFailed = 2067,
};

/// What stands after "constraint failed: " in SQLite's message: "batch.label".
std::string constraintOf(const QString& message) {
    const auto at = message.indexOf(u"failed: ");
    return at < 0 ? std::string() : message.mid(at + 8).section(u' ', 0, 0).toStdString();
}

Error inWords(const QSqlError& error) {
    const int code = error.nativeErrorCode().toInt();
    const auto message = error.databaseText();
    switch (code) {
        case CheckFailed:
            return {"a value is out of range: " + constraintOf(message)};
        case ReferenceFailed:
            return {"a row refers to nothing, or is still in use elsewhere"};
        case UniqueFailed:
            return {constraintOf(message) + ": is there already"};
        default:
            break;
    }
    switch (code & 0xFF) {
        case Busy:
            return {"another program is using the file"};
        case CannotWrite:
            return {"the file cannot be written"};
        case InputOutput:
            return {"the disk reports an error (" + std::to_string(code) + ")"};
        case Full:
            return {"the disk is full"};
        case CannotOpen:
            return {"the file cannot be opened"};
        case Corrupt:
        case NotADatabase:
            return {"the file is damaged"};
        default:
            return {message.simplified().toStdString()};
    }
}

Dialect sqliteDialect(const QString& path, const QString& mode) {
    return {
        QStringLiteral("QSQLITE"),
        path,
        QStringLiteral("QSQLITE_BUSY_TIMEOUT=5000") + mode,
        {QStringLiteral("PRAGMA foreign_keys = ON"), QStringLiteral("PRAGMA synchronous = FULL")},
        inWords};
}

/// Opens and reads something, so that a journal left by a dead writer shows itself.
Result<std::unique_ptr<Connection>> openAndTouch(const QString& path, const QString& mode) {
    auto connection = Connection::open(sqliteDialect(path, mode));
    if (!connection) return connection;
    auto read = connection.value()->readOne(QStringLiteral("SELECT count(*) FROM sqlite_master"));
    if (!read) return read.error();
    return connection;
}

Result<QStringList> linesOf(Connection& connection, const QString& sql) {
    QStringList lines;
    auto done = connection.read(sql, {}, [&](const Values& row) -> Result<void> {
        QStringList cells;
        for (const auto& cell : row) {
            if (const auto* text = std::get_if<std::string>(&cell))
                cells += QString::fromStdString(*text);
            else if (const auto* number = std::get_if<std::int32_t>(&cell))
                cells += QString::number(*number);
        }
        lines += cells.join(u' ');
        return {};
    });
    if (!done) return done.error();
    return lines;
}

Result<void> waitUntilOnDisk(const QString& path) {
    const int file = ::open(QFile::encodeName(path).constData(), O_RDONLY | O_CLOEXEC);
    const bool synced = file >= 0 && ::fsync(file) == 0;
    if (file >= 0) ::close(file);
    if (!synced) return Error{path.toStdString() + ": could not be written to the disk"};
    return {};
}

}  // namespace

std::optional<SqliteHeader> readSqliteHeader(const QString& path) {
    // Places of big-endian numbers in the header, from SQLite's description of its file format.
    enum Place {
        PageSize = 16,
        Changes = 24,
        Pages = 28,
        UserVersion = 60,
        Application = 68,
        Valid = 92
    };
    constexpr qint64 kHeaderSize = 100;
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) return std::nullopt;
    const auto bytes = file.read(kHeaderSize);
    if (bytes.size() < kHeaderSize || !bytes.startsWith(QByteArray("SQLite format 3\0", 16)))
        return std::nullopt;
    const auto number = [&](Place place) {
        return qFromBigEndian<qint32>(bytes.constData() + place);
    };
    const auto pageSize = qint64{qFromBigEndian<quint16>(bytes.constData() + PageSize)};
    const auto size = number(Pages) * (pageSize == 1 ? 65536 : pageSize);
    const bool sizeIsKnown = number(Changes) == number(Valid);
    return SqliteHeader{number(Application), number(UserVersion),
                        !sizeIsKnown || file.size() >= size};
}

Result<std::unique_ptr<Connection>> openSqlite(const QString& path, Access access) {
    if (access == Access::ReadWrite) return openAndTouch(path, {});
    const auto readOnly = QStringLiteral(";QSQLITE_OPEN_READONLY");
    auto opened = openAndTouch(path, readOnly);
    if (opened || !QFileInfo::exists(path + QStringLiteral("-journal"))) return opened;
    if (auto recovered = openAndTouch(path, {}); !recovered)
        return Error{"a writer died and left " + QFileInfo(path).fileName().toStdString() +
                     "-journal, which cannot be rolled back here"};
    return openAndTouch(path, readOnly);
}

Result<std::unique_ptr<Connection>> createSqlite(const QString& path) {
    if (QFileInfo::exists(path)) return Error{"the file is there already"};
    return Connection::open(sqliteDialect(path, {}));
}

Result<std::unique_ptr<Transaction>> Transaction::start(Connection& connection,
                                                        const QString& sql) {
    if (auto begun = connection.run(sql); !begun) return begun.error();
    return std::unique_ptr<Transaction>(new Transaction(connection));
}

Result<std::unique_ptr<Transaction>> Transaction::begin(Connection& connection) {
    // Plain BEGIN would ask for the write lock only at the first write, too late to wait for it.
    return start(connection, QStringLiteral("BEGIN IMMEDIATE"));
}

Result<std::unique_ptr<Transaction>> Transaction::beginReading(Connection& connection) {
    return start(connection, QStringLiteral("BEGIN"));
}

Transaction::~Transaction() {
    if (!open_) return;
    if (connection_.run(QStringLiteral("ROLLBACK"))) return;
    if (auto reopened = connection_.reopen(); !reopened)
        qWarning("the book could not be opened again: %s", reopened.error().text.c_str());
}

Result<void> Transaction::commit() {
    if (auto done = connection_.run(QStringLiteral("COMMIT")); !done) return done.error();
    open_ = false;
    return {};
}

Result<std::int32_t> userVersion(Connection& connection) {
    auto read = connection.readOne(QStringLiteral("PRAGMA user_version"));
    if (!read) return read.error();
    std::int32_t version = 0;
    if (!fromCell(read.value(), version)) return Error{"the schema number is out of range"};
    return version;
}

Result<void> setUserVersion(Connection& connection, std::int32_t version) {
    auto done = connection.run(QStringLiteral("PRAGMA user_version = %1").arg(version));
    if (!done) return done.error();
    return {};
}

Result<void> setApplicationId(Connection& connection, std::int32_t id) {
    auto done = connection.run(QStringLiteral("PRAGMA application_id = %1").arg(id));
    if (!done) return done.error();
    return {};
}

Result<void> copyInto(Connection& connection, const QString& path) {
    if (QFileInfo::exists(path)) return Error{path.toStdString() + ": is there already"};
    auto done = connection.run(QStringLiteral("VACUUM INTO ?"), {path.toStdString()});
    Result<void> result = done ? waitUntilOnDisk(path) : Result<void>(done.error());
    if (!result)  // a full disk leaves its journal too
        for (const auto& left : {path, path + QStringLiteral("-journal")}) QFile::remove(left);
    return result;
}

Result<QStringList> structureFaults(Connection& connection, bool quick) {
    auto lines = linesOf(connection, quick ? QStringLiteral("PRAGMA quick_check(20)")
                                           : QStringLiteral("PRAGMA integrity_check(100)"));
    if (lines && lines.value() == QStringList{QStringLiteral("ok")}) lines.value().clear();
    return lines;
}

Result<QStringList> referenceFaults(Connection& connection) {
    return linesOf(connection, QStringLiteral("PRAGMA foreign_key_check"));
}

}  // namespace tenthday
