#include "planning/plan_hours.h"

#include <algorithm>
#include <map>
#include <set>

#include "tasks/work_time.h"

namespace tenthday {
namespace {

/// Minutes of the season's tasks, ways included, by day.
std::map<Day, std::int32_t> minutesByDay(const Outlook& outlook) {
    std::map<Day, std::vector<Task>> days;
    for (auto& task : tasksOf(outlook)) days[task.day].push_back(std::move(task));
    std::map<Day, std::int32_t> minutes;
    for (const auto& [day, tasks] : days) minutes[day] = dayWork(outlook.snapshot, tasks).minutes();
    return minutes;
}

PlanProblem::Work workOf(const Snapshot& snapshot, std::initializer_list<TaskRule> rules) {
    PlanProblem::Work work;
    for (const auto rule : rules) {
        const auto minutes = taskMinutes(snapshot, rule);
        work.once += minutes.once + 1;  // minutes are rounded up
        work.each += minutes.each.value / 10.0;
    }
    return work;
}

}  // namespace

PlanProblem::Hours hoursOf(const Outlook& outlook, const PlanSite& site, std::int32_t mostMinutes) {
    const auto& snapshot = outlook.snapshot;
    std::int32_t way = 0;
    for (std::size_t yard = 0; yard < site.yards.size(); ++yard)
        if (std::any_of(site.nucs[yard].begin(), site.nucs[yard].end(),
                        [](auto nucs) { return nucs > 0; }))
            way = std::max(way, roundThrough(snapshot, {site.yards[yard]}).drive);
    PlanProblem::Hours hours;
    hours.graft = workOf(snapshot, {TaskRule::Graft});
    hours.cells = workOf(snapshot, {TaskRule::CellsOut, TaskRule::CellsIn});
    hours.caught = workOf(snapshot, {TaskRule::CatchQueens});
    hours.cells.once += way;
    hours.caught.once += way;
    const auto there = minutesByDay(outlook);
    for (std::int32_t i = 0; i < site.problem.horizon; ++i) {
        const auto found = there.find(site.day(i));
        hours.left.push_back(mostMinutes - (found == there.end() ? 0 : found->second));
    }
    return hours;
}

std::vector<LongDay> longDays(const Outlook& outlook, const std::vector<ProposedBatch>& batches,
                              std::int32_t mostMinutes) {
    std::set<Day> days;
    for (const auto& batch : batches) days.insert({batch.graft, batch.cellsDay, batch.ready});
    const auto minutes = minutesByDay(outlook);
    std::vector<LongDay> all;
    for (const auto day : days)
        if (const auto found = minutes.find(day);
            found != minutes.end() && found->second > mostMinutes)
            all.push_back({day, found->second});
    return all;
}

}  // namespace tenthday
