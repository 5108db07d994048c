/// @file restore.h  Puts a backup in the place of a book; what stood there is kept beside it.
#pragma once
#include <QString>

#include "base/result.h"
#include "calendar/day.h"

namespace tenthday {

/// Nobody may have the book open. First the file as it is (sound or not, with a journal that is
/// left over) is kept among the backups, then a copy of the backup takes its place, all at once.
/// Refuses, with nothing changed, a backup that is not sound and a book that somebody holds.
/// Gives the path under which the old file is kept; empty where there was none.
[[nodiscard]] Result<QString> restoreBackup(const QString& bookPath, const QString& backupPath,
                                            Day today);

/// The newest backup in which nothing is amiss; empty when there is none.
[[nodiscard]] QString newestGoodBackup(const QString& bookPath);

}  // namespace tenthday
