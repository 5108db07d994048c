#include "tasks/season_tasks.h"

#include <algorithm>

#include "records/relations.h"
#include "records/yard_state.h"

namespace tenthday {
namespace {

Task taskOf(TaskKey key, const DayWindow& window, const std::string& label) {
    Task task;
    task.key = key;
    task.day = window.first;
    task.window = window;
    task.subjectLabel = label;
    return task;
}

/// A builder that is made up later is fed once it stands.
Day feedFrom(const Snapshot& snapshot, const Builder& builder, const BatchTimeline& timeline) {
    const Day graft = dayOf(timeline.graft);
    const auto before = static_cast<std::int32_t>(snapshot.facts()[Fact::FeedBeforeD]);
    Day from = std::max(graft - Days{before}, builder.from);
    std::optional<Day> made;
    for (const auto& makeUp : snapshot.all<MakeUp>().of(builder.id.uuid))
        if (isMadeUpFor(makeUp->day, graft))
            made = std::max(made.value_or(makeUp->day), makeUp->day);
    if (!made)
        if (const auto* dates = timeline.find(Event::MakeUpBuilder)) made = dayOf(dates->likely);
    return std::min(std::max(from, made.value_or(from)), graft);
}

}  // namespace

std::vector<Task> droneCombTasks(const Snapshot& snapshot, const std::vector<DroneNeed>& drones) {
    std::vector<Task> tasks;
    for (const auto& need : drones) {
        const bool inTime = need.combIn && *need.combIn <= need.combLast;
        if (!inTime && need.combLast < snapshot.today()) continue;
        auto& task = tasks.emplace_back(
            taskOf({TaskRule::DroneComb, need.yard->id.uuid, need.yard->id.uuid, 0},
                   {need.combBy, std::max(need.combBy, need.combLast)}, need.yard->label));
        task.yard = need.yard->id;
        task.count = need.wanted;
        if (inTime) task.done = need.combIn;
    }
    return tasks;
}

std::vector<Task> matingTasks(const Snapshot& snapshot, const Batch& batch,
                              const std::vector<const SideOutlook*>& sides) {
    std::vector<Task> tasks;
    if (batch.mating == Mating::Open) return tasks;
    const auto add = [&](TaskRule rule, const MatingStay& stay, const DayWindow& window) {
        const auto place = stay.yard.value_or(Id<Yard>{});
        auto away = sides;  // what stands at the station anyway goes nowhere
        if (stay.yard)
            std::erase_if(away,
                          [&](const auto* side) { return side->yardOn(stay.from) == stay.yard; });
        auto& task =
            tasks.emplace_back(taskOf({rule, stay.id.uuid, place.uuid, 0}, window, batch.label));
        task.batch = batch.id;
        task.yard = stay.yard;
        task.sides = away;
        task.count = static_cast<std::int32_t>(away.size());
    };
    for (const auto& stay : snapshot.all<MatingStay>().of(batch.id.uuid)) {
        if (batch.mating == Mating::Insemination) {
            add(TaskRule::Inseminate, *stay, {stay->from, stay->until});
            continue;
        }
        add(TaskRule::ToStation, *stay, {stay->from, stay->from});
        add(TaskRule::FromStation, *stay, {stay->until, stay->until});
    }
    return tasks;
}

std::vector<Task> feedTasks(const Snapshot& snapshot, const Batch& batch,
                            const BatchTimeline& timeline) {
    std::vector<Task> tasks;
    for (const auto& hungry : inDearth(snapshot, batch)) {
        const Day from = feedFrom(snapshot, *hungry.builder, timeline);
        auto& task =
            tasks.emplace_back(taskOf({TaskRule::Feed, batch.id.uuid, hungry.builder->id.uuid, 0},
                                      {from, dayOf(timeline.graft)}, batch.label));
        task.batch = batch.id;
        task.builder = hungry.builder->id;
        task.yard = hungry.builder->yard;
        task.done = hungry.fed;
    }
    return tasks;
}

}  // namespace tenthday
