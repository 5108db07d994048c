#include "evening/evening.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>
#include <utility>

#include "occupancy/winter.h"
#include "records/queen_verbs.h"
#include "tasks/nuc_tasks.h"

namespace tenthday {
namespace {

std::optional<NucLook> lookOf(OutcomeKind kind) {
    switch (kind) {
        case OutcomeKind::FirstEggs:
            return NucLook::Eggs;
        case OutcomeKind::Larvae:
            return NucLook::Larvae;
        case OutcomeKind::SealedBrood:
            return NucLook::SealedBrood;
        case OutcomeKind::Emergence:
            return NucLook::VirginSeen;
        case OutcomeKind::NoneYet:
            return NucLook::NoneYet;
        case OutcomeKind::NoQueen:
            return NucLook::Gone;
        default:
            return std::nullopt;
    }
}

/// What a task's count is kept as, where it has one.
std::optional<OutcomeKind> countKind(TaskRule rule) {
    switch (rule) {
        case TaskRule::Graft:
            return OutcomeKind::Graft;
        case TaskRule::TakeCount:
            return OutcomeKind::TakeCount;
        case TaskRule::CellsOut:
            return OutcomeKind::Ripe;
        default:
            return std::nullopt;
    }
}

/// Her nuc waits for no catch any more.
bool endsCatch(const Outcome& outcome) {
    return outcome.kind == OutcomeKind::Catch || staysForWinter(outcome);
}

bool hasNucs(TaskRule rule) {
    return rule == TaskRule::CellsIn || rule == TaskRule::FirstLook ||
           rule == TaskRule::CatchQueens;
}

std::int32_t rounded(double count) { return static_cast<std::int32_t>(std::lround(count)); }

/// Finds the lines of one page.
class Reader {
public:
    Reader(const Outlook& outlook, Day day, const EveningPage& before)
        : outlook_(outlook), snapshot_(outlook.snapshot) {
        page_.day = day;
        if (before.day != day) return;
        for (const auto& row : before.rows)
            if (row.entry == EveningEntry::Placed)
                meant_.emplace(*row.task.batch, row.side->side->id);
    }

    EveningPage run() {
        const auto tasks = tasksOf(outlook_);
        for (auto& [number, task] : stillOpen(tasks, page_.day)) add(number, task, true);
        std::map<IsoWeek, std::int32_t> numbers;
        for (const auto& task : tasks) {
            const auto number = ++numbers[isoWeekOf(task.day)];
            const bool open = task.day < page_.day && !task.done;  // told among the late ones
            if (!open && (task.day == page_.day || wasWorkedOn(task)))
                add(task.day == page_.day ? number : 0, task, false);
        }
        return std::move(page_);
    }

private:
    [[nodiscard]] auto outcomesOf(const Task& task) const {
        return snapshot_.all<Outcome>().of(task.batch ? task.batch->uuid : Uuid{});
    }

    /// Something was entered for it on the day, though it is planned for another one now.
    [[nodiscard]] bool wasWorkedOn(const Task& task) const {
        if (task.done == page_.day) return true;
        if (!task.batch || !hasNucs(task.key.rule)) return false;
        if (task.key.rule == TaskRule::CellsIn) {
            const auto placements = snapshot_.all<Placement>().of(task.batch->uuid);
            return std::any_of(placements.begin(), placements.end(), [&](const auto& row) {
                return row->done && row->day == page_.day && isIn(task, row->side);
            });
        }
        const auto outcomes = outcomesOf(task);
        return std::any_of(outcomes.begin(), outcomes.end(), [&](const auto& row) {
            const bool fits = task.key.rule == TaskRule::CatchQueens
                                  ? endsCatch(*row)
                                  : lookOf(row->kind).has_value();
            return fits && row->day == page_.day && isIn(task, row->side);
        });
    }
    /// The nuc stands in the task's yard.
    [[nodiscard]] bool isIn(const Task& task, const std::optional<Id<NucSide>>& side) const {
        if (!side) return false;
        for (const auto& one : outlook_.nucs.sides)
            if (one.side->id == *side) return one.yardOn(page_.day) == task.yard;
        return false;
    }

    void add(std::int32_t number, const Task& task, bool late) {
        EveningRow head;
        head.number = number;
        head.task = task;
        head.isHead = true;
        head.late = late;
        const auto kind = countKind(task.key.rule);
        if (kind && task.batch)
            addCounts(std::move(head), *kind);
        else if (hasNucs(task.key.rule) && task.batch)
            addNucs(std::move(head));
        else {
            head.entry = EveningEntry::Tick;
            head.done = task.done;
            page_.rows.push_back(std::move(head));
        }
    }

