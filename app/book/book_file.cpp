#include "book/book_file.h"

#include <QDir>
#include <QFileInfo>

#include "book/backups.h"
#include "book/finished_file.h"
#include "book/writer.h"

namespace tenthday {
namespace {

Error named(const QString& path, const Error& error) {
    return {path.toStdString() + ": " + error.text};
}

/// While a commit is under way, or was cut off, a file may be shorter than it says; the journal
/// that is there then puts it right.
bool isCutOff(const QString& path) {
    const auto isWhole = [&] { return readSqliteHeader(path).value_or(SqliteHeader{}).isWhole; };
    return !isWhole() && !QFileInfo::exists(path + QStringLiteral("-journal")) && !isWhole();
}

Result<void> fill(const QString& part, const ChangeSet& content, const OpenOptions& options) {
    auto connection = createSqlite(part);
    if (!connection) return connection.error();
    if (auto made = migrate(*connection.value(), *options.steps); !made) return made;
    return writeChanges(*connection.value(), content, options.utcNow());
}

}  // namespace

bool isWritable(const QString& path) {
    const QFileInfo file(path);
    const auto anybody =
        QFileDevice::WriteOwner | QFileDevice::WriteGroup | QFileDevice::WriteOther;
    const QFileInfo folder(file.absolutePath());
    return file.isWritable() && (file.permissions() & anybody) && folder.isWritable() &&
           (folder.permissions() & anybody);
}

Result<void> checkHeader(const QString& path, std::int32_t newestSchema) {
    const QFileInfo file(path);
    if (!file.exists()) return Error{"there is no such file"};
    if (!file.isFile()) return Error{"is no file"};
    if (!QFile(path).open(QIODevice::ReadOnly)) return Error{"the file cannot be read"};
    const auto header = readSqliteHeader(path);
    if (!header || header->applicationId != kApplicationId)
        return Error{"is not a Tenthday book; nothing was changed"};
    if (header->userVersion > newestSchema)
        return Error{"was made by a newer Tenthday (schema " + std::to_string(header->userVersion) +
                     ", this one knows " + std::to_string(newestSchema) + "); nothing was changed"};
    return {};
}

bool isDamaged(const QString& path) {
    if (!QFileInfo(path).isFile()) return false;
    const auto header = readSqliteHeader(path);
    if (!header || header->applicationId != kApplicationId || isCutOff(path)) return true;
    const auto connection = openSqlite(path, Access::ReadOnly);
    if (!connection) return true;
    const auto faults = structureFaults(*connection.value(), true);
    return !faults || !faults.value().empty();
}

BookFile::BookFile(QString path, const OpenOptions& options)
    : path_(std::move(path)), options_(options), access_(options.access) {}

Error BookFile::named(const Error& error) const { return tenthday::named(path_, error); }

Result<std::unique_ptr<BookFile>> BookFile::open(const QString& path, const OpenOptions& options) {
    std::unique_ptr<BookFile> book(new BookFile(path, options));
    if (auto opened = book->openNow(); !opened) return book->named(opened.error());
    return book;
}

Result<void> BookFile::openNow() {
    if (auto good = checkHeader(path_, newestSchema(*options_.steps)); !good) return good;
    if (isCutOff(path_))
        return Error{"the file is damaged (its end is missing); nothing was changed"};
    if (!isWritable(path_)) access_ = Access::ReadOnly;
    if (!isReadOnly()) {
        auto lock = BookLock::take(path_);
        if (!lock) return lock.error();
        lock_ = std::move(lock).value();
    }
    auto connection = openSqlite(path_, access_);
    if (!connection) return connection.error();
    connection_ = std::move(connection).value();
    if (QFileInfo(path_).size() <= options_.checkedAtOnce)
        if (auto sound = checkSound(); !sound) return sound;
    if (auto good = checkFacts(); !good) return good;
    return bringUpToDate();
}

Result<void> BookFile::checkSound() {
    if (isSound_) return {};
    const auto faults = structureFaults(*connection_, true);
    if (!faults) return Error{faults.error().text + "; nothing was changed"};
    if (!faults.value().empty())
        return Error{"the file is damaged (" + faults.value().front().simplified().toStdString() +
                     "); nothing was changed"};
    isSound_ = true;
    return {};
}

Result<void> BookFile::checkFacts() {
    const auto newest =
        connection_->readOne(QStringLiteral("SELECT coalesce(max(facts_revision), 1) FROM book"));
    if (!newest) return newest.error();
    std::int32_t revision = 0;
    if (!fromCell(newest.value(), revision)) return Error{"book: facts_revision cannot be read"};
    if (revision > kNewestFactsRevision)
        return Error{"was made by a newer Tenthday (facts revision " + std::to_string(revision) +
                     ", this one knows " + std::to_string(kNewestFactsRevision) +
                     "); nothing was changed"};
    return {};
}

Result<void> BookFile::bringUpToDate() {
    const auto newest = newestSchema(*options_.steps);
    const auto version = userVersion(*connection_);
    if (!version) return version.error();
    if (version.value() == newest) return {};
    if (auto sound = checkSound(); !sound) return sound;
    if (isReadOnly())
        return Error{"was made by an older Tenthday (schema " + std::to_string(version.value()) +
                     "); open it once for writing to bring it up to date"};
    if (!QDir().mkpath(backupFolderOf(path_)))
        return Error{"the backup folder cannot be made; nothing was changed"};
    const QDir folder(backupFolderOf(path_));
    const auto backup =
        folder.filePath(migrationBackupNameOf(path_, options_.clock.realDay(), newest));
    if (!QFileInfo::exists(backup))
        if (auto kept = copyInto(*connection_, backup); !kept)
            return Error{"no backup could be made before bringing it up to date: " +
                         kept.error().text};
    return migrate(*connection_, *options_.steps);
}

Result<Snapshot> BookFile::read(const ReadRange& range) {
    auto snapshot = readSnapshot(*connection_, options_.clock, range);
    if (!snapshot) return named(snapshot.error());
    return snapshot;
}

Result<void> BookFile::write(const ChangeSet& changes) {
    if (isReadOnly()) return named(Error{"is open for reading only; nothing was changed"});
    if (auto sound = checkSound(); !sound) return named(sound.error());
    const auto done = writeChanges(*connection_, changes, options_.utcNow());
    if (done) return {};
    if (!QFileInfo::exists(path_))
        return named(Error{"the file is no longer there; keep what is open with Save a copy"});
    return named(done.error());
}

Result<void> BookFile::saveCopy(const QString& target, bool replace) {
    if (QFileInfo(target).exists()) {
        if (QFileInfo(target).canonicalFilePath() == QFileInfo(path_).canonicalFilePath())
            return tenthday::named(target, Error{"is the open book itself"});
        if (!replace)
            return tenthday::named(target, Error{"is there already; nothing was changed"});
    }
    const auto part = unfinishedName(target);
    auto done = copyInto(*connection_, part);
    if (done) done = moveInto(part, target, replace);
    return done ? done : tenthday::named(target, done.error());
}

Result<QString> BookFile::backUp() {
    if (isReadOnly()) return QString();
    const QDir folder(backupFolderOf(path_));
    const auto target = folder.filePath(backupNameOf(path_, options_.clock.realDay()));
    if (auto sound = checkSound(); !sound) return named(sound.error());
    if (QFileInfo::exists(target)) return QString();
    if (!QDir().mkpath(folder.path()))
        return tenthday::named(folder.path(), Error{"the folder cannot be made"});
    if (auto done = saveCopy(target); !done) return done.error();
    rotateBackups(path_);
    return target;
}

Result<void> createBook(const QString& path, const ChangeSet& content, const OpenOptions& options) {
    if (QFileInfo(path).exists() || QFileInfo(path).isSymLink())
        return named(path, Error{"is there already; nothing was changed"});
    if (!QFileInfo(QFileInfo(path).absolutePath()).isDir())
        return named(path, Error{"there is no such folder"});
    if (auto valid = applied(Snapshot{}, content); !valid) return named(path, valid.error());
    const auto part = unfinishedName(path);
    auto done = fill(part, content, options);
    if (done) done = moveInto(part, path, false);
    if (!done) QFile::remove(part);
    return done ? done : Result<void>(named(path, done.error()));
}

}  // namespace tenthday
