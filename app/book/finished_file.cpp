#include "book/finished_file.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>
#include <QStorageInfo>
#include <filesystem>

#include "book/new_id.h"

namespace tenthday {

QString unfinishedName(const QString& target) {
    return target + u'.' + QString::fromStdString(toText(idMaker().next())) +
           QStringLiteral(".part");
}

Result<void> moveInto(const QString& part, const QString& target, bool replace) {
    if (!replace) {
        if (QFile::rename(part, target)) return {};
        QFile::remove(part);
        return Error{QFileInfo::exists(target) ? "is there already; nothing was changed"
                                               : "cannot be written"};
    }
    std::error_code error;
    std::filesystem::rename(part.toStdString(), target.toStdString(), error);
    if (!error) return {};
    QFile::remove(part);
    return Error{"cannot be written: " + error.message()};
}

Result<std::string> readWhole(const QString& path) {
    constexpr qint64 kMost = 256LL * 1024 * 1024;  // bytes
    QFile file(path);
    const QFileInfo info(file);
    const auto bad = [&](const char* what) { return Error{path.toStdString() + ": " + what}; };
    if (!info.exists()) return bad("there is no such file");
    if (info.isDir()) return bad("is a folder, no file");
    if (info.size() > kMost) return bad("is larger than 256 MB");
    if (!file.open(QIODevice::ReadOnly)) return bad("cannot be read");
    return file.readAll().toStdString();
}

Result<void> writeWhole(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    // commit() alone does not see that the last bytes, still in memory, found no room on the disk.
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes) != bytes.size() || !file.flush() ||
        !file.commit()) {
        // Qt knows no reason where the last bytes found no room.
        const QStorageInfo disk(QFileInfo(path).absolutePath());
        const bool isFull = disk.isValid() && disk.bytesAvailable() < bytes.size();
        const auto why = isFull ? QStringLiteral("no room on the disk") : file.errorString();
        return Error{QStringLiteral("%1: cannot be written: %2").arg(path, why).toStdString()};
    }
    return {};
}

}  // namespace tenthday
