/// @file hold.h  How a batch's nucs go, day by day, from the transfer to the catch.
#pragma once
#include "timeline/batch_timeline.h"

namespace tenthday {

/// The hold that follows from a batch's dates and the losses' means.
[[nodiscard]] NucHold holdOf(const BatchDates& dates, const Facts& facts);

}  // namespace tenthday
