#include <algorithm>
#include <cmath>
#include <map>

#include "base/natural_order.h"
#include "records/relations.h"
#include "tasks/nuc_tasks.h"
#include "tasks/order_tasks.h"
#include "tasks/season_tasks.h"
#include "tasks/task.h"

namespace tenthday {
namespace {

/// Gathers the tasks of one season.
class Gatherer {
public:
    Gatherer(const Snapshot& snapshot, const Timelines& timelines,
             const SharedList<BuilderOutlook>& builders, const NucOutlook& nucs,
             const MatingTable& mating)
        : snapshot_(snapshot),
          timelines_(timelines),
          builders_(builders),
          nucs_(nucs),
          mating_(mating),
          turns_(turnsOfBatches(nucs)) {
        for (const auto& yard : snapshot.all<Yard>()) drive_[yard->id] = yard.get();
        for (const auto& tick : snapshot.all<TaskDone>()) {
            const auto subject = uuidFromText(tick->subject);
            const auto place = uuidFromText(tick->place);
            ticks_[{tick->rule, subject.value_or(Uuid{}), place.value_or(Uuid{}),
                    tick->occurrence}] = tick->day;
        }
    }

    std::vector<Task> run(const std::vector<DroneNeed>& drones) {
        for (const auto& [id, timeline] : timelines_) {
            const auto batch = snapshot_.find(id);
            if (!batch) continue;
            rearing(*batch, *timeline);
            cellsOut(*batch, *timeline);
            take(nucTasks(snapshot_, *batch, *timeline, turnsOf(id)));
            take(feedTasks(snapshot_, *batch, *timeline));
            take(matingTasks(snapshot_, *batch, sidesOf(turnsOf(id))));
        }
        take(droneCombTasks(snapshot_, drones));
        for (const auto& builder : builders_) {
            makeUps(builder);
            wildLooks(builder);
        }
        stockings();
        take(orderTasks(snapshot_));
        for (const auto& own : snapshot_.all<OwnTask>()) {
            auto& task = add(TaskRule::Own, own->id.uuid, {}, 0, own->day, own->text);
            task.yard = own->yard;
            task.must = own->must;
        }
        for (auto& task : tasks_) {
            settle(task);
            leaveShut(task);
        }
        sort();
        return std::move(tasks_);
    }

private:
    Task& add(TaskRule rule, Uuid subject, Uuid place, std::int32_t occurrence, Day day,
              const std::string& label) {
        Task task;
        task.key = {rule, subject, place, occurrence};
        task.day = day;
        task.window = {day, day};
        task.subjectLabel = label;
        tasks_.push_back(std::move(task));
        return tasks_.back();
    }
    Task& add(TaskRule rule, const Batch& batch, Uuid place, std::int32_t occurrence,
              Moment moment) {
        auto& task = add(rule, batch.id.uuid, place, occurrence, dayOf(moment), batch.label);
        task.batch = batch.id;
        return task;
    }
    void take(std::vector<Task> tasks) {
        std::move(tasks.begin(), tasks.end(), std::back_inserter(tasks_));
    }
    [[nodiscard]] const Turns& turnsOf(Id<Batch> batch) const {
        static const Turns none;
        const auto found = turns_.find(batch);
        return found == turns_.end() ? none : found->second;
    }
    void in(Task& task, std::optional<Id<Builder>> builder) const {
        task.builder = builder;
        if (!builder) return;
        if (const auto row = snapshot_.find(*builder)) task.yard = row->yard;
    }

    [[nodiscard]] std::optional<Day> seen(Id<Batch> batch, OutcomeKind kind) const {
        std::optional<Day> first;
        for (const auto& outcome : snapshot_.all<Outcome>().of(batch.uuid))
            if (outcome->kind == kind && !outcome->side && (!first || outcome->day < *first))
                first = outcome->day;
        return first;
    }

    /// From the breeder queen to the last move between builders.
    void rearing(const Batch& batch, const BatchTimeline& line) {
        const auto grafted = seen(batch.id, OutcomeKind::Graft);
        const auto* first = line.loads.empty() ? nullptr : &line.loads.front();
        const auto builder = first ? first->builder : std::nullopt;
        const auto event = [&](TaskRule rule, Event which, bool must) -> Task* {
            const auto* dates = line.find(which);
            if (dates == nullptr) return nullptr;
            auto& task = add(rule, batch, {}, 0, dates->likely);
            task.hour = hourOf(dates->likely);
            task.must = must;
            task.done = grafted;
            in(task, builder);
            return &task;
        };
        event(TaskRule::Confine, Event::Confine, false);
        event(TaskRule::FreeBreeder, Event::FreeBreeder, true);
        if (line.find(Event::MakeUpBuilder) != nullptr && builder && !hasMakeUp(*builder, line))
            event(TaskRule::MakeUpBuilder, Event::MakeUpBuilder, false);
        if (auto* task = event(TaskRule::Graft, Event::Graft, true))
            task->count = rounded(line.counts.grafted);
        if (const auto* dates = line.find(Event::TakeCount)) {
            auto* task = event(TaskRule::TakeCount, Event::TakeCount, false);
            task->window = {dayOf(line.graft) + Days{1}, dayOf(dates->latest)};
            task->done = seen(batch.id, OutcomeKind::TakeCount);
            task->count = rounded(line.counts.grafted);
        }
        moves(batch, line);
        if (line.latestMove < line.hold.leaves)
            if (auto* task = event(TaskRule::CageCells, Event::CageFrom, true)) {
                task->done = seen(batch.id, OutcomeKind::Ripe);
                task->count = rounded(line.counts.ripe);
                if (!line.loads.empty()) in(*task, line.loads.back().builder);
            }
    }

