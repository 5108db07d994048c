#include "book/finished_file.h"

#include <QFile>
#include <QFileInfo>
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

}  // namespace tenthday
