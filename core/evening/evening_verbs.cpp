#include "evening/evening_verbs.h"

#include <algorithm>
#include <array>

#include "calendar/plain_words.h"
#include "occupancy/caged.h"
#include "occupancy/winter.h"
#include "records/queen_verbs.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostCells = 9999;
/// The earliest first egg that was ever published, in age (S61: 4 to 22 d).
constexpr Days kYoungestLayer{4};

/// Stages that are counted, in the order cells go through them.
constexpr std::array kStages{OutcomeKind::Graft, OutcomeKind::TakeCount, OutcomeKind::Sealed,
                             OutcomeKind::Ripe};

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

OutcomeKind countedAs(const Task& task) {
    return task.key.rule == TaskRule::Graft       ? OutcomeKind::Graft
           : task.key.rule == TaskRule::TakeCount ? OutcomeKind::TakeCount
                                                  : OutcomeKind::Ripe;
}

/// The newest count of a stage: of the bar, or of the whole batch; for the whole also the sum of
/// its bars where all are counted.
std::optional<std::int32_t> countOf(const Outlook& outlook, Id<Batch> batch, OutcomeKind kind,
                                    std::optional<std::int32_t> bar) {
    const auto newest = [&](std::optional<std::int32_t> of) {
        Ptr<Outcome> found;
        for (const auto& row : outlook.snapshot.all<Outcome>().of(batch.uuid))
            if (row->kind == kind && !row->side && row->bar == of && row->count &&
                (!found || row->day >= found->day))
                found = row;
        return found ? std::optional(found->count->value) : std::nullopt;
    };
    if (const auto own = newest(bar); own || bar) return own;
    const auto* known = outlook.find(batch);
    if (known == nullptr || known->bars.empty()) return std::nullopt;
    std::int32_t sum = 0;
    for (const auto& one : known->bars) {
        const auto count = newest(one->bar);
        if (!count) return std::nullopt;
        sum += *count;
    }
    return sum;
}

std::optional<Refusal> impossibleCount(const Outlook& outlook, const EveningRow& row,
                                       const EveningInput& input) {
    const std::int32_t count = input.count.value_or(-1);
    if (count < 0 || count > kMostCells) return Refusal{Impossible::OutOfRange, kMostCells, {}};
    const auto batch = *row.task.batch;
    const auto kind = countedAs(row.task);
    const auto* known = outlook.find(batch);
    if (known != nullptr && known->timeline.grafted && kind != OutcomeKind::Graft &&
        input.day < dayOf(known->timeline.graft))
        return Refusal{Impossible::BeforeGraft, 0, dayOf(known->timeline.graft)};
    const auto at = std::find(kStages.begin(), kStages.end(), kind);
    for (auto before = kStages.begin(); before != at; ++before)
        if (const auto limit = countOf(outlook, batch, *before, row.bar); limit && count > *limit)
            return Refusal{Impossible::MoreThanBefore, *limit, {}};
    for (auto after = at + 1; after != kStages.end(); ++after)
        if (const auto limit = countOf(outlook, batch, *after, row.bar); limit && count < *limit)
            return Refusal{Impossible::FewerThanAfter, *limit, {}};
    return std::nullopt;
}

/// The cell's way into the nuc, by the newest round of the batch there.
const SideRound* roundOf(const EveningRow& row) {
    const SideRound* found = nullptr;
    for (const auto& round : row.side->rounds)
        if (round.batch == *row.task.batch) found = &round;
    return found;
}

std::optional<Refusal> impossibleQueen(const Outlook& outlook, const EveningRow& row,
                                       const EveningInput& input) {
    const auto* round = roundOf(row);
    if (round != nullptr && input.day < round->transferDay && (round->done || round->named))
        return Refusal{Impossible::BeforePlaced, 0, round->transferDay};
    const auto* batch = outlook.find(*row.task.batch);
    const auto* out = batch ? batch->timeline.find(Event::Emergence) : nullptr;
    const bool queen =
        row.entry == EveningEntry::Caught ||
        (input.look && *input.look != NucLook::NoneYet && *input.look != NucLook::Gone);
    if (out == nullptr || !queen) return std::nullopt;
    // A day before nine in ten are out, one may be: the early queen of a warm spell (S11).
    const auto* early = batch->timeline.find(Event::FirstOut);
    const Moment soonest = early ? std::min(early->earliest, out->earliest) : out->earliest;
    const Day first = dayOf(soonest) - Days{1};
    if (input.day < first) return Refusal{Impossible::BeforeEmergence, 0, first};
    const bool laid = input.look && *input.look < NucLook::VirginSeen;
    const Day flown = first + kYoungestLayer;
    if (laid && input.day < flown) return Refusal{Impossible::TooYoung, 0, flown};
    return std::nullopt;
}

