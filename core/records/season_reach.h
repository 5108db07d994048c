/// @file season_reach.h  Whether an edit stays within the season shown.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// True where an edit speaks of rows that are not read with the season shown, or brings a batch
/// that would not be: it can only be checked and made on all seasons. False of a snapshot without
/// seasons, which holds all there is.
[[nodiscard]] bool reachesBeyond(const Snapshot& shown, const ChangeSet& changes);

}  // namespace tenthday
