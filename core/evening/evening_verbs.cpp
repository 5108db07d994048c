#include "evening/evening_verbs.h"

#include <algorithm>
#include <array>

#include "calendar/plain_words.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostCells = 9999;

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
    const Day first = dayOf(out->earliest);
    if (input.day < first) return Refusal{Impossible::BeforeEmergence, 0, first};
    const bool laid = input.look && *input.look < NucLook::VirginSeen;
    const Day flown = first + Days{static_cast<int>(outlook.snapshot.facts()[Fact::FirstFlightD])};
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

/// Of one day there is one look, one catch, one count; an earlier look stays as it was seen.
void keepOutcome(const EveningRow& row, Outcome outcome, const IdSource& newId,
                 ChangeSet& changes) {
    const bool replaces =
        row.seen && (row.entry != EveningEntry::Look || row.seen->day == outcome.day);
    if (replaces) return changes.edit(row.seen, std::move(outcome));
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

Result<ChangeSet> enter(const Outlook& outlook, const EveningRow& row, const EveningInput& input,
                        const IdSource& newId) {
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
            keepOutcome(row, outcomeFor(row, input, OutcomeKind::Catch), newId, changes);
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

Result<ChangeSet> enterAll(const Outlook& outlook, const std::vector<const EveningRow*>& rows,
                           const EveningInput& input, const IdSource& newId) {
    ChangeSet all{Verb::RecordOutcome, {}, input.day, {}};
    for (const auto* row : rows) {
        auto one = enter(outlook, *row, input, newId);
        if (!one) return one.error();
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
    } else if (row.done) {
        input.day = *row.done;
    }
    return input;
}

ChangeSet takeBack(const Outlook& outlook, const EveningRow& row) {
    if (row.entry == EveningEntry::Tick) return tick(outlook.snapshot, row.task, {}, {});
    ChangeSet changes{Verb::RecordOutcome, row.task.subjectLabel, {}, {}};
    if (row.seen) changes.erase(row.seen);
    if (row.entry == EveningEntry::Placed && row.placed && row.placed->done) {
        Placement planned = *row.placed;
        planned.done = false;
        changes.edit(row.placed, std::move(planned));
    }
    return changes;
}

}  // namespace tenthday
