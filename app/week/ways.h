/// @file ways.h  The ways between the yards of a book, in the order in which they are listed.
#pragma once
#include <QString>
#include <optional>
#include <vector>

#include "tasks/work_time.h"

namespace tenthday {

/// From home to each yard, then between each two, in driving order.
[[nodiscard]] std::vector<DrivenWay> waysOf(const Snapshot& book);

/// The yard's label; of none "home".
[[nodiscard]] QString placeName(const Snapshot& book, std::optional<Id<Yard>> yard);

}  // namespace tenthday
