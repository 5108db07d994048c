/// @file larvae_not_seen.h  Breeder queens without larvae fit to graft, the day before. Inner to
/// the room.
#pragma once
#include "findings/finding.h"

namespace tenthday {

/// On the day before a graft and on its day, for as long as nothing is grafted: a warning where she
/// was seen without larvae, a note where nobody has looked (common practice).
[[nodiscard]] std::vector<Finding> larvaeNotSeen(const Snapshot& snapshot,
                                                 const Timelines& timelines);

}  // namespace tenthday
