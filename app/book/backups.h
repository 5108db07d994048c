/// @file backups.h  Where backups lie, what they are called, which are kept.
#pragma once
#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "calendar/day.h"

namespace tenthday {

/// `/home/a/mill.tenthday` -> `/home/a/mill-backups`.
[[nodiscard]] QString backupFolderOf(const QString& bookPath);
/// `mill-2027-05-10.tenthday`.
[[nodiscard]] QString backupNameOf(const QString& bookPath, Day day);
/// `mill-2027-05-10-before-schema-2.tenthday`; never rotated away.
[[nodiscard]] QString migrationBackupNameOf(const QString& bookPath, Day day,
                                            std::int32_t newSchema);
/// `mill-2027-05-10-before-restore-1.tenthday`; never rotated away. @param number  from 1
[[nodiscard]] QString restoreBackupNameOf(const QString& bookPath, Day day, int number);
/// The day of a daily backup of this book, nothing for any other file.
[[nodiscard]] std::optional<Day> dayOfBackup(const QString& bookPath, const QString& fileName);

/// Of the days with a backup, those to keep: the 7 newest, the newest of each of the 8 newest
/// ISO weeks, and the newest of each of the 12 newest months. In ascending order.
[[nodiscard]] std::vector<Day> backupsToKeep(std::vector<Day> days);

/// Full paths of the backups there are, newest first, those before migrations included.
[[nodiscard]] QStringList backupsOf(const QString& bookPath);
/// Removes the daily backups that backupsToKeep leaves out.
void rotateBackups(const QString& bookPath);

}  // namespace tenthday