    static std::int32_t rounded(double count) {
        return static_cast<std::int32_t>(std::lround(count));
    }

    [[nodiscard]] bool hasMakeUp(Id<Builder> builder, const BatchTimeline& line) const {
        const Day graft = dayOf(line.graft);
        for (const auto& makeUp : snapshot_.all<MakeUp>().of(builder.uuid))
            if (isMadeUpFor(makeUp->day, graft)) return true;
        return false;
    }

    /// Into the next builder of the method; a step in the same builder is no move.
    void moves(const Batch& batch, const BatchTimeline& line) {
        for (const auto& load : line.loads) {
            if (load.step == 1 || !load.builder) continue;
            const bool stays =
                std::any_of(line.loads.begin(), line.loads.end(), [&](const LoadSpan& before) {
                    return before.step == load.step - 1 && before.builder == load.builder;
                });
            if (stays) continue;
            auto& task =
                add(TaskRule::MoveCells, batch, load.builder->uuid, load.step, load.span.from);
            task.hour = hourOf(load.span.from);
            in(task, load.builder);
            if (!load.thickness.empty()) task.count = rounded(load.thickness.front().cells);
            task.done = seen(batch.id, OutcomeKind::Ripe);
        }
    }

    /// Cells out of each builder.
    void cellsOut(const Batch& batch, const BatchTimeline& line) {
        const auto ripe = seen(batch.id, OutcomeKind::Ripe);
        for (const auto& load : line.loads) {
            if (batch.start >= Start::Ripe || load.step != line.loads.back().step) continue;
            auto& task = add(TaskRule::CellsOut, batch, load.builder.value_or(Id<Builder>{}).uuid,
                             0, line.hold.transfer);
            task.hour = hourOf(line.hold.transfer);
            task.must = true;
            task.done = ripe;
            in(task, load.builder);
            if (!load.thickness.empty()) task.count = rounded(load.thickness.back().cells);
            if (line.latestMove < Moment::max()) task.deadline = line.latestMove;
        }
    }

    /// Builders keep what was done to them in all years; batches are read by the season.
    [[nodiscard]] bool isOfAnEarlierSeason(Day day) const {
        return day < snapshot_.startDays().first - Days{4};
    }

    void makeUps(const BuilderOutlook& builder) {
        for (const auto& makeUp : builder.makeUps) {
            if (isOfAnEarlierSeason(makeUp->day)) continue;
            auto& task = add(TaskRule::MakeUpBuilder, makeUp->id.uuid, builder.builder->id.uuid, 0,
                             makeUp->day, builder.builder->label);
            task.hour = makeUp->hour;
            in(task, builder.builder->id);
            for (const auto& load : builder.loads) {
                if (!isMadeUpFor(makeUp->day, dayOf(load.span->span.from))) continue;
                task.batch = load.batch;
                if (seen(load.batch, OutcomeKind::Graft)) task.done = makeUp->day;
                break;
            }
        }
    }

    /// The first look on the first day of its window, the second on the last: only then are all
    /// wild cells begun.
    void wildLooks(const BuilderOutlook& builder) {
        for (const auto& clock : builder.clocks) {
            if (isOfAnEarlierSeason(dayOf(clock.start))) continue;
            const auto look = [&](TaskRule rule, const DayWindow& window, Day day,
                                  std::optional<Day> ticked) {
                auto& task = add(rule, clock.cause, builder.builder->id.uuid, 0, day,
                                 builder.builder->label);
                task.window = window;
                task.done = ticked;
                in(task, builder.builder->id);
            };
            look(TaskRule::FirstWildLook, clock.firstLook, clock.firstLook.first,
                 clock.firstTicked ? clock.firstTicked : clock.secondTicked);
            look(TaskRule::SecondWildLook, clock.secondLook, clock.secondLook.last,
                 clock.secondTicked);
        }
    }

