/// @file builder_rhythm.h  When a builder can take its next batch.
#pragma once
#include "records/snapshot.h"

namespace tenthday {

/// Days from one batch's coming to the next one's; none where cells only wait.
[[nodiscard]] Days rhythmOf(BuilderKind kind, const Facts& facts);

/// First day on which the next batch may come. Where the rhythm lets a batch come while the one
/// before is still there, it alone counts; else the rest after the cells have left counts too.
/// @param last       the day on which the cells leave
/// @param restUntil  the last day of rest; `last` where there is none
[[nodiscard]] Day freeAfter(Day comes, Day last, Day restUntil, Days rhythm);

}  // namespace tenthday
