#include "book/book_lock.h"

#include <QFileInfo>

namespace tenthday {
namespace {

Error heldBy(const QLockFile& lock, const QString& lockPath) {
    qint64 process = 0;
    QString host;
    QString program;
    if (!lock.getLockInfo(&process, &host, &program))
        return {"is open for writing elsewhere (" + lockPath.toStdString() + ")"};
    const auto user = QFileInfo(lockPath).owner();
    return {"is open for writing by " + (user.isEmpty() ? "somebody" : user.toStdString()) +
            " on " + host.toStdString() + " (process " + std::to_string(process) + ")"};
}

}  // namespace

QString lockPathOf(const QString& bookPath) {
    const auto real = QFileInfo(bookPath).canonicalFilePath();
    return (real.isEmpty() ? bookPath : real) + QStringLiteral(".lock");
}

BookLock::BookLock(const QString& lockPath) : lock_(lockPath) {
    lock_.setStaleLockTime(0);  // age proves nothing: a window may stay open for weeks
}

Result<std::unique_ptr<BookLock>> BookLock::take(const QString& bookPath) {
    const auto lockPath = lockPathOf(bookPath);
    std::unique_ptr<BookLock> lock(new BookLock(lockPath));
    if (lock->lock_.tryLock(0)) return lock;
    if (lock->lock_.error() == QLockFile::LockFailedError) return heldBy(lock->lock_, lockPath);
    return Error{"the lock file cannot be made: " + lockPath.toStdString()};
}

}  // namespace tenthday
