#include <algorithm>
#include <set>

#include "drafting/draft_writers.h"
#include "records/edit_sequence.h"
#include "records/task_marks.h"
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

/// What a grafted batch no longer changes.
bool keepsWhatWasGrafted(const Batch& before, const BatchDraft& draft) {
    const auto ages = [](const auto& of) {  // one age alone is an exact age
        return std::pair(of.larvaFromH ? of.larvaFromH : of.larvaToH,
                         of.larvaToH ? of.larvaToH : of.larvaFromH);
    };
    return before.start == draft.start && before.hour == draft.hour &&
           ages(before) == ages(draft) && before.method == draft.method;
}

Result<void> checkDraft(const Snapshot& snapshot, const BatchDraft& draft) {
    if (draft.bars.empty()) return refusal(draft, "one bar at least is needed");
    const auto before = snapshot.find(draft.id);
    const bool asBefore =
        before && before->larvaFromH == draft.larvaFromH && before->larvaToH == draft.larvaToH;
    if (!asBefore && draft.larvaFromH.has_value() != draft.larvaToH.has_value())
        return refusal(draft, "the larvae need both ages, the youngest and the oldest, or none");
    if (!snapshot.find(draft.method)) return refusal(draft, "a method is needed");
    return {};
}

/// The batch's own row, and what moves along with its graft.
Result<ChangeSet> rowEdit(const Snapshot& snapshot, const BatchDraft& draft) {
    ChangeSet changes;
    Batch row = rowOf(draft);
    const auto before = snapshot.find(draft.id);
    if (!before || before->day != draft.day)
        if (auto good = checkStart(snapshot, draft.label, draft.day); !good) return good.error();
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
        row.larvaFromH = before->larvaFromH;
        row.larvaToH = before->larvaToH;
    } else if (const Days by = graftDay(snapshot, row) - graftDay(snapshot, *before);
               by != Days{0}) {
        moveNucPlans(snapshot, draft.id, by, changes);
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
    MakeUpsUntil until;
    if (before) {
        until.all = makeUpsFor(edit.snapshot(), *before);
        for (const auto& makeUp : ownMakeUps(edit.snapshot(), *before))
            until.own.insert(makeUp->id);
        until.replanned = old->makeUp != draft.makeUp;
    }
    const auto builders = firstBuilders(edit.snapshot(), draft.id);
    if (auto done = edit.add(rowEdit(edit.snapshot(), draft)); !done) return done;
    if (auto done = edit.add(partsEdit(edit.snapshot(), draft, newId)); !done) return done;
    if (auto done = edit.add(stayEdit(edit.snapshot(), draft, old, newId)); !done) return done;
    // A make-up the user has not touched stays as it is, whatever its kind.
    if (!old || old->makeUp != draft.makeUp || old->start != draft.start ||
        graftMoved(edit.snapshot(), draft, before) ||
        builders != firstBuilders(edit.snapshot(), draft.id)) {
        for (auto& makeUp : until.all) makeUp = edit.snapshot().find(makeUp->id);
        if (auto done = edit.add(makeUpEdit(edit.snapshot(), draft, newId, until)); !done)
            return done;
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
    for (auto& stay : next.stays) stay.id = {};
    for (std::int32_t i = 0; i < repeat.more; ++i) {
        next.id = {newId()};
        next.label = nextLabel(edit.snapshot());
        next.day += repeat.every;
        if (auto done = write(edit, next, newId); !done) return done.error();
    }
    return snapshot.find(draft.id) ? edit.changes(Verb::EditBatch, draft.label, {})
                                   : edit.changes(Verb::PlanBatch, draft.label, draft.day);
}

Result<Snapshot> withDraft(const Snapshot& snapshot, const BatchDraft& draft,
                           const Repeat& repeat) {
    const IdSource passing = [next = std::uint64_t{0}]() mutable {
        return Uuid{~std::uint64_t{0}, ++next};
    };
    const auto changes = changesOf(snapshot, draft, repeat, passing);
    if (!changes) return changes.error();
    return applied(snapshot, changes.value());
}

Result<ChangeSet> deleteBatch(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    if (!batch) return Error{"batch: there is none with this id"};
    for (const auto& delivery : snapshot.all<Delivery>())
        if (delivery->fromBatch == id)
            return Error{"batch " + batch->label +
                         ": queens of it were delivered; it stays, as they came from it"};
    ChangeSet changes{Verb::DeleteBatch, batch->label, {}, {}};
    const auto eraseAll = [&](const auto& rows) {
        for (const auto& row : rows) changes.erase(row);
    };
    for (const auto& makeUp : ownMakeUps(snapshot, *batch))
        if (makeUp->day >= snapshot.today()) eraseMakeUp(snapshot, makeUp, changes);
    eraseAll(snapshot.all<BatchLoad>().of(id.uuid));
    eraseAll(snapshot.all<BatchShare>().of(id.uuid));
    eraseAll(snapshot.all<Placement>().of(id.uuid));
    eraseAll(snapshot.all<Outcome>().of(id.uuid));
    eraseAll(snapshot.all<BatchBar>().of(id.uuid));
    eraseAll(snapshot.all<MatingStay>().of(id.uuid));
    eraseAll(snapshot.all<LeftOut>().of(id.uuid));
    eraseAll(snapshot.all<CaughtQueen>().of(id.uuid));  // the queens themselves stay
    for (const auto& earmark : snapshot.all<Earmark>())
        if (earmark->batch == id) changes.erase(earmark);
    eraseTaskMarks(snapshot, id.uuid, changes);
    changes.erase(batch);
    return changes;
}

}  // namespace tenthday
