/// @file order_tasks.h  Tasks of orders: cage their queens, deliver them. Inner to the room.
#pragma once
#include "tasks/task.h"

namespace tenthday {

/// For each open order of the season shown. Both are named by the order's id, may be done earlier
/// and must be done by its due day; done when deliveries cover the count. Queens are caged the day
/// before they go; cells, virgins and queens for oneself are not caged.
[[nodiscard]] std::vector<Task> orderTasks(const Snapshot& snapshot);

}  // namespace tenthday
