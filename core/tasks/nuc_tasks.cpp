#include "tasks/nuc_tasks.h"

#include <algorithm>
#include <cmath>

#include "occupancy/winter.h"

namespace tenthday {
namespace {

/// Gathers the tasks at one batch's nucs.
class NucGatherer {
public:
    NucGatherer(const Snapshot& snapshot, const Batch& batch, const BatchTimeline& line)
        : snapshot_(snapshot), batch_(batch), line_(line) {}

    std::vector<Task> run(const Turns& turns) {
        for (const auto& [yard, days] : turns) {
            cellsIn(yard, days);
            Turn all;
            for (const auto& [day, turn] : days) {
                all.sides.insert(all.sides.end(), turn.sides.begin(), turn.sides.end());
                all.rounds.insert(all.rounds.end(), turn.rounds.begin(), turn.rounds.end());
            }
            firstLook(yard, all);
            catching(yard, all);
        }
        return std::move(tasks_);
    }

private:
    Task& add(TaskRule rule, std::optional<Id<Yard>> yard, std::int32_t occurrence, Day day,
              const std::vector<const SideOutlook*>& sides) {
        Task task;
        task.key = {rule, batch_.id.uuid, yard.value_or(Id<Yard>{}).uuid, occurrence};
        task.day = day;
        task.window = {day, day};
        task.subjectLabel = batch_.label;
        task.batch = batch_.id;
        task.yard = yard;
        task.sides = sides;
        task.count = static_cast<std::int32_t>(sides.size());
        tasks_.push_back(std::move(task));
        return tasks_.back();
    }

    void cellsIn(std::optional<Id<Yard>> yard, const std::map<Day, Turn>& days) {
        std::int32_t number = 0;
        for (const auto& [day, turn] : days) {
            auto& task = add(TaskRule::CellsIn, yard, number++, day, turn.sides);
            task.must = true;
            const bool all = std::all_of(turn.rounds.begin(), turn.rounds.end(),
                                         [](const auto* round) { return round->done; });
            if (all) task.done = day;
        }
    }

    /// Somebody looked into the nuc after the cell went in and saw no eggs.
    [[nodiscard]] bool wasLookedInto(const SideOutlook& side, const SideRound& round) const {
        const auto outcomes = snapshot_.all<Outcome>().of(batch_.id.uuid);
        return std::any_of(outcomes.begin(), outcomes.end(), [&](const auto& row) {
            if (row->side != side.side->id || row->day < round.transferDay) return false;
            return row->kind == OutcomeKind::NoneYet || (row->kind == OutcomeKind::Emergence &&
                                                         row->day >= round.timeline->hold.lookDay);
        });
    }

    /// Nucs that nobody has looked into are one task; those to be looked into again another, for
    /// the first of them to be due.
    void firstLook(std::optional<Id<Yard>> yard, const Turn& all) {
        Turn first;
        Turn again;
        Day last = line_.hold.lookDay;
        std::optional<Day> seen;
        for (std::size_t i = 0; i < all.rounds.size(); ++i) {
            const auto& round = *all.rounds[i];
            if (!round.isOpen()) {
                last = std::max(last, round.seenDay.value_or(last));
                seen = std::max(seen, round.seenDay);
                continue;
            }
            auto& turn = wasLookedInto(*all.sides[i], round) ? again : first;
            turn.sides.push_back(all.sides[i]);
            turn.rounds.push_back(&round);
        }
        if (!first.sides.empty()) {
            Day look = line_.hold.lookDay;
            for (const auto* round : first.rounds) look = std::max(look, round->lookDay);
            add(TaskRule::FirstLook, yard, 0, look, first.sides);
        }
        if (!again.sides.empty()) lookAgain(yard, again);
        if (!first.sides.empty() || !again.sides.empty()) return;
        // It keeps its place in the week, but was done when it was: perhaps before it was due.
        add(TaskRule::FirstLook, yard, 0, last, all.sides).done = seen.value_or(last);
    }

    void lookAgain(std::optional<Id<Yard>> yard, const Turn& again) {
        const auto soonest =
            std::min_element(again.rounds.begin(), again.rounds.end(),
                             [](const auto* a, const auto* b) { return a->lookDay < b->lookDay; });
        const Day look = (*soonest)->lookDay;
        std::vector<const SideOutlook*> due;
        for (std::size_t i = 0; i < again.rounds.size(); ++i)
            if (again.rounds[i]->lookDay == look) due.push_back(again.sides[i]);
        add(TaskRule::FirstLook, yard, 1, look, due);
    }

    void catching(std::optional<Id<Yard>> yard, const Turn& all) {
        double expected = 0;
        std::vector<const SideOutlook*> sides;
        Day day = kFirstDay;
        Day last = kFirstDay;
        for (std::size_t i = 0; i < all.rounds.size(); ++i) {
            const auto& round = *all.rounds[i];
            if (hasEnded(round)) {
                last = std::max(last, round.seenDay.value_or(last));
                continue;
            }
            expected += round.layingShare();
            sides.push_back(all.sides[i]);
            day = std::max(day, round.catchDay);
        }
        auto& task = add(TaskRule::CatchQueens, yard, 0, sides.empty() ? last : day,
                         sides.empty() ? all.sides : sides);
        if (sides.empty())
            task.done = last;
        else
            task.count = std::max(1, static_cast<std::int32_t>(std::lround(expected)));
    }

    const Snapshot& snapshot_;
    const Batch& batch_;
    const BatchTimeline& line_;
    std::vector<Task> tasks_;
};

}  // namespace

std::unordered_map<Id<Batch>, Turns> turnsOfBatches(const NucOutlook& nucs) {
    std::unordered_map<Id<Batch>, Turns> turns;
    for (const auto& side : nucs.sides)
        for (const auto& round : side.rounds) {
            auto& turn = turns[round.batch][side.yardOn(round.transferDay)][round.transferDay];
            turn.sides.push_back(&side);
            turn.rounds.push_back(&round);
        }
    return turns;
}

std::vector<const SideOutlook*> sidesOf(const Turns& turns) {
    std::vector<const SideOutlook*> sides;
    for (const auto& [yard, days] : turns)
        for (const auto& [day, turn] : days)
            sides.insert(sides.end(), turn.sides.begin(), turn.sides.end());
    return sides;
}

bool hasEnded(const SideRound& round) {
    return round.seen == NucState::NoQueen || round.seen == NucState::Caught ||
           round.seen == NucState::Spent || round.seen == NucState::DroneLayer ||
           staysForWinter(round);
}

std::vector<Task> nucTasks(const Snapshot& snapshot, const Batch& batch, const BatchTimeline& line,
                           const Turns& turns) {
    return NucGatherer(snapshot, batch, line).run(turns);
}

}  // namespace tenthday
