/// @file plan_hours.h  Hours of work a day as a limit of a plan. Inner to the room.
#pragma once
#include "planning/plan_site.h"

namespace tenthday {

/// What is left of each day beside the tasks in the book, and what a new batch takes of it. Cells
/// and queens are taken to be a way of their own to the yard that is farthest.
[[nodiscard]] PlanProblem::Hours hoursOf(const Outlook& outlook, const PlanSite& site,
                                         std::int32_t mostMinutes);

/// The days of these batches' grafts, cells and catches that take longer, with all tasks that the
/// season has on them. @param batches  in the outlook
[[nodiscard]] std::vector<LongDay> longDays(const Outlook& outlook,
                                            const std::vector<ProposedBatch>& batches,
                                            std::int32_t mostMinutes);

}  // namespace tenthday
