#include <algorithm>
#include <set>

#include "drafting/batch_draft.h"
#include "records/edit_sequence.h"
#include "records/verbs.h"

namespace tenthday {
namespace {

Batch rowOf(const BatchDraft& draft) {
    return {draft.id,         1,
            draft.label,      draft.start,
            draft.day,        draft.hour,
            draft.larvaFromH, draft.larvaToH,
            draft.method,     draft.mating,
            draft.catchRule,  draft.note};
}

Error refusal(const BatchDraft& draft, const std::string& why) {
    return Error{"batch " + draft.label + ": " + why};
}

/// Adds a row, or edits the one there is.
template <class Row>
void put(ChangeSet& changes, const Ptr<Row>& before, Row row, const IdSource& newId) {
    if (before) {
        changes.edit(before, std::move(row));
        return;
    }
    row.id = {newId()};
    changes.add(std::move(row));
}

/// Bars, where they stand, and the cells of each yard. Bars keep their numbers: the first in the
/// draft is bar 1. A yard with no cells has no row.
class PartsWriter {
public:
    PartsWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId)
        : snapshot_(snapshot), draft_(draft), newId_(newId) {}

    ChangeSet run() {
        for (const auto& step : snapshot_.all<Step>().of(draft_.method.uuid))
            steps_.push_back(step->step);
        std::sort(steps_.begin(), steps_.end());
        bars();
        loads();
        shares();
        return std::move(changes_);
    }

private:
    void bars() {
        const auto old = snapshot_.all<BatchBar>().of(draft_.id.uuid);
        for (const auto& bar : old)
            if (bar->bar > static_cast<std::int32_t>(draft_.bars.size())) changes_.erase(bar);
        for (std::size_t i = 0; i < draft_.bars.size(); ++i) {
            const auto number = static_cast<std::int32_t>(i) + 1;
            put(changes_, find(old, [&](const auto& b) { return b.bar == number; }),
                BatchBar{{}, 1, draft_.id, number, draft_.bars[i].breeder, draft_.bars[i].cells},
                newId_);
        }
    }

    [[nodiscard]] std::optional<Id<Builder>> wanted(std::int32_t bar, std::int32_t step) const {
        const auto at = std::find(steps_.begin(), steps_.end(), step) - steps_.begin();
        if (bar < 1 || bar > static_cast<std::int32_t>(draft_.bars.size())) return std::nullopt;
        const auto& builders = draft_.bars[static_cast<std::size_t>(bar - 1)].steps;
        const auto place = static_cast<std::size_t>(at);
        return place < steps_.size() && place < builders.size() ? builders[place] : std::nullopt;
    }

    void loads() {
        const auto old = snapshot_.all<BatchLoad>().of(draft_.id.uuid);
        for (const auto& load : old)
            if (!wanted(load->bar, load->step)) changes_.erase(load);
        for (std::int32_t bar = 1; bar <= static_cast<std::int32_t>(draft_.bars.size()); ++bar)
            for (const auto step : steps_)
                if (const auto builder = wanted(bar, step))
                    put(changes_,
                        find(old, [&](const auto& l) { return l.bar == bar && l.step == step; }),
                        BatchLoad{{}, 1, draft_.id, bar, step, *builder}, newId_);
    }

    void shares() {
        const auto old = snapshot_.all<BatchShare>().of(draft_.id.uuid);
        const auto cellsFor = [&](Id<Yard> yard) {
            Cells cells{0};
            for (const auto& [to, count] : draft_.shares)
                if (to == yard) cells += count;
            return cells;
        };
        for (const auto& share : old)
            if (cellsFor(share->yard) == Cells{0}) changes_.erase(share);
        std::set<Id<Yard>> done;
        for (const auto& [yard, count] : draft_.shares) {
            if (cellsFor(yard) == Cells{0} || !done.insert(yard).second) continue;
            const auto to = yard;
            put(changes_, find(old, [&](const auto& s) { return s.yard == to; }),
                BatchShare{{}, 1, draft_.id, to, cellsFor(to)}, newId_);
        }
    }

