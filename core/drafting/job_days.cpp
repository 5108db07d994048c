#include "drafting/job_days.h"

#include <algorithm>

#include "calendar/iso_week.h"
#include "records/relations.h"

namespace tenthday {
namespace {

bool isRearing(TaskRule rule) {
    switch (rule) {
        case TaskRule::Confine:
        case TaskRule::FreeBreeder:
        case TaskRule::MakeUpBuilder:
        case TaskRule::Graft:
        case TaskRule::TakeCount:
        case TaskRule::MoveCells:
        case TaskRule::CageCells:
        case TaskRule::CellsOut:
            return true;
        default:
            return false;
    }
}

bool isWildLook(TaskRule rule) {
    return rule == TaskRule::FirstWildLook || rule == TaskRule::SecondWildLook;
}

/// The wild cells can destroy this batch: the clock began when its builder was made up for it, or
/// while its cells stood there.
bool threatens(const Outlook& outlook, const Task& look, const BatchTimeline& timeline) {
    const auto builder =
        std::find_if(outlook.builders.begin(), outlook.builders.end(),
                     [&](const auto& b) { return look.builder && b.builder->id == *look.builder; });
    if (builder == outlook.builders.end()) return false;
    const auto clock = std::find_if(builder->clocks.begin(), builder->clocks.end(),
                                    [&](const auto& c) { return c.cause == look.key.subject; });
    if (clock == builder->clocks.end()) return false;
    const auto start = clock->start;
    return std::any_of(timeline.loads.begin(), timeline.loads.end(), [&](const LoadSpan& load) {
        return load.builder == look.builder && start < load.span.until &&
               (load.span.from <= start || isMadeUpFor(dayOf(start), dayOf(load.span.from)));
    });
}

}  // namespace

bool FreeDays::contains(Day day) const {
    return weekdays[static_cast<std::size_t>(isoWeekday(day) - 1)] ||
           std::any_of(spans.begin(), spans.end(),
                       [&](const DayWindow& span) { return span.contains(day); });
}

FreeDays freeDays(const Snapshot& snapshot, const std::array<bool, 7>& weekdays) {
    FreeDays free{weekdays, {}};
    for (const auto& off : snapshot.all<DayOff>()) free.spans.push_back({off->from, off->until});
    return free;
}

Day Job::dayBeside(const FreeDays& free) const {
    if (!free.contains(planned)) return planned;
    const Day first = rule == TaskRule::SecondWildLook ? planned : window.first;
    for (Day day = first; day <= window.last; day += Days{1})
        if (!free.contains(day)) return day;
    return planned;
}

std::vector<Job> jobsOf(const Outlook& outlook, const std::vector<Task>& tasks, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    std::vector<Job> jobs;
    if (batch == nullptr) return jobs;
    for (const auto& task : tasks) {
        const bool mine = isRearing(task.key.rule) ? task.batch == id
                                                   : isWildLook(task.key.rule) &&
                                                         threatens(outlook, task, batch->timeline);
        if (mine) jobs.push_back({task.key.rule, task.builder, task.day, task.window});
    }
    return jobs;
}

}  // namespace tenthday
