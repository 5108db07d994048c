/// @file lists.h  Several things in one sentence.
#pragma once
#include <QStringList>

namespace tenthday {

/// "312, 315 and 401"; one by itself.
[[nodiscard]] QString listed(const QStringList& parts);
/// "312, 315 and 9 more"; without more as listed().
[[nodiscard]] QString listedWithMore(const QStringList& first, int more);

}  // namespace tenthday