/// Another batch's cell went in, and nothing was seen of its end.
std::optional<Refusal> impossiblePlace(const EveningRow& row, const EveningInput& input) {
    for (const auto& round : row.side->rounds) {
        const bool other = round.batch != *row.task.batch && round.done;
        const bool open = round.seen != NucState::Caught && round.seen != NucState::NoQueen &&
                          round.seen != NucState::Spent;
        if (other && open && round.transferDay <= input.day)
            return Refusal{Impossible::NucHeld, 0, round.transferDay};
    }
    return std::nullopt;
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

void keepPlacement(const EveningRow& row, const EveningInput& input, const IdSource& newId,
                   ChangeSet& changes) {
    Placement placement;
    if (row.placed) placement = *row.placed;
    placement.batch = *row.task.batch;
    placement.side = row.side->side->id;
    placement.target = CellTarget::Nuc;
    placement.day = input.day;
    placement.hour = input.hour;
    placement.done = true;
    if (row.placed) return changes.edit(row.placed, std::move(placement));
    placement.id = Id<Placement>{newId()};
    changes.add(std::move(placement));
}

}  // namespace

std::optional<Refusal> whyImpossible(const Outlook& outlook, const EveningRow& row,
                                     const EveningInput& input) {
    if (input.day > outlook.snapshot.today())
        return Refusal{Impossible::AfterToday, 0, outlook.snapshot.today()};
    switch (row.entry) {
        case EveningEntry::Count:
            return impossibleCount(outlook, row, input);
        case EveningEntry::Look:
        case EveningEntry::Caught:
            return impossibleQueen(outlook, row, input);
        case EveningEntry::Placed:
            return impossiblePlace(row, input);
        case EveningEntry::None:
        case EveningEntry::Tick:
            break;
    }
    return std::nullopt;
}

std::string englishText(const Refusal& refusal) {
    const auto count = std::to_string(refusal.count);
    const auto day = plainDay(refusal.day);
    switch (refusal.why) {
        case Impossible::AfterToday:
            return "that day is still to come";
        case Impossible::OutOfRange:
            return "a count from 0 to " + count + " is needed";
        case Impossible::BeforeGraft:
            return "that is before the graft on " + day;
        case Impossible::MoreThanBefore:
            return "there were only " + count + " before";
        case Impossible::FewerThanAfter:
            return count + " were counted later";
        case Impossible::BeforePlaced:
            return "that is before the cell went in on " + day;
        case Impossible::BeforeEmergence:
            return "no queen of this batch can be out before " + day;
        case Impossible::TooYoung:
            return "no queen of this batch can have flown before " + day;
        case Impossible::NucHeld:
            return "the nuc holds another batch's cell or queen since " + day;
    }
    return {};
}

namespace {

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

/// A catch, or that she stays. A catch that is entered anew brings her number; one that is put
/// right keeps it.
Result<void> keepCatch(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                       QueenNumbers* numbers, const IdSource& newId, ChangeSet& changes) {
    auto outcome =
        outcomeFor(row, input, input.stays ? OutcomeKind::JudgedGood : OutcomeKind::Catch);
    if (input.stays) outcome.note = std::string(kWinterNote);
    const bool wasCaught = row.seen && row.seen->kind == OutcomeKind::Catch;
    const bool moved = wasCaught && (input.stays || row.seen->day != input.day);
    if (moved && row.queen)
        if (const auto gone = eraseCaughtBy(outlook.snapshot, *row.seen, changes); !gone)
            return gone;
    keepOutcome(row, std::move(outcome), newId, changes);
    if (input.stays || (wasCaught && !moved) || numbers == nullptr) return {};
    const CatchMade made{*row.task.batch, row.side->side->id, input.day,
                         yearOf(outlook, *row.task.batch, input.day)};
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
            keepPlacement(row, input, newId, changes);
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
    if (!input.queenNumbers.empty()) {
        auto pattern = QueenPattern::of(input.queenNumbers);
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
