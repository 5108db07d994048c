/// @file finished_file.h  Files read and written whole: one appears in its place or not at all.
#pragma once
#include <QByteArray>
#include <QString>

#include "base/result.h"

namespace tenthday {

/// A name beside the target that nobody has.
[[nodiscard]] QString unfinishedName(const QString& target);

/// Puts a finished file in its place. An Error says why not; `part` is gone then.
[[nodiscard]] Result<void> moveInto(const QString& part, const QString& target, bool replace);

/// All of a file; an Error names it. More than 256 MB is refused: no list of bees is that long.
[[nodiscard]] Result<std::string> readWhole(const QString& path);
/// Writes a file that appears complete or not at all; what stood there before stays until then.
[[nodiscard]] Result<void> writeWhole(const QString& path, const QByteArray& bytes);

}  // namespace tenthday
