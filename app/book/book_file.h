/// @file book_file.h  An open book: one file, one connection, one lock.
#pragma once
#include <QDateTime>
#include <QString>
#include <memory>

#include "book/book_lock.h"
#include "book/migration.h"
#include "book/reader.h"
#include "book/sqlite.h"
#include "records/change_set.h"

namespace tenthday {

struct OpenOptions {
    /// ReadOnly makes no file beside the book and asks nobody; for listings.
    /// ReadWrite takes the lock, and falls back to reading where the file cannot be written.
    Access access = Access::ReadWrite;
    Clock clock{};
    const Migrations* steps = &schemaSteps();
    /// A larger file is looked through for damage before the first write, not at opening.
    qint64 checkedAtOnce = 8'000'000;
    std::function<QDateTime()> utcNow = [] { return QDateTime::currentDateTimeUtc(); };
};

/// Every Error is one English line that begins with the path.
class BookFile {
public:
    /// Refuses, with nothing changed on the disk: no such file; no book; made by a newer program
    /// (schema or facts revision); damaged; held by another writer. A book of an older schema is
    /// first copied to its backups, then taken to the newest.
    [[nodiscard]] static Result<std::unique_ptr<BookFile>> open(const QString& path,
                                                                const OpenOptions& options = {});

    [[nodiscard]] const QString& path() const { return path_; }
    [[nodiscard]] bool isReadOnly() const { return access_ == Access::ReadOnly; }

    [[nodiscard]] Result<Snapshot> read(const ReadRange& range = {});
    /// One transaction; all or nothing. Refused on a book that is read only or damaged.
    [[nodiscard]] Result<void> write(const ChangeSet& changes);

    /// Writes a compact copy. An existing file is replaced only if asked to, and only once the
    /// copy is complete.
    [[nodiscard]] Result<void> saveCopy(const QString& target, bool replace = false);
    /// Makes today's backup unless there is one, and rotates. Gives the path of the new one, empty
    /// when there was nothing to do. Read-only books are left alone, damaged ones refused: their
    /// copies would push out good ones.
    [[nodiscard]] Result<QString> backUp();

    /// For tests and for `check`.
    [[nodiscard]] Connection& connection() { return *connection_; }

private:
    BookFile(QString path, const OpenOptions& options);
    [[nodiscard]] Result<void> openNow();
    [[nodiscard]] Result<void> checkSound();
    [[nodiscard]] Result<void> bringUpToDate();
    [[nodiscard]] Result<void> checkFacts();
    [[nodiscard]] Error named(const Error& error) const;

    QString path_;
    OpenOptions options_;
    Access access_;
    std::unique_ptr<BookLock> lock_;
    std::unique_ptr<Connection> connection_;
    bool isSound_ = false;  ///< looked through and found so
};

/// A new book with this content. Refuses to overwrite; the file appears complete or not at all.
[[nodiscard]] Result<void> createBook(const QString& path, const ChangeSet& content,
                                      const OpenOptions& options = {});

/// What keeps the file from being opened as a book, told from its first bytes; fine when none.
[[nodiscard]] Result<void> checkHeader(const QString& path, std::int32_t newestSchema);

/// The file is there, but no sound database: only then is a backup offered in its place.
[[nodiscard]] bool isDamaged(const QString& path);

/// Whether the file and its folder let one write. A file marked read only counts as such even for
/// a user whom the system would not stop.
[[nodiscard]] bool isWritable(const QString& path);

}  // namespace tenthday
