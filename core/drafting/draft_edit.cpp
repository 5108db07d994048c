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

/// Bars, where they stand, and the cells of each yard, of a draft whose bars have their numbers. A
/// bar that is gone takes its counts with it. A yard with no cells has no row.
class PartsWriter {
public:
    PartsWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId)
        : snapshot_(snapshot), draft_(draft), newId_(newId) {
        for (const auto& bar : draft.bars) numbers_.push_back(bar.number);
    }

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
            if (placeOf(bar->bar) == numbers_.size()) eraseBar(bar);
        for (std::size_t i = 0; i < numbers_.size(); ++i)
            put(changes_, find(old, [&](const auto& b) { return b.bar == numbers_[i]; }),
                BatchBar{
                    {}, 1, draft_.id, numbers_[i], draft_.bars[i].breeder, draft_.bars[i].cells},
                newId_);
    }

    /// Its counts go with it; what was seen in a nuc stays, without the bar.
    void eraseBar(const Ptr<BatchBar>& bar) {
        changes_.erase(bar);
        for (const auto& outcome : snapshot_.all<Outcome>().of(draft_.id.uuid)) {
            if (outcome->bar != bar->bar) continue;
            if (!outcome->side) {
                changes_.erase(outcome);
                continue;
            }
            Outcome kept = *outcome;
            kept.bar.reset();
            changes_.edit(outcome, kept);
        }
    }

    /// The place of a bar in the draft; their number where it is not there.
    [[nodiscard]] std::size_t placeOf(std::int32_t bar) const {
        const auto found = std::find(numbers_.begin(), numbers_.end(), bar);
        return static_cast<std::size_t>(found - numbers_.begin());
    }

    [[nodiscard]] std::optional<Id<Builder>> wanted(std::int32_t bar, std::int32_t step) const {
        const auto at = std::find(steps_.begin(), steps_.end(), step) - steps_.begin();
        if (placeOf(bar) == numbers_.size()) return std::nullopt;
        const auto& builders = draft_.bars[placeOf(bar)].steps;
        const auto place = static_cast<std::size_t>(at);
        return place < steps_.size() && place < builders.size() ? builders[place] : std::nullopt;
    }

    void loads() {
        const auto old = snapshot_.all<BatchLoad>().of(draft_.id.uuid);
        for (const auto& load : old)
            if (!wanted(load->bar, load->step)) changes_.erase(load);
        for (const auto bar : numbers_)
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
    std::vector<std::int32_t> numbers_;  ///< of the draft's bars
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
/// to the builder that came; what lies behind today, or serves another batch too, stays as it was.
class MakeUpWriter {
public:
    /// @param before  what was made up for the batch until now
    MakeUpWriter(const Snapshot& snapshot, const BatchDraft& draft, const IdSource& newId,
                 std::vector<Ptr<MakeUp>> before)
        : snapshot_(snapshot),
          batch_(*snapshot.find(draft.id)),
          planned_(hasGraft(draft.start) ? draft.makeUp : MakeUpPlan::None),
          newId_(newId),
          before_(std::move(before)),
          builders_(firstBuilders(snapshot, draft.id)) {}

    ChangeSet run() {
        if (planned_ != MakeUpPlan::None)
            for (const auto& makeUp : makeUpsFor(snapshot_, batch_))
                served_.insert(makeUp->builder);
        for (const auto& makeUp : before_) keep(makeUp);
        for (const auto builder : builders_)
            if (planned_ != MakeUpPlan::None && !served_.contains(builder) &&
                isMadeUp(snapshot_, builder))
                provide(builder);
        for (const auto& makeUp : spare_) changes_.erase(makeUp);
        return std::move(changes_);
    }

private:
    [[nodiscard]] bool openBrood() const { return planned_ == MakeUpPlan::WithOpenBrood; }

    [[nodiscard]] bool servesAnother(const MakeUp& makeUp) const {
        const auto served = batchesServed(snapshot_, makeUp);
        return std::any_of(served.begin(), served.end(),
                           [&](const auto& batch) { return batch->id != batch_.id; });
    }

    void keep(const Ptr<MakeUp>& makeUp) {
        const bool used =
            std::find(builders_.begin(), builders_.end(), makeUp->builder) != builders_.end();
        const bool fits = isMadeUpFor(makeUp->day, graftDay(snapshot_, batch_));
        if (used && fits && planned_ != MakeUpPlan::None) {
            MakeUp row = *makeUp;
            row.openBrood = openBrood();
            changes_.edit(makeUp, row);
            served_.insert(makeUp->builder);
        } else if (makeUp->day >= snapshot_.today() && !servesAnother(*makeUp)) {
            spare_.push_back(makeUp);
        }
    }

    void provide(Id<Builder> builder) {
        const auto planned = plannedMakeUp(snapshot_, batch_, builder, openBrood());
        if (spare_.empty()) {
            put(changes_, Ptr<MakeUp>(), planned, newId_);
            return;
        }
        MakeUp row = *spare_.back();
        row.builder = builder;
        row.openBrood = openBrood();
        if (!isMadeUpFor(row.day, graftDay(snapshot_, batch_)))
            row.day = planned.day, row.hour = planned.hour;
        changes_.edit(spare_.back(), row);
        spare_.pop_back();
    }

    const Snapshot& snapshot_;
    const Batch& batch_;
    MakeUpPlan planned_;
    const IdSource& newId_;
    std::vector<Ptr<MakeUp>> before_;
    std::vector<Id<Builder>> builders_;
    std::vector<Ptr<MakeUp>> spare_;  ///< planned for this batch alone, and not where it is now
    std::set<Id<Builder>> served_;
    ChangeSet changes_;
};

/// Counted started cells: the newest count of each bar says what the draft says. Counts by bar
/// replace one of the whole batch, which would stand above them.
Result<ChangeSet> takeEdit(const Snapshot& snapshot, const BatchDraft& draft,
                           const IdSource& newId) {
    ChangeSet changes;
    const auto batch = snapshot.find(draft.id);
    const Day graft = graftDay(snapshot, *batch);
    const bool alone = draft.bars.size() == 1;
    for (const auto& bar : draft.bars) {
        const auto& taken = bar.taken;
        const auto before = takeCountOf(snapshot, draft.id, bar.number, alone);
        if (before && !taken) changes.erase(before);
        if (!taken || (before && before->count == taken)) continue;
        Outcome row = before ? *before : Outcome{};
        row.count = taken;
        if (!before) {
            if (snapshot.today() <= graft)
                return refusal(draft, "the take is counted from the day after the graft on");
            row.batch = draft.id;
            row.bar = bar.number;
            row.kind = OutcomeKind::TakeCount;
            row.day = std::min(snapshot.today(), graft + Days{3});
        }
        put(changes, before, row, newId);
    }
    if (!alone && !changes.isEmpty())
        for (const auto& outcome : snapshot.all<Outcome>().of(draft.id.uuid))
            if (outcome->kind == OutcomeKind::TakeCount && !outcome->bar && !outcome->side)
                changes.erase(outcome);
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

/// The batch's own row, and what moves along with its graft.
Result<ChangeSet> rowEdit(const Snapshot& snapshot, const BatchDraft& draft) {
    ChangeSet changes;
    Batch row = rowOf(draft);
    const auto before = snapshot.find(draft.id);
    if (!before) {
        changes.add(row);
        return changes;
    }
    if (isGrafted(snapshot, draft.id)) {
        if (!keepsWhatWasGrafted(*before, draft))
            return refusal(draft, "is grafted; its start, hour, larvae and method stay");
        if (before->day != draft.day) {
            auto moved = moveBatch(snapshot, draft.id, draft.day);
            if (!moved) return moved;
            changes = std::move(moved).value();
        }
        row.day = before->day;
    } else if (const Days by = graftDay(snapshot, row) - graftDay(snapshot, *before);
               by != Days{0}) {
        movePlacements(snapshot, draft.id, by, changes);
        if (hasGraft(draft.start)) moveMakeUps(snapshot, *before, by, changes);
    }
    changes.edit(before, row);
    return changes;
}

bool graftMoved(const Snapshot& snapshot, const BatchDraft& draft, const Ptr<Batch>& before) {
    return graftDay(snapshot, *before) != graftDay(snapshot, *snapshot.find(draft.id));
}

/// The same draft, each bar with the number it has or gets.
BatchDraft numbered(const Snapshot& snapshot, BatchDraft draft) {
    const auto numbers = barNumbers(snapshot, draft);
    for (std::size_t i = 0; i < numbers.size(); ++i) draft.bars[i].number = numbers[i];
    return draft;
}

/// One batch of the sequence.
Result<void> write(EditSequence& edit, const BatchDraft& wished, const IdSource& newId) {
    const auto draft = numbered(edit.snapshot(), wished);
    const auto before = edit.snapshot().find(draft.id);
    const auto old = before ? std::optional(draftOf(edit.snapshot(), draft.id)) : std::nullopt;
    auto makeUps = before ? makeUpsFor(edit.snapshot(), *before) : std::vector<Ptr<MakeUp>>{};
    const auto builders = firstBuilders(edit.snapshot(), draft.id);
    if (auto done = edit.add(rowEdit(edit.snapshot(), draft)); !done) return done;
    if (auto done = edit.add(PartsWriter(edit.snapshot(), draft, newId).run()); !done) return done;
    // A make-up the user has not touched stays as it is, whatever its kind.
    if (!old || old->makeUp != draft.makeUp || old->start != draft.start ||
        graftMoved(edit.snapshot(), draft, before) ||
        builders != firstBuilders(edit.snapshot(), draft.id)) {
        for (auto& makeUp : makeUps) makeUp = edit.snapshot().find(makeUp->id);
        MakeUpWriter writer(edit.snapshot(), draft, newId, std::move(makeUps));
        if (auto done = edit.add(writer.run()); !done) return done;
    }
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
    for (auto& bar : next.bars) bar.taken.reset(), bar.number = 0;
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
    for (const auto& makeUp : ownMakeUps(snapshot, *batch))
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
