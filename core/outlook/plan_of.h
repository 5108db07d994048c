/// @file plan_of.h  What was planned of a batch, beside what became of it.
#pragma once
#include "outlook/outlook.h"

namespace tenthday {

/// The batch's timeline were nothing of it seen, counted or recorded: its dates by the plan that
/// stands in the book. None where there is no such batch.
[[nodiscard]] std::optional<BatchTimeline> planOf(const Outlook& outlook, Id<Batch> batch);

/// The day an event was planned for, where it is on another day now.
[[nodiscard]] std::optional<Day> plannedElse(const BatchTimeline& plan, const BatchTimeline& now,
                                             Event event);

}  // namespace tenthday
