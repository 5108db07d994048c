#include "evening/evening_verbs.h"

#include "evening/counted_as.h"
#include "occupancy/caged.h"
#include "occupancy/winter.h"
#include "records/queen_verbs.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

/// Of queens that stay for the winter, where the user gives no numbers.
const std::string kWinterNumbers = "{batch}-{n}";

OutcomeKind outcomeOf(NucLook look) {
    switch (look) {
        case NucLook::Eggs:
            return OutcomeKind::FirstEggs;
        case NucLook::Larvae:
            return OutcomeKind::Larvae;
        case NucLook::SealedBrood:
            return OutcomeKind::SealedBrood;
        case NucLook::VirginSeen:
            return OutcomeKind::Emergence;
        case NucLook::NoneYet:
            return OutcomeKind::NoneYet;
        case NucLook::Gone:
            break;
    }
    return OutcomeKind::NoQueen;
}

Outcome outcomeFor(const EveningRow& row, const EveningInput& input, OutcomeKind kind) {
    Outcome outcome;
    outcome.batch = *row.task.batch;
    outcome.bar = row.bar;
    if (row.side != nullptr) outcome.side = row.side->side->id;
    outcome.kind = kind;
    outcome.day = input.day;
    outcome.hour = input.hour;
    if (row.entry == EveningEntry::Count) outcome.count = Cells{input.count.value_or(0)};
    outcome.note = input.note;
    return outcome;
}

/// Her birth is when her batch is likely out.
std::int32_t yearOf(const Outlook& outlook, Id<Batch> id, Day caught) {
    const auto* batch = outlook.find(id);
    const auto* out = batch ? batch->timeline.find(Event::Emergence) : nullptr;
    const Day born = out ? dayOf(out->likely) : caught;
    return static_cast<int>(date::year_month_day(born).year());
}

/// Of one day there is one look, one catch, one count; an earlier look stays as it was seen.
void keepOutcome(const EveningRow& row, Outcome outcome, const IdSource& newId,
                 ChangeSet& changes) {
    if (row.seen) return changes.edit(row.seen, std::move(outcome));
    outcome.id = Id<Outcome>{newId()};
    changes.add(std::move(outcome));
}

void keepPlacement(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                   const IdSource& newId, ChangeSet& changes) {
    Placement placement;
    if (row.placed) placement = *row.placed;
    placement.batch = *row.task.batch;
    placement.side = row.side->side->id;
    placement.target = CellTarget::Nuc;
    placement.day = input.day;
    placement.hour = input.hour;
    placement.done = true;
    // A plan that comes true only when its cell is a virgin leaves its row: in that row she would
    // pass for one that came out of a cage.
    const auto* batch = outlook.find(placement.batch);
    const bool late =
        row.placed && !row.placed->done && batch && isVirginPlacement(batch->timeline, placement);
    if (late) changes.erase(row.placed);
    if (row.placed && !late) return changes.edit(row.placed, std::move(placement));
    placement.version = 1;
    placement.id = Id<Placement>{newId()};
    changes.add(std::move(placement));
}

/// What went in is taken out again, and is what it was before.
void unplace(const Outlook& outlook, const EveningRow& row, ChangeSet& changes) {
    // Never changed since it came, it came as done: nothing was planned for the nuc by name.
    if (row.placed->version == 1) return changes.erase(row.placed);
    Placement before = *row.placed;
    const auto* batch = outlook.find(*row.task.batch);
    if (batch && isVirginPlacement(batch->timeline, *row.placed)) {
        before.target = CellTarget::Caged;
        before.side.reset();
        before.day = batch->timeline.hold.transferDay;
    } else {
        before.done = false;
    }
    changes.edit(row.placed, std::move(before));
}

