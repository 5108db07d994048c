#include "tasks/week.h"

namespace tenthday {

std::vector<NumberedTask> ofWeek(const std::vector<Task>& tasks, IsoWeek week) {
    std::vector<NumberedTask> numbered;
    std::int32_t number = 0;
    for (const auto& task : within(tasks, daysOf(week))) numbered.push_back({++number, task});
    return numbered;
}

std::vector<NumberedTask> stillOpen(const std::vector<Task>& tasks, Day today) {
    std::vector<NumberedTask> open;
    std::optional<IsoWeek> week;
    std::int32_t number = 0;
    for (const auto& task : tasks) {
        if (task.day >= today) break;  // they are in the order of days
        const auto own = isoWeekOf(task.day);
        number = week == own ? number + 1 : 1;
        week = own;
        if (!task.done) open.push_back({number, task});
    }
    return open;
}

}  // namespace tenthday
