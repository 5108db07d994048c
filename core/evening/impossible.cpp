// What cannot be true of an entry, and why.
#include <algorithm>
#include <array>

#include "calendar/plain_words.h"
#include "evening/counted_as.h"
#include "evening/evening_verbs.h"
#include "occupancy/winter.h"
#include "records/counted.h"

namespace tenthday {
namespace {

constexpr std::int32_t kMostCells = 9999;
/// The earliest first egg that was ever published, in age (S61: 4 to 22 d).
constexpr Days kYoungestLayer{4};

/// Stages that are counted, in the order cells go through them.
constexpr std::array kStages{OutcomeKind::Graft, OutcomeKind::TakeCount, OutcomeKind::Sealed,
                             OutcomeKind::Ripe};

/// The newest count of a stage: of the bar, or of the whole batch.
std::optional<std::int32_t> countOf(const Outlook& outlook, Id<Batch> batch, OutcomeKind kind,
                                    std::optional<std::int32_t> bar) {
    const auto outcomes = outlook.snapshot.all<Outcome>().of(batch.uuid);
    if (bar) {
        const auto own = newestCount(outcomes, kind, bar);
        return own ? std::optional(own->count->value) : std::nullopt;
    }
    const auto all = countedOf(outcomes, outlook.snapshot.all<BatchBar>().of(batch.uuid), kind);
    return all ? std::optional(all->cells) : std::nullopt;
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

/// Another batch's cell went in, or a queen of a season before stays there, and nothing was seen of
/// the end.
std::optional<Refusal> impossiblePlace(const EveningRow& row, const EveningInput& input) {
    for (const auto& round : row.side->rounds) {
        const bool other = round.batch != *row.task.batch && round.done;
        const bool open = round.seen != NucState::Caught && round.seen != NucState::NoQueen &&
                          round.seen != NucState::Spent;
        if (other && open && round.transferDay <= input.day)
            return Refusal{Impossible::NucHeld, 0, round.transferDay};
    }
    if (const auto* stays = winteredOn(*row.side, input.day))
        return Refusal{Impossible::QueenStays, 0, stays->from,
                       stays->queen ? stays->queen->label : std::string()};
    return std::nullopt;
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
        case Impossible::QueenStays:
            return "queen " + refusal.queen + " stays in the nuc since " + day +
                   ": note first where she is now";
    }
    return {};
}

}  // namespace tenthday