/// A catch, or that she stays. Entered anew it brings her number; put right it keeps it. A queen
/// that stays always gets one: next season her batch is not read any more.
Result<void> keepCatch(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                       QueenNumbers* numbers, const IdSource& newId, ChangeSet& changes) {
    auto outcome =
        outcomeFor(row, input, input.stays ? OutcomeKind::JudgedGood : OutcomeKind::Catch);
    if (input.stays) outcome.note = std::string(kWinterNote);
    const bool isSame = row.seen && row.stays() == input.stays && row.seen->day == input.day;
    if (row.seen && row.queen && !isSame)
        if (const auto gone = eraseCaughtBy(outlook.snapshot, *row.seen, changes); !gone)
            return gone;
    keepOutcome(row, std::move(outcome), newId, changes);
    if (numbers == nullptr || (isSame && (row.queen || !input.stays))) return {};
    const CatchMade made{*row.task.batch, row.side->side->id, input.day,
                         yearOf(outlook, *row.task.batch, input.day),
                         input.stays ? QueenPlace::Nuc : QueenPlace::Bank};
    addCaughtQueen(outlook.snapshot, made, *numbers, newId, changes);
    return {};
}

Result<ChangeSet> enterOne(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                           QueenNumbers* numbers, const IdSource& newId) {
    if (const auto refusal = whyImpossible(outlook, row, input))
        return Error{row.task.subjectLabel + ": " + englishText(*refusal)};
    if (row.entry == EveningEntry::Tick)
        return tick(outlook.snapshot, row.task, input.day, Id<TaskDone>{newId()});
    ChangeSet changes{Verb::RecordOutcome, row.task.subjectLabel, input.day, {}};
    switch (row.entry) {
        case EveningEntry::Count:
            keepOutcome(row, outcomeFor(row, input, countedAs(row.task)), newId, changes);
            break;
        case EveningEntry::Look:
            if (input.look)
                keepOutcome(row, outcomeFor(row, input, outcomeOf(*input.look)), newId, changes);
            break;
        case EveningEntry::Caught:
            if (const auto kept = keepCatch(outlook, row, input, numbers, newId, changes); !kept)
                return kept.error();
            break;
        case EveningEntry::Placed:
            keepPlacement(outlook, row, input, newId, changes);
            break;
        case EveningEntry::None:
        case EveningEntry::Tick:
            break;
    }
    return changes;
}

}  // namespace

Result<ChangeSet> enter(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                        const IdSource& newId) {
    return enterAll(outlook, {&row}, input, newId);
}

Result<ChangeSet> enterAll(const Outlook& outlook, const std::vector<const EveningRow*>& rows,
                           const EveningInput& input, const IdSource& newId) {
    std::optional<QueenNumbers> numbers;
    if (!input.queenNumbers.empty() || input.stays) {
        auto pattern =
            QueenPattern::of(input.queenNumbers.empty() ? kWinterNumbers : input.queenNumbers);
        if (!pattern) return Error{"queen numbers: " + pattern.error().text};
        numbers.emplace(outlook.snapshot, std::move(pattern).value());
    }
    ChangeSet all{Verb::RecordOutcome, {}, input.day, {}};
    for (const auto* row : rows) {
        auto one = enterOne(outlook, *row, input, numbers ? &*numbers : nullptr, newId);
        if (!one) return one.error();
        if (rows.size() == 1) return one;
        if (all.subject.empty()) all.verb = one.value().verb, all.subject = one.value().subject;
        for (auto& change : one.value().rows) all.rows.push_back(std::move(change));
    }
    return all;
}

EveningInput inputOf(const EveningRow& row) {
    EveningInput input;
    if (row.entry == EveningEntry::Placed && row.placed) {
        input.day = row.placed->day;
        input.hour = row.placed->hour;
    } else if (row.seen) {
        input.day = row.seen->day;
        input.hour = row.seen->hour;
        if (row.seen->count) input.count = row.seen->count->value;
        input.note = row.seen->note;
        input.look = row.look();
        input.stays = row.stays();
        if (input.stays) input.note.clear();
    } else if (row.done) {
        input.day = *row.done;
    }
    return input;
}

Result<ChangeSet> takeBack(const Outlook& outlook, const EveningRow& row) {
    if (row.entry == EveningEntry::Tick) return tick(outlook.snapshot, row.task, {}, {});
    ChangeSet changes{Verb::RecordOutcome, row.task.subjectLabel, {}, {}};
    if (row.seen) {
        if (const auto gone = eraseCaughtBy(outlook.snapshot, *row.seen, changes); !gone)
            return gone.error();
        changes.erase(row.seen);
    }
    if (row.entry == EveningEntry::Placed && row.placed && row.placed->done)
        unplace(outlook, row, changes);
    return changes;
}

}  // namespace tenthday
