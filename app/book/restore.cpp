#include "book/restore.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <algorithm>

#include "book/backups.h"
#include "book/book_file.h"
#include "book/book_lock.h"
#include "book/check_book.h"
#include "book/finished_file.h"
#include "book/migration.h"
#include "book/sqlite.h"

namespace tenthday {
namespace {

const QString kJournal = QStringLiteral("-journal");

Error named(const QString& path, const std::string& text) {
    return {path.toStdString() + ": " + text};
}

/// Sound by its own schema: rows of an older one are looked at when it is brought up to date.
bool isGood(const QString& path) {
    const auto newest = newestSchema(schemaSteps());
    if (!checkHeader(path, newest) || isDamaged(path)) return false;
    const auto connection = openSqlite(path, Access::ReadOnly);
    if (!connection) return false;
    const auto version = userVersion(*connection.value());
    if (!version) return false;
    if (version.value() < newest) return true;
    const auto lines = checkBook(path);
    return lines && std::all_of(lines.value().begin(), lines.value().end(),
                                [](const CheckLine& line) { return line.good; });
}

QString freeName(const QString& bookPath, Day today) {
    const QDir folder(backupFolderOf(bookPath));
    for (int number = 1;; ++number) {
        const auto path = folder.filePath(restoreBackupNameOf(bookPath, today, number));
        if (!QFileInfo::exists(path)) return path;
    }
}

/// The file as it is, byte for byte, and its journal with it.
Result<QString> keep(const QString& bookPath, const QString& namedPath, Day today) {
    if (!QFileInfo::exists(bookPath)) return QString();
    const auto folder = backupFolderOf(namedPath);
    if (!QDir().mkpath(folder)) return named(folder, "the folder cannot be made");
    const auto kept = freeName(namedPath, today);
    const bool hasJournal = QFileInfo::exists(bookPath + kJournal);
    if (!QFile::copy(bookPath, kept) ||
        (hasJournal && !QFile::copy(bookPath + kJournal, kept + kJournal)))
        return named(kept, "the book cannot be kept here; nothing was changed");
    return kept;
}

}  // namespace

Result<QString> restoreBackup(const QString& namedPath, const QString& backupPath, Day today) {
    // Behind a link stands the book itself.
    const auto behind = QFileInfo(namedPath).canonicalFilePath();
    const auto bookPath = behind.isEmpty() ? namedPath : behind;
    if (!isGood(backupPath))
        return named(backupPath, "the backup is not sound; nothing was changed");
    const auto lock = BookLock::take(bookPath);
    if (!lock) return named(bookPath, lock.error().text);
    const auto part = unfinishedName(bookPath);
    if (!QFile::copy(backupPath, part))
        return named(bookPath, "the backup cannot be copied here; nothing was changed");
    QFile::setPermissions(part, QFile::permissions(part) | QFileDevice::WriteOwner);
    auto kept = keep(bookPath, namedPath, today);
    if (!kept) {
        QFile::remove(part);
        return kept;
    }
    // An old journal would be played into the restored file.
    QFile::remove(bookPath + kJournal);
    if (auto moved = moveInto(part, bookPath, true); !moved)
        return named(bookPath, moved.error().text);
    return kept;
}

QString newestGoodBackup(const QString& bookPath) {
    for (const auto& path : backupsOf(bookPath))
        if (isGood(path)) return path;
    return {};
}

}  // namespace tenthday
