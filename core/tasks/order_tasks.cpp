#include "tasks/order_tasks.h"

#include <algorithm>

#include "records/deliveries.h"
#include "supply/order_needs.h"

namespace tenthday {
namespace {

/// Of queens for others: those for oneself, cells and virgins go as they are.
bool isCaged(OrderKind kind) { return kind == OrderKind::Mated || kind == OrderKind::Proven; }

Task taskOf(TaskRule rule, const OrderNeed& need, const DayWindow& window, Day day) {
    Task task;
    task.key = {rule, need.order->id.uuid, {}, 0};
    task.day = day;
    task.window = {std::min(window.first, day), std::max(window.last, day)};
    task.subjectLabel = need.order->label;
    task.count = need.rest > 0 ? need.rest : need.order->count;
    return task;
}

}  // namespace

std::vector<Task> orderTasks(const Snapshot& snapshot) {
    std::vector<Task> tasks;
    for (const auto& order : ordersOf(snapshot)) {
        const auto need = needOf(snapshot, order, termsOf(snapshot, order->id).shipDays);
        // Where it cannot go on any day it is due all the same, and somebody has to see to it.
        const auto days = need.days.value_or(OrderDays{order->due, order->due});
        const auto done = need.rest > 0 ? std::nullopt : deliveredOf(snapshot, order->id).last;
        // What is overdue is one thing to see to: that it goes. It is caged for that anyhow.
        const bool isOverdue = need.rest > 0 && order->due < snapshot.today();
        if (isCaged(order->kind) && !isOverdue) {
            tasks.push_back(taskOf(TaskRule::CageQueens, need, {days.cage, order->due}, days.cage));
            tasks.back().done = done;
        }
        const DayWindow open{order->notBefore.value_or(days.go), order->due};
        tasks.push_back(taskOf(TaskRule::Deliver, need, open, days.go));
        tasks.back().done = done;
    }
    return tasks;
}

}  // namespace tenthday