    [[nodiscard]] Ptr<Outcome> counted(const Task& task, OutcomeKind kind,
                                       std::optional<std::int32_t> bar) const {
        Ptr<Outcome> newest;
        for (const auto& row : outcomesOf(task))
            if (row->kind == kind && !row->side && row->bar == bar &&
                (!newest || row->day >= newest->day))
                newest = row;
        return newest;
    }

    /// A batch of several bars is counted bar by bar, unless it was counted as a whole.
    void addCounts(EveningRow head, OutcomeKind kind) {
        const auto* batch = outlook_.find(*head.task.batch);
        head.entry = EveningEntry::Count;
        head.seen = counted(head.task, kind, {});
        head.expected = head.task.count > 0 ? std::optional(head.task.count) : std::nullopt;
        if (kind == OutcomeKind::TakeCount && batch)
            head.expected = rounded(batch->timeline.counts.accepted);
        if (kind == OutcomeKind::Ripe && !head.seen && batch && lastBuilders(head.task) > 1)
            return addRipeBars(std::move(head), *batch);
        const bool byBar =
            !head.seen && batch && batch->bars.size() > 1 && kind != OutcomeKind::Ripe;
        if (!byBar) {
            page_.rows.push_back(std::move(head));
            return;
        }
        head.entry = EveningEntry::None;
        const Task task = head.task;
        page_.rows.push_back(std::move(head));
        for (const auto& bar : batch->bars) {
            EveningRow row;
            row.entry = EveningEntry::Count;
            row.task = task;
            row.bar = bar->bar;
            row.seen = counted(task, kind, bar->bar);
            if (kind == OutcomeKind::Graft) row.expected = bar->cells.value;
            page_.rows.push_back(std::move(row));
        }
    }

    /// Builders that the batch's ripe cells come out of.
    [[nodiscard]] std::size_t lastBuilders(const Task& task) const {
        std::set<Id<Builder>> builders;
        for (const auto& load : lastLoads(task)) builders.insert(load->builder);
        return builders.size();
    }
    [[nodiscard]] std::vector<Ptr<BatchLoad>> lastLoads(const Task& task) const {
        std::vector<Ptr<BatchLoad>> last;
        for (const auto& load : snapshot_.all<BatchLoad>().of(task.batch->uuid)) {
            if (!last.empty() && load->step > last.front()->step) last.clear();
            if (last.empty() || load->step == last.front()->step) last.push_back(load);
        }
        return last;
    }
    /// Each builder has its own task: the bars that stand in it are counted there.
    void addRipeBars(EveningRow head, const BatchOutlook& batch) {
        head.entry = EveningEntry::None;
        const Task task = head.task;
        page_.rows.push_back(std::move(head));
        const auto loads = lastLoads(task);
        for (const auto& bar : batch.bars) {
            const bool here = std::any_of(loads.begin(), loads.end(), [&](const auto& load) {
                return load->bar == bar->bar && load->builder == task.builder;
            });
            if (!here) continue;
            EveningRow row;
            row.entry = EveningEntry::Count;
            row.task = task;
            row.bar = bar->bar;
            row.seen = counted(task, OutcomeKind::Ripe, bar->bar);
            page_.rows.push_back(std::move(row));
        }
    }

    void addNucs(EveningRow head) {
        head.entry = EveningEntry::None;
        const Task task = head.task;
        const auto at = page_.rows.size();
        page_.rows.push_back(std::move(head));
        for (const auto& side : outlook_.nucs.sides) {
            auto row = nucRow(task, side);
            // Looked into today, a nuc may be of two tasks by now: it stands under the first.
            if (row && shown_.insert({task.key.rule, *task.batch, side.side->id}).second)
                page_.rows.push_back(std::move(*row));
        }
        if (page_.rows.size() == at + 1) page_.rows.pop_back();
    }

