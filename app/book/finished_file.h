/// @file finished_file.h  A file appears whole in its place or not at all.
#pragma once
#include <QString>

#include "base/result.h"

namespace tenthday {

/// A name beside the target that nobody has.
[[nodiscard]] QString unfinishedName(const QString& target);

/// Puts a finished file in its place. An Error says why not; `part` is gone then.
[[nodiscard]] Result<void> moveInto(const QString& part, const QString& target, bool replace);

}  // namespace tenthday
