/// @file order_tasks.h  Tasks of orders: cage their queens, deliver them. Inner to the room.
#pragma once
#include "tasks/task.h"

namespace tenthday {

/// For each open order of the season shown, named by its id: deliver what is owed on the last day
/// on which it can go, at the latest on its due day; queens for others are caged the day before.
/// Done when deliveries cover the count. An open order whose due day is over is one late task, its
/// delivery, until it is delivered, cancelled, put on the waiting list or ticked.
[[nodiscard]] std::vector<Task> orderTasks(const Snapshot& snapshot);

}  // namespace tenthday
