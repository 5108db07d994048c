#include "occupancy/sides.h"

#include <algorithm>

#include "base/side_by_side.h"
#include "occupancy/caged.h"
#include "occupancy/winter.h"

namespace tenthday {
namespace {

std::optional<NucState> stateSeen(OutcomeKind kind) {
    switch (kind) {
        case OutcomeKind::Emergence:
            return NucState::Virgin;
        case OutcomeKind::FirstEggs:
        case OutcomeKind::Larvae:
            return NucState::Laying;
        case OutcomeKind::SealedBrood:
            return NucState::Laying;
        case OutcomeKind::JudgedGood:
            return NucState::JudgedGood;
        case OutcomeKind::NoQueen:
            return NucState::NoQueen;
        case OutcomeKind::DroneLayer:
            return NucState::DroneLayer;
        case OutcomeKind::Catch:
            return NucState::Caught;
        case OutcomeKind::Spent:
            return NucState::Spent;
        default:
            return std::nullopt;
    }
}

/// Eggs seen carry the catch: with sealed brood so many days later, or at once.
Day catchAfterEggs(const SideRound& round, Day eggs, const Facts& facts) {
    switch (round.timeline->hold.catchRule) {
        case CatchRule::SealedBrood:
            return eggs + days(facts, Fact::EggsToSealedD);
        case CatchRule::Eggs:
            return eggs;
        case CatchRule::Age:
            break;
    }
    return round.catchDay;
}

/// An outcome ends or explains the newest round that began before or on its day.
void see(SideOutlook& side, const Outcome& outcome, const Facts& facts) {
    const auto state = stateSeen(outcome.kind);
    if (!state && outcome.kind != OutcomeKind::NoneYet) return;
    SideRound* round = nullptr;
    for (auto& candidate : side.rounds)
        if (candidate.batch == outcome.batch && candidate.transferDay <= outcome.day)
            round = &candidate;
    if (round == nullptr || (round->seenDay && *round->seenDay > outcome.day)) return;
    if (!state) {  // nothing is known by it but when to look again
        if (round->isOpen())
            round->lookDay = std::max(round->lookDay, outcome.day + days(facts, Fact::LookAgainD));
        return;
    }
    // A virgin seen once others of her batch may lay is looked at again likewise.
    if (*state == NucState::Virgin && round->isOpen() &&
        outcome.day >=
            round->timeline->hold.lookDay + behindBatch(*round->timeline, round->transferDay))
        round->lookDay = std::max(round->lookDay, outcome.day + days(facts, Fact::LookAgainD));
    round->seen = state;
    round->seenDay = outcome.day;
    const bool ends =
        *state == NucState::NoQueen || *state == NucState::Caught || *state == NucState::Spent;
    if (ends) round->catchDay = outcome.day;
    if (outcome.kind == OutcomeKind::FirstEggs)
        round->catchDay = std::max(round->catchDay, catchAfterEggs(*round, outcome.day, facts));
    if (outcome.kind == OutcomeKind::Larvae)
        round->catchDay =
            std::max(round->catchDay,
                     catchAfterEggs(*round, outcome.day - days(facts, Fact::LarvaeSeenD), facts));
    if (ends || *state == NucState::Laying) round->lookDay = outcome.day;
    if (*state == NucState::DroneLayer || staysForWinter(outcome)) round->catchDay = kLastDay;
}

}  // namespace

double SideRound::layingShare() const {
    if (seen == NucState::Laying || seen == NucState::JudgedGood) return 1;
    return seen == NucState::Virgin ? timeline->hold.virginShare : timeline->hold.layingShare;
}

StateShares SideRound::sharesOn(Day day) const {
    return sharesOf(*this, day, behindBatch(*timeline, transferDay));
}

StateShares sharesOf(const SideRound& round, Day day, Days behind) {
    const auto seen = round.seen;
    const auto seenDay = round.seenDay;
    const auto& hold = round.timeline->hold;
    StateShares shares = hold.on(day - behind);
    if (!seen || !seenDay || day <= *seenDay) {
        // Nobody has looked though the day came: the failed ones still pass for due to fly.
        auto& none = shares[static_cast<std::size_t>(NucState::NoQueen)];
        if (day <= round.lookDay && none > 0) {
            shares[static_cast<std::size_t>(NucState::DueToFly)] += none;
            none = 0;
        }
        return shares;
    }
    if (*seen == NucState::Virgin) return shares;
    StateShares sure{};
    if (*seen == NucState::Laying) {
        // Seen laying: judged good as her brood gets sealed, by the plan's share of that.
        const float good = shares[static_cast<std::size_t>(NucState::JudgedGood)] /
                           static_cast<float>(hold.layingShare);
        sure[static_cast<std::size_t>(NucState::JudgedGood)] = good;
        sure[static_cast<std::size_t>(NucState::Laying)] = 1 - good;
    } else {
        sure[static_cast<std::size_t>(*seen)] = 1;
    }
    return sure;
}

namespace {

/// A batch's outcomes of single nucs in the order they happened; what ends a round comes last on
/// its day.
std::vector<const Outcome*> sideOutcomes(const Snapshot& snapshot, Id<Batch> batch) {
    std::vector<const Outcome*> outcomes;
    for (const auto& outcome : snapshot.all<Outcome>().of(batch.uuid))
        if (outcome->side) outcomes.push_back(outcome.get());
    std::stable_sort(outcomes.begin(), outcomes.end(), [](const auto* a, const auto* b) {
        return a->day != b->day ? a->day < b->day : a->kind < b->kind;
    });
    return outcomes;
}

bool isOutcomeOfRound(const Outcome& outcome) { return stateSeen(outcome.kind).has_value(); }

bool hasRound(const SideOutlook& side, Id<Batch> batch, Day by) {
    return std::any_of(side.rounds.begin(), side.rounds.end(), [&](const SideRound& round) {
        return round.batch == batch && round.transferDay <= by;
    });
}

/// Something was seen of a batch's cell in a nuc that no placement names: the cell went there.
void addSeenRound(SideOutlook& side, Id<Batch> batch, const BatchTimeline& timeline,
                  const Outcome& outcome, Day today) {
    auto round =
        plannedRound(batch, timeline, std::min(timeline.hold.transferDay, outcome.day), today);
    round.done = true;
    side.rounds.insert(std::upper_bound(side.rounds.begin(), side.rounds.end(), round,
                                        [](const auto& a, const auto& b) {
                                            return a.transferDay < b.transferDay;
                                        }),
                       round);
}

}  // namespace

SideRound plannedRound(Id<Batch> batch, const BatchTimeline& timeline, Day transfer, Day today) {
    SideRound round;
    round.batch = batch;
    round.timeline = &timeline;
    round.transferDay = transfer;
    const auto behind = behindBatch(timeline, transfer);
    round.lookDay = std::max({timeline.hold.lookDay + behind, transfer, today});
    round.catchDay = std::max({timeline.hold.catchDay + behind, transfer, today});
    return round;
}

namespace {

/// For all sides, in parts that are worth a thread's while.
template <class Each>
void eachSide(std::size_t sides, Each each) {
    constexpr std::size_t kAtOnce = 256;
    sideBySide((sides + kAtOnce - 1) / kAtOnce, [&](std::size_t part) {
        const auto end = std::min(sides, (part + 1) * kAtOnce);
        for (auto i = part * kAtOnce; i < end; ++i) each(i);
    });
}

/// The bare ones, to be filled and divided.
std::vector<SideOutlook> copied(const BareSides& bare) {
    std::vector<SideOutlook> sides(bare.sides().size());
    eachSide(sides.size(), [&](std::size_t i) {
        const auto& side = bare.sides()[i];
        sides[i].side = side.side;
        sides[i].box = side.box;
        sides[i].stands = side.stands;
        sides[i].stays = side.stays;
        sides[i].stockings = side.stockings;
    });
    return sides;
}

}  // namespace

std::vector<SideOutlook> storedSides(const Snapshot& snapshot, const Timelines& timelines,
                                     const BareSides& bare) {
    auto sides = copied(bare);
    for (const auto& [batch, timeline] : timelines)
        for (const auto& placement : snapshot.all<Placement>().of(batch.uuid)) {
            const auto at = placement->side ? bare.find(*placement->side) : std::nullopt;
            if (!at) continue;
            auto round = plannedRound(batch, *timeline, placement->day, snapshot.today());
            round.done = placement->done;
            round.named = true;
            sides[*at].rounds.push_back(round);
        }
    for (auto& side : sides) {
        if (side.rounds.size() < 2) continue;  // even one would cost an allocation
        std::stable_sort(side.rounds.begin(), side.rounds.end(), [](const auto& a, const auto& b) {
            return a.transferDay < b.transferDay;
        });
    }
    for (const auto& [batch, timeline] : timelines)
        for (const auto* outcome : sideOutcomes(snapshot, batch)) {
            const auto at = bare.find(*outcome->side);
            if (!at) continue;
            auto& side = sides[*at];
            if (isOutcomeOfRound(*outcome) && !hasRound(side, batch, outcome->day))
                addSeenRound(side, batch, *timeline, *outcome, snapshot.today());
            see(side, *outcome, snapshot.facts());
        }
    leaveForWinter(sides, snapshot);
    eachSide(sides.size(), [&](std::size_t i) {
        if (sides[i].rounds.empty() && sides[i].wintered.empty())
            divideAs(bare.sides()[i], sides[i]);
        else
            divide(sides[i], snapshot);
    });
    return sides;
}

std::optional<Id<Yard>> SideOutlook::yardOn(Day day) const {
    std::optional<Id<Yard>> yard;
    for (const auto& stay : stays)
        if (stay.from <= day) yard = stay.yard;
    return yard;
}

}  // namespace tenthday
