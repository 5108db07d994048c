/// @file caged.h  Virgins that come into nucs out of cages or an incubator, later than the cells.
#pragma once
#include "timeline/batch_timeline.h"

namespace tenthday {

/// The day from which on what goes into a nuc is no cell any more: the one after the batch is
/// likely out; none for a batch that starts with virgins.
[[nodiscard]] std::optional<Day> virginsFrom(const BatchTimeline& timeline);

/// A virgin went into a nuc.
[[nodiscard]] bool isVirginPlacement(const BatchTimeline& timeline, const Placement& placement);

/// Days by which a nuc is behind its batch: its virgin came only after the others were due to fly,
/// and none flies out of a cage. Looks and catch come so much later. 0 for cells.
[[nodiscard]] Days behindBatch(const BatchTimeline& timeline, Day transfer);

}  // namespace tenthday