    /// Bees into nucs: what is stocked in one yard on one day is one task.
    void stockings() {
        std::map<std::pair<Day, std::optional<Id<Yard>>>, std::vector<Ptr<Stocking>>> groups;
        for (const auto& stocking : snapshot_.all<Stocking>())
            groups[{stocking->day, yardOf(*stocking)}].push_back(stocking);
        for (const auto& [where, rows] : groups) {
            const auto first =
                *std::min_element(rows.begin(), rows.end(),
                                  [](const auto& a, const auto& b) { return a->id < b->id; });
            auto& task = add(TaskRule::StockNucs, first->id.uuid,
                             where.second.value_or(Id<Yard>{}).uuid, 0, where.first, {});
            task.yard = where.second;
            task.count = static_cast<std::int32_t>(rows.size());
            if (where.first < snapshot_.today()) task.done = where.first;
        }
    }

    [[nodiscard]] std::optional<Id<Yard>> yardOf(const Stocking& stocking) const {
        const auto side = snapshot_.find(stocking.side);
        const auto layout = side ? snapshot_.find(side->layout) : nullptr;
        return layout ? yardOn(snapshot_, layout->box, stocking.day) : std::nullopt;
    }

    /// Ticks count; what can wait and was not done yesterday is planned for today.
    void settle(Task& task) const {
        if (const auto tick = ticks_.find(task.key); tick != ticks_.end()) task.done = tick->second;
        const Day today = snapshot_.today();
        if (!task.done && !task.must && task.day < today && task.window.last >= today)
            task.day = today;
    }

    /// Work that opens boxes is told the hours at which they are left shut.
    void leaveShut(Task& task) const {
        if (!task.yard || task.done) return;
        switch (task.key.rule) {
            case TaskRule::CellsIn:
            case TaskRule::FirstLook:
            case TaskRule::CatchQueens:
                task.shut = shutHours(snapshot_, nucs_, mating_, *task.yard, task.day, Opens::Nucs);
                break;
            case TaskRule::StockNucs:
            case TaskRule::CellsOut:
            case TaskRule::CageCells:
            case TaskRule::FreeBreeder:
            case TaskRule::Confine:
            case TaskRule::MakeUpBuilder:
            case TaskRule::Feed:
            case TaskRule::Graft:
            case TaskRule::TakeCount:
            case TaskRule::MoveCells:
            case TaskRule::FirstWildLook:
            case TaskRule::SecondWildLook:
                task.shut =
                    shutHours(snapshot_, nucs_, mating_, *task.yard, task.day, Opens::Builder);
                break;
            case TaskRule::CageQueens:
            case TaskRule::Deliver:
            case TaskRule::ToStation:
            case TaskRule::FromStation:
            case TaskRule::Inseminate:
            case TaskRule::DroneComb:
            case TaskRule::Own:
                break;
        }
    }

    void sort() {
        const auto drive = [&](const std::optional<Id<Yard>>& yard) {
            const auto found = yard ? drive_.find(*yard) : drive_.end();
            return found == drive_.end() ? -1 : found->second->driveOrder;
        };
        const auto label = [&](const std::optional<Id<Yard>>& yard) {
            const auto found = yard ? drive_.find(*yard) : drive_.end();
            return found == drive_.end() ? std::string() : naturalKey(found->second->label);
        };
        std::stable_sort(tasks_.begin(), tasks_.end(), [&](const Task& a, const Task& b) {
            if (a.day != b.day) return a.day < b.day;
            if (a.yard != b.yard) {
                if (drive(a.yard) != drive(b.yard)) return drive(a.yard) < drive(b.yard);
                return label(a.yard) < label(b.yard);
            }
            if (a.must != b.must) return a.must;
            if (a.key.rule != b.key.rule) return a.key.rule < b.key.rule;
            if (a.subjectLabel != b.subjectLabel)
                return naturalLess(a.subjectLabel, b.subjectLabel);
            return a.key < b.key;
        });
    }

    const Snapshot& snapshot_;
    const Timelines& timelines_;
    const SharedList<BuilderOutlook>& builders_;
    const NucOutlook& nucs_;
    const MatingTable& mating_;
    std::unordered_map<Id<Batch>, Turns> turns_;
    std::unordered_map<Id<Yard>, const Yard*> drive_;
    std::map<TaskKey, Day> ticks_;
    std::vector<Task> tasks_;
};

}  // namespace

std::vector<Task> tasksOf(const Snapshot& snapshot, const Timelines& timelines,
                          const SharedList<BuilderOutlook>& builders, const NucOutlook& nucs,
                          const std::vector<DroneNeed>& drones, const MatingTable& mating) {
    return Gatherer(snapshot, timelines, builders, nucs, mating).run(drones);
}

std::vector<Task> within(const std::vector<Task>& tasks, const DayWindow& days) {
    std::vector<Task> some;
    std::copy_if(tasks.begin(), tasks.end(), std::back_inserter(some),
                 [&](const Task& task) { return days.contains(task.day); });
    return some;
}

}  // namespace tenthday
