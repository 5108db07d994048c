/// @file event_behind.h  Which date of its batch gives a task its day.
#pragma once
#include "tasks/task.h"

namespace tenthday {

/// None where the day is not the batch's: the user's own task, a make-up, stocking or look that
/// stands in the book by itself.
[[nodiscard]] std::optional<Event> eventBehind(const Task& task, const BatchTimeline& timeline);

}  // namespace tenthday
