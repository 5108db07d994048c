#include "book/backups.h"

#include <QDir>
#include <QFileInfo>
#include <algorithm>
#include <functional>
#include <set>

namespace tenthday {
namespace {

const QString kSuffix = QStringLiteral(".tenthday");

QString stem(const QString& bookPath) { return QFileInfo(bookPath).completeBaseName(); }
QString dayText(Day day) { return QString::fromStdString(toText(day)); }

/// The Monday of the day's ISO week.
Day weekOf(Day day) {
    const date::weekday weekday{day};
    return day - (weekday - date::Monday);
}
Day monthOf(Day day) {
    const date::year_month_day ymd{day};
    return Day{date::local_days{ymd.year() / ymd.month() / 1}};
}

void keepNewestOfEach(const std::vector<Day>& newestFirst, Day (*group)(Day), std::size_t groups,
                      std::set<Day>& keep) {
    std::set<Day> seen;
    for (const auto day : newestFirst) {
        if (seen.size() == groups) return;
        if (seen.insert(group(day)).second) keep.insert(day);
    }
}

}  // namespace

QString backupFolderOf(const QString& bookPath) {
    return QFileInfo(bookPath).absoluteDir().filePath(stem(bookPath) + QStringLiteral("-backups"));
}

QString backupNameOf(const QString& bookPath, Day day) {
    return stem(bookPath) + u'-' + dayText(day) + kSuffix;
}

QString migrationBackupNameOf(const QString& bookPath, Day day, std::int32_t newSchema) {
    return QStringLiteral("%1-%2-before-schema-%3%4")
        .arg(stem(bookPath), dayText(day), QString::number(newSchema), kSuffix);
}

QString restoreBackupNameOf(const QString& bookPath, Day day, int number) {
    return QStringLiteral("%1-%2-before-restore-%3%4")
        .arg(stem(bookPath), dayText(day), QString::number(number), kSuffix);
}

std::optional<Day> dayOfBackup(const QString& bookPath, const QString& fileName) {
    const QString start = stem(bookPath) + u'-';
    if (!fileName.startsWith(start) || !fileName.endsWith(kSuffix)) return std::nullopt;
    const auto middle = fileName.mid(start.size(), fileName.size() - start.size() - kSuffix.size());
    return dayFromText(middle.toStdString());
}

std::vector<Day> backupsToKeep(std::vector<Day> days) {
    std::sort(days.begin(), days.end(), std::greater<>());
    days.erase(std::unique(days.begin(), days.end()), days.end());
    std::set<Day> keep;
    keepNewestOfEach(
        days, [](Day day) { return day; }, 7, keep);
    keepNewestOfEach(days, weekOf, 8, keep);
    keepNewestOfEach(days, monthOf, 12, keep);
    return {keep.begin(), keep.end()};
}

QStringList backupsOf(const QString& bookPath) {
    const QDir folder(backupFolderOf(bookPath));
    QStringList paths;
    // No pattern: a book's name may hold what a pattern means otherwise, such as [1].
    for (const auto& name : folder.entryList(QDir::Files, QDir::Name | QDir::Reversed))
        if (name.startsWith(stem(bookPath) + u'-') && name.endsWith(kSuffix))
            paths += folder.filePath(name);
    return paths;
}

void rotateBackups(const QString& bookPath) {
    std::vector<Day> days;
    const auto paths = backupsOf(bookPath);
    for (const auto& path : paths)
        if (const auto day = dayOfBackup(bookPath, QFileInfo(path).fileName()))
            days.push_back(*day);
    const auto keep = backupsToKeep(days);
    for (const auto& path : paths) {
        const auto day = dayOfBackup(bookPath, QFileInfo(path).fileName());
        if (day && !std::binary_search(keep.begin(), keep.end(), *day)) QFile::remove(path);
    }
}

}  // namespace tenthday
