#include "records/verbs.h"

#include <algorithm>
#include <cmath>

#include "records/relations.h"

namespace tenthday {

Result<void> checkStart(const Snapshot& snapshot, const std::string& label, Day day) {
    const auto season = snapshot.season();
    if (snapshot.seasonId().isNone() || snapshot.startDays().contains(day)) return {};
    return Error{"batch " + label + ": " + toText(day) + " is outside the season, " +
                 toText(season.first) + " to " + toText(season.last) +
                 "; seasons are added and made longer in Set-up"};
}

void moveNucPlans(const Snapshot& snapshot, Id<Batch> batch, Days by, ChangeSet& changes) {
    for (const auto& placement : snapshot.all<Placement>().of(batch.uuid)) {
        if (placement->done) continue;
        Placement moved = *placement;
        moved.day += by;
        changes.edit(placement, moved);
    }
    for (const auto& stay : snapshot.all<MatingStay>().of(batch.uuid)) {
        if (stay->until < snapshot.today()) continue;
        MatingStay moved = *stay;
        if (stay->from > snapshot.today()) moved.from += by;  // what has begun stays as it was
        moved.until = std::max(stay->until + by, moved.from);
        changes.edit(stay, moved);
    }
}

void moveMakeUps(const Snapshot& snapshot, const Batch& batch, Days by, ChangeSet& changes) {
    for (const auto& makeUp : ownMakeUps(snapshot, batch)) {
        if (makeUp->day < snapshot.today()) continue;
        MakeUp moved = *makeUp;
        moved.day += by;
        changes.edit(makeUp, moved);
    }
}

Result<ChangeSet> moveBatch(const Snapshot& snapshot, Id<Batch> id, Day day) {
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    const Days by = day - batch->day;
    ChangeSet changes{Verb::MoveBatch, batch->label, day, {}};
    if (by == Days{0}) return changes;
    if (isGrafted(snapshot, id)) {
        moveNucPlans(snapshot, id, by, changes);
        if (changes.isEmpty())
            return Error{"batch " + batch->label +
                         ": is grafted, and nothing of it is planned ahead that could move"};
        return changes;
    }
    if (auto good = checkStart(snapshot, batch->label, day); !good) return good.error();
    Batch moved = *batch;
    moved.day = day;
    changes.edit(batch, moved);
    moveNucPlans(snapshot, id, by, changes);
    moveMakeUps(snapshot, *batch, by, changes);
    return changes;
}

Result<ChangeSet> moveLoad(const Snapshot& snapshot, Id<Batch> id, std::int32_t step,
                           Id<Builder> from, Id<Builder> to) {
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    ChangeSet changes{Verb::MoveBars, batch->label, {}, {}};
    for (const auto& load : snapshot.all<BatchLoad>().of(id.uuid)) {
        if (load->step != step || load->builder != from) continue;
        BatchLoad moved = *load;
        moved.builder = to;
        changes.edit(load, moved);
    }
    return changes;
}

namespace {

/// "Q18 A", or why the side cannot be stocked on that day.
Result<std::string> stockable(const Snapshot& snapshot, Id<NucSide> id, Day day) {
    const auto side = snapshot.find(id);
    const auto layout = side ? snapshot.find(side->layout) : nullptr;
    const auto box = layout ? snapshot.find(layout->box) : nullptr;
    if (!box) return Error{"there is no such nuc"};
    const auto name = nucName(*box, *side);
    bool replaced = layout->from > day;
    for (const auto& other : snapshot.all<BoxLayout>())
        replaced =
            replaced || (other->box == box->id && other->from > layout->from && other->from <= day);
    if (replaced) return Error{name + ": is not laid out so on " + toText(day)};
    if (!yardOn(snapshot, box->id, day)) return Error{name + ": stands nowhere on " + toText(day)};
    for (const auto& stocking : snapshot.all<Stocking>().of(id.uuid))
        if (stocking->day == day)
            return Error{name + ": is stocked on " + toText(day) + " already"};
    return name;
}

}  // namespace

Result<ChangeSet> stockNucs(const Snapshot& snapshot, const std::vector<Id<NucSide>>& sides,
                            const StockingPlan& plan, const std::vector<Id<Stocking>>& fresh) {
    ChangeSet changes{Verb::AddRow, {}, plan.day, {}};
    for (std::size_t i = 0; i < sides.size(); ++i) {
        const auto name = stockable(snapshot, sides[i], plan.day);
        if (!name) return name.error();
        if (i < 3) changes.subject += (i > 0 ? ", " : "") + name.value();
        if (i == 3) changes.subject += " ...";
        changes.add(Stocking{fresh.at(i),
                             1,
                             sides[i],
                             plan.day,
                             plan.hour,
                             plan.beesMl,
                             plan.broodFrames,
                             plan.openBrood,
                             plan.donor,
                             {}});
    }
    return changes;
}

Result<ChangeSet> setFact(const Snapshot& snapshot, Fact fact, std::optional<double> value,
                          Id<FactOverride> fresh) {
    ChangeSet changes{Verb::SetFact, std::string(token(fact)), {}, {}};
    Facts bare(snapshot.facts().revision());
    if (value)
        if (auto set = bare.set(fact, *value); !set) return set.error();
    const bool isDefault = !value || *value == bare.entry(fact).value;
    Ptr<FactOverride> before;
    for (const auto& row : snapshot.all<FactOverride>())
        if (row->fact == token(fact)) before = row;
    if (isDefault) {
        if (before) changes.erase(before);
        return changes;
    }
    FactOverride row = before ? *before : FactOverride{fresh, 1, std::string(token(fact)), 0};
    row.valueMilli = static_cast<std::int32_t>(std::lround(*value * 1000));
    if (before)
        changes.edit(before, row);
    else
        changes.add(row);
    return changes;
}

}  // namespace tenthday
