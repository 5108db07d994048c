/// @file week_paste.h  The week's tasks as lines of a spreadsheet, both ways: ticks and initials.
#pragma once
#include "paste/paste_dialog.h"
#include "week/week_model.h"

namespace tenthday {

/// Every task once, with its day, the day on which it was done and the initials it is given to.
[[nodiscard]] QString copiedWeek(const WeekModel& model);

/// Ticks, and to whom tasks are given. A cell without a day takes the tick back, one without
/// initials the task.
[[nodiscard]] PasteKind weekToPaste(const WeekModel& model);

/// What was pasted, a column alone beside the tasks from this row on, each once: ticks where its
/// head says so or all of it is days or yes and no, else initials. One with another head stays as
/// it is.
[[nodiscard]] QString weekPasteText(const WeekModel& model, int fromRow, const QString& pasted);

}  // namespace tenthday