    [[nodiscard]] std::optional<EveningRow> nucRow(const Task& task,
                                                   const SideOutlook& side) const {
        const auto* round = roundOf(task, side);
        if (round == nullptr && wasMeant(task, side)) {
            EveningRow row;
            row.entry = EveningEntry::Placed;
            row.task = task;
            row.side = &side;
            return row;
        }
        if (round == nullptr || side.yardOn(std::max(round->transferDay, kFirstDay)) != task.yard)
            return std::nullopt;
        EveningRow row;
        row.task = task;
        row.side = &side;
        switch (task.key.rule) {
            case TaskRule::CellsIn:
                row.entry = EveningEntry::Placed;
                row.placed = placementOf(task, side);
                return isTurnOf(task, side) || isPlacedToday(row.placed)
                           ? std::optional(std::move(row))
                           : std::nullopt;
            case TaskRule::FirstLook:
                row.entry = EveningEntry::Look;
                row.seen = lastSeen(task, side,
                                    [](const Outcome& o) { return lookOf(o.kind).has_value(); });
                break;
            default:
                row.entry = EveningEntry::Caught;
                row.seen = lastSeen(task, side, endsCatch);
                if (const auto caught = row.seen ? caughtBy(snapshot_, *row.seen) : nullptr)
                    row.queen = snapshot_.find(caught->queen);
                break;
        }
        const bool today = row.seen && row.seen->day == page_.day;
        if (!today) row.before = std::exchange(row.seen, nullptr);
        if (row.before && row.before->kind != OutcomeKind::NoneYet &&
            row.before->kind != OutcomeKind::Emergence)
            return std::nullopt;  // known from a day before
        row.sure = row.entry != EveningEntry::Caught || round->seen == NucState::Laying ||
                   round->seen == NucState::JudgedGood;
        const bool open =
            row.entry == EveningEntry::Look ? isTurnOf(task, side) : !hasEnded(*round);
        return today || open ? std::optional(std::move(row)) : std::nullopt;
    }

    /// The newest round of the task's batch in a side.
    [[nodiscard]] const SideRound* roundOf(const Task& task, const SideOutlook& side) const {
        const SideRound* found = nullptr;
        for (const auto& round : side.rounds)
            if (round.batch == *task.batch) found = &round;
        return found;
    }
    /// A cell of the batch was meant for it when the page was made, in the task's yard.
    [[nodiscard]] bool wasMeant(const Task& task, const SideOutlook& side) const {
        return task.key.rule == TaskRule::CellsIn &&
               meant_.contains({*task.batch, side.side->id}) && side.yardOn(page_.day) == task.yard;
    }
    static bool isTurnOf(const Task& task, const SideOutlook& side) {
        return std::find(task.sides.begin(), task.sides.end(), &side) != task.sides.end();
    }
    [[nodiscard]] bool isPlacedToday(const Ptr<Placement>& row) const {
        return row && row->done && row->day == page_.day;
    }
    [[nodiscard]] Ptr<Placement> placementOf(const Task& task, const SideOutlook& side) const {
        Ptr<Placement> newest;
        for (const auto& row : snapshot_.all<Placement>().of(task.batch->uuid))
            if (row->side == side.side->id && row->target == CellTarget::Nuc &&
                (!newest || row->day >= newest->day))
                newest = row;
        return newest;
    }
    template <class Fits>
    [[nodiscard]] Ptr<Outcome> lastSeen(const Task& task, const SideOutlook& side,
                                        Fits fits) const {
        Ptr<Outcome> newest;
        for (const auto& row : outcomesOf(task))
            if (row->side == side.side->id && fits(*row) && (!newest || row->day >= newest->day))
                newest = row;
        return newest;
    }

    const Outlook& outlook_;
    const Snapshot& snapshot_;
    std::set<std::pair<Id<Batch>, Id<NucSide>>> meant_;
    std::set<std::tuple<TaskRule, Id<Batch>, Id<NucSide>>> shown_;
    EveningPage page_;
};

}  // namespace

bool EveningRow::isFilled() const {
    switch (entry) {
        case EveningEntry::None:
            return false;
        case EveningEntry::Tick:
            return done.has_value();
        case EveningEntry::Placed:
            return placed && placed->done;
        case EveningEntry::Count:
        case EveningEntry::Look:
        case EveningEntry::Caught:
            break;
    }
    return seen != nullptr;
}

bool EveningRow::stays() const {
    return entry == EveningEntry::Caught && seen && staysForWinter(*seen);
}

std::optional<NucLook> EveningRow::look() const {
    return entry == EveningEntry::Look && seen ? lookOf(seen->kind) : std::nullopt;
}

std::optional<NucLook> EveningRow::lookBefore() const {
    return entry == EveningEntry::Look && before ? lookOf(before->kind) : std::nullopt;
}

EveningPage eveningOf(const Outlook& outlook, Day day, const EveningPage& before) {
    return Reader(outlook, day, before).run();
}

}  // namespace tenthday
