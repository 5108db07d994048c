/// @file sqlite.h  All that is SQLite's alone. Everything else speaks SQL that PostgreSQL shares.
#pragma once
#include <QString>
#include <QStringList>
#include <cstdint>
#include <memory>
#include <optional>

#include "book/connection.h"

namespace tenthday {

enum class Access { ReadOnly, ReadWrite };

/// What the first bytes of a file say, read without SQLite: nothing is locked or recovered.
struct SqliteHeader {
    std::int32_t applicationId = 0;
    std::int32_t userVersion = 0;
    bool isWhole = true;  ///< false: the file is shorter than it says
};
/// Nothing when the file is no SQLite database (or cannot be read).
[[nodiscard]] std::optional<SqliteHeader> readSqliteHeader(const QString& path);

/// Opens a database file that exists. Foreign keys are enforced, a commit is on disk when it
/// returns (rollback journal, synchronous=FULL), a lock is waited for 5 s.
/// ReadOnly makes no file beside it, unless a writer died in the middle of a commit: then its
/// journal has to be rolled back first, which needs write access.
[[nodiscard]] Result<std::unique_ptr<Connection>> openSqlite(const QString& path, Access access);
/// Makes a new, empty database file. Path must not exist.
[[nodiscard]] Result<std::unique_ptr<Connection>> createSqlite(const QString& path);

/// A transaction for writing, begun at once (BEGIN IMMEDIATE). Rolled back unless committed.
class Transaction {
public:
    [[nodiscard]] static Result<std::unique_ptr<Transaction>> begin(Connection& connection);
    /// Reads of one moment: sees nothing that others write until it ends.
    [[nodiscard]] static Result<std::unique_ptr<Transaction>> beginReading(Connection& connection);
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;

    [[nodiscard]] Result<void> commit();

private:
    [[nodiscard]] static Result<std::unique_ptr<Transaction>> start(Connection& connection,
                                                                    const QString& sql);
    explicit Transaction(Connection& connection) : connection_(connection) {}
    Connection& connection_;
    bool open_ = true;
};

[[nodiscard]] Result<std::int32_t> userVersion(Connection& connection);
/// Part of the transaction it is called in.
[[nodiscard]] Result<void> setUserVersion(Connection& connection, std::int32_t version);
[[nodiscard]] Result<void> setApplicationId(Connection& connection, std::int32_t id);

/// Writes a compact copy to a file that must not exist, and waits until it is on the disk.
[[nodiscard]] Result<void> copyInto(Connection& connection, const QString& path);

/// What is broken in the file itself; empty when sound. Quick skips the indexes.
[[nodiscard]] Result<QStringList> structureFaults(Connection& connection, bool quick);
/// References that lead nowhere, a line each; empty when sound.
[[nodiscard]] Result<QStringList> referenceFaults(Connection& connection);

}  // namespace tenthday