    template <class Row, class Is>
    static Ptr<Row> find(std::span<const Ptr<Row>> rows, Is is) {
        const auto found =
            std::find_if(rows.begin(), rows.end(), [&](const auto& row) { return is(*row); });
        return found == rows.end() ? nullptr : *found;
    }

    const Snapshot& snapshot_;
    const BatchDraft& draft_;
    const IdSource& newId_;
    std::vector<std::int32_t> steps_;
    ChangeSet changes_;
};

/// Bees without a queen are made up; a queenright finisher and an incubator are not.
bool isMadeUp(const Snapshot& snapshot, Id<Builder> id) {
    const auto builder = snapshot.find(id);
    return builder &&
           (builder->kind == BuilderKind::Starter || builder->kind == BuilderKind::StarterFinisher);
}

MakeUp plannedMakeUp(const Snapshot& snapshot, const Batch& batch, Id<Builder> builder,
                     bool openBrood) {
    const auto graft = momentOf(graftDay(snapshot, batch), batch.hour);
    const auto moment = hoursAfter(graft, -snapshot.facts()[Fact::MakeUpBeforeH]);
    MakeUp row;
    row.builder = builder;
    row.day = dayOf(moment);
    if (batch.hour) row.hour = hourOf(moment);
    row.openBrood = openBrood;
    return row;
}

/// Make-ups as the draft plans them. One that was planned for a builder no longer used goes along
/// to the builder that came; what lies behind today stays as it was.
ChangeSet makeUpEdit(const Snapshot& snapshot, const BatchDraft& draft,
                     const std::vector<Ptr<MakeUp>>& before, const IdSource& newId) {
    ChangeSet changes;
    const auto batch = snapshot.find(draft.id);
    const bool openBrood = draft.makeUp == MakeUpPlan::WithOpenBrood;
    std::vector<Ptr<MakeUp>> spare;
    std::set<Id<Builder>> served;
    const auto builders = firstBuilders(snapshot, draft.id);
    for (const auto& makeUp : before) {
        const bool used =
            std::find(builders.begin(), builders.end(), makeUp->builder) != builders.end();
        if (used && draft.makeUp != MakeUpPlan::None) {
            MakeUp row = *makeUp;
            row.openBrood = openBrood;
            changes.edit(makeUp, row);
            served.insert(makeUp->builder);
        } else if (makeUp->day >= snapshot.today()) {
            spare.push_back(makeUp);
        }
    }
    for (const auto builder : builders) {
        if (draft.makeUp == MakeUpPlan::None || served.contains(builder) ||
            !isMadeUp(snapshot, builder))
            continue;
        if (spare.empty()) {
            put(changes, Ptr<MakeUp>(), plannedMakeUp(snapshot, *batch, builder, openBrood), newId);
            continue;
        }
        MakeUp row = *spare.back();
        row.builder = builder;
        row.openBrood = openBrood;
        changes.edit(spare.back(), row);
        spare.pop_back();
    }
    for (const auto& makeUp : spare) changes.erase(makeUp);
    return changes;
}

/// Counted started cells: one newest count per bar says what the draft says.
ChangeSet takeEdit(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId) {
    ChangeSet changes;
    const auto batch = snapshot.find(draft.id);
    const Day graft = graftDay(snapshot, *batch);
    for (std::size_t i = 0; i < draft.bars.size(); ++i) {
        const auto bar = static_cast<std::int32_t>(i) + 1;
        const auto& taken = draft.bars[i].taken;
        const auto before = takeCountOf(snapshot, draft.id, bar, draft.bars.size() == 1);
        if (before && !taken) changes.erase(before);
        if (!taken) continue;
        Outcome row = before ? *before : Outcome{};
        row.count = taken;
        if (!before) {
            row.batch = draft.id;
            row.bar = bar;
            row.kind = OutcomeKind::TakeCount;
            row.day = std::clamp(snapshot.today(), graft + Days{1}, graft + Days{3});
        }
        put(changes, before, row, newId);
    }
    return changes;
}

/// What a grafted batch no longer changes.
bool keepsWhatWasGrafted(const Batch& before, const BatchDraft& draft) {
    return before.start == draft.start && before.hour == draft.hour &&
           before.larvaFromH == draft.larvaFromH && before.larvaToH == draft.larvaToH &&
           before.method == draft.method;
}

Result<void> checkDraft(const Snapshot& snapshot, const BatchDraft& draft) {
    if (draft.bars.empty()) return refusal(draft, "one bar at least is needed");
    if (draft.larvaFromH.has_value() != draft.larvaToH.has_value())
        return refusal(draft, "the larvae need both ages, the youngest and the oldest, or none");
    if (!snapshot.find(draft.method)) return refusal(draft, "a method is needed");
    return {};
}

/// One batch of the sequence.
Result<void> write(EditSequence& edit, const BatchDraft& draft, const IdSource& newId) {
    const auto before = edit.snapshot().find(draft.id);
    const auto old = before ? std::optional(draftOf(edit.snapshot(), draft.id)) : std::nullopt;
    const bool grafted = before && isGrafted(edit.snapshot(), draft.id);
    if (grafted && !keepsWhatWasGrafted(*before, draft))
        return refusal(draft, "is grafted; its start, hour, larvae and method stay");
    if (before && before->day != draft.day)
        if (auto done = edit.add(moveBatch(edit.snapshot(), draft.id, draft.day)); !done)
            return done;

    ChangeSet row;
    Batch batch = rowOf(draft);
    if (grafted) batch.day = before->day;
    const auto moved = edit.snapshot().find(draft.id);
    if (moved)
        row.edit(moved, batch);
    else
        row.add(batch);
    if (auto done = edit.add(row); !done) return done;

    const auto makeUps = makeUpsFor(edit.snapshot(), *edit.snapshot().find(draft.id));
    const auto builders = firstBuilders(edit.snapshot(), draft.id);
    if (auto done = edit.add(PartsWriter(edit.snapshot(), draft, newId).run()); !done) return done;
    // A make-up the user has not touched stays as it is, whatever its kind.
    if (!old || old->makeUp != draft.makeUp || builders != firstBuilders(edit.snapshot(), draft.id))
        if (auto done = edit.add(makeUpEdit(edit.snapshot(), draft, makeUps, newId)); !done)
            return done;
    return edit.add(takeEdit(edit.snapshot(), draft, newId));
}

}  // namespace

