/// @file why_task.h  Why a task is planned for its day, and why a nuc is what it is.
#pragma once
#include "screen_text/why_text.h"

namespace tenthday::why_text {

/// The task's own rule first; where a date of its batch sets its day, the chain of that date.
[[nodiscard]] std::vector<Link> task(const Outlook& outlook, const Task& task);

/// What the nuc is on a day and since when; then why it is or is not ready for a cell.
[[nodiscard]] std::vector<Link> nuc(const Outlook& outlook, const SideOutlook& side, Day day);

}  // namespace tenthday::why_text
