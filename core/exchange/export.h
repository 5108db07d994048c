/// @file export.h  The rows of a kind as a listing, in the columns `import` takes.
#pragma once
#include <string_view>

#include "exchange/listing.h"
#include "records/snapshot.h"

namespace tenthday {

/// Rows in the natural order of their fields ("2" before "10"), whatever their ids.
/// References are labels. `kind` is one of exportKinds(); asserts otherwise.
[[nodiscard]] Listing exportOf(const Snapshot& snapshot, std::string_view kind);

}  // namespace tenthday