Result<ChangeSet> changesOf(const Snapshot& snapshot, const BatchDraft& draft, const Repeat& repeat,
                            const IdSource& newId) {
    if (auto fine = checkDraft(snapshot, draft); !fine) return fine.error();
    if (repeat.more < 0 || repeat.more > 60)
        return refusal(draft, "0 to 60 more batches can follow");
    if (repeat.more > 0 && repeat.every < Days{1})
        return refusal(draft, "batches that follow come a day apart at least");
    EditSequence edit(snapshot);
    if (auto done = write(edit, draft, newId); !done) return done.error();
    auto next = draft;
    for (auto& bar : next.bars) bar.taken.reset();
    for (std::int32_t i = 0; i < repeat.more; ++i) {
        next.id = {newId()};
        next.label = nextLabel(edit.snapshot());
        next.day += repeat.every;
        if (auto done = write(edit, next, newId); !done) return done.error();
    }
    return snapshot.find(draft.id) ? edit.changes(Verb::EditBatch, draft.label, {})
                                   : edit.changes(Verb::PlanBatch, draft.label, draft.day);
}

Result<ChangeSet> deleteBatch(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    ChangeSet changes{Verb::DeleteBatch, batch->label, {}, {}};
    const auto eraseAll = [&](const auto& rows) {
        for (const auto& row : rows) changes.erase(row);
    };
    for (const auto& makeUp : makeUpsFor(snapshot, *batch))
        if (makeUp->day >= snapshot.today()) changes.erase(makeUp);
    eraseAll(snapshot.all<BatchLoad>().of(id.uuid));
    eraseAll(snapshot.all<BatchShare>().of(id.uuid));
    eraseAll(snapshot.all<Placement>().of(id.uuid));
    eraseAll(snapshot.all<Outcome>().of(id.uuid));
    eraseAll(snapshot.all<BatchBar>().of(id.uuid));
    for (const auto& tick : snapshot.all<TaskDone>())
        if (tick->subject == toText(id.uuid)) changes.erase(tick);
    changes.erase(batch);
    return changes;
}

}  // namespace tenthday
