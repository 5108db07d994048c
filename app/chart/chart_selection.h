/// @file chart_selection.h  Where keys go on the chart: from batch to batch, load to load, yard to
/// yard, to the next clash and the next work that must be done on its day. Pure.
#pragma once
#include <optional>

#include "chart/chart_item.h"
#include "outlook/outlook.h"

namespace tenthday {

/// The load after or before a place in time (of two at one time, by builder); the first or last
/// where the place is none. None at the end.
[[nodiscard]] std::optional<TargetKey> nextLoad(const Outlook& outlook, const TargetKey& from,
                                                int by);
/// The row of the yard below or above; none at the end.
[[nodiscard]] std::optional<TargetKey> nextYard(const Outlook& outlook, const TargetKey& from,
                                                int by);

/// A finding that is no mere note, on a later day than `from` (an earlier one for by < 0), or
/// further on in the list of the same day than `index`. Its place in the outlook's findings.
[[nodiscard]] std::optional<int> nextClash(const Outlook& outlook, Day from, int index, int by);
/// The batch a finding is about, where it is about one.
[[nodiscard]] std::optional<Id<Batch>> batchOf(const Finding& finding);

/// The next day after `from` (before, for by < 0) with work that must be done that very day and is
/// not done.
[[nodiscard]] std::optional<Day> nextMust(const Outlook& outlook, Day from, int by);

/// Builders that could take a load in place of the one it stands in: of the same kind and standing
/// there all its days; in order of label.
[[nodiscard]] std::vector<Id<Builder>> buildersFor(const Outlook& outlook, const LoadSpan& load);
/// The span of a load at a place, or null.
[[nodiscard]] const LoadSpan* loadAt(const Outlook& outlook, const TargetKey& load);

}  // namespace tenthday
