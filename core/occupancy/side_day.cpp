#include <algorithm>

#include "occupancy/sides.h"
#include "occupancy/winter.h"

namespace tenthday {
namespace {

using Kind = SideSegment::Kind;

std::size_t indexOf(NucState state) { return static_cast<std::size_t>(state); }

NotReady whyHeld(NucState state, const SideRound& round, Day day) {
    switch (state) {
        case NucState::Cell:
            return NotReady::HoldsCell;
        case NucState::Virgin:
            return NotReady::HoldsVirgin;
        case NucState::DueToFly:
            return NotReady::DueToFly;
        case NucState::NoQueen:
            return NotReady::AwaitingCatch;  // to be looked at
        default:
            return day >= round.timeline->hold.catchDay && !staysForWinter(round)
                       ? NotReady::AwaitingCatch
                       : NotReady::Laying;
    }
}

void held(const SideOutlook& side, const SideSegment& segment, Day day, SideDay& result) {
    const auto& round = side.rounds[static_cast<std::size_t>(segment.round)];
    result.round = &round;
    result.shares = round.sharesOn(day);
    const auto most = std::max_element(result.shares.begin(), result.shares.end());
    result.state = static_cast<NucState>(most - result.shares.begin());
    result.chance = static_cast<double>(*most);
    result.reason = whyHeld(result.state, round, day);
    if (round.catchDay < kLastDay) result.readyFrom = round.catchDay + Days{1};
    // By then the failed ones are known: free for a cell, if looked at.
    if (day > round.lookDay && round.isOpen()) result.likely = 1 - round.layingShare();
}

void freeOfQueen(const SideOutlook& side, const SideSegment& segment, Day day, SideDay& result) {
    result.state = NucState::Ready;
    if (segment.wintered >= 0) {
        result.wintered = &side.wintered[static_cast<std::size_t>(segment.wintered)];
        result.state = result.wintered->lost ? NucState::NoQueen : NucState::Caught;
    } else if (segment.kind == Kind::Freed) {
        const auto& round = side.rounds[static_cast<std::size_t>(segment.round)];
        result.round = &round;
        result.state = round.seen == NucState::NoQueen ? NucState::NoQueen : NucState::Caught;
        // Only planned: she is caught if she was there to catch; the likelier of both is told.
        if (!segment.certain) {
            const double caught = round.layingShare();
            if (caught < 0.5) result.state = NucState::NoQueen;
            result.chance = std::max(caught, 1 - caught);
        }
    }
    result.readyFrom = segment.readyFrom;
    result.needsBrood = day >= segment.needsBroodFrom;
    const bool free = day >= segment.readyFrom && !result.needsBrood;
    if (result.needsBrood)
        result.reason = NotReady::NeedsBrood;
    else if (!free)
        result.reason = NotReady::QueenlessTooShort;
    else if (segment.certain)
        result.ready = true;
    else
        result.likely = 1, result.reason = NotReady::AwaitingCatch;
}

/// A laying queen of a season before: not ready until she is caught, moved or lost.
void wintered(const SideOutlook& side, const SideSegment& segment, SideDay& result) {
    result.wintered = &side.wintered[static_cast<std::size_t>(segment.wintered)];
    result.state = NucState::JudgedGood;
    result.reason = NotReady::Laying;
    if (result.wintered->last < kLastDay) result.readyFrom = result.wintered->last + Days{1};
}

}  // namespace

const SideSegment* segmentOn(const SideOutlook& side, Day day) {
    const auto& segments = side.segments;
    auto at = std::find_if(segments.begin(), segments.end(),
                           [&](const auto& s) { return s.days.contains(day); });
    if (at == segments.end()) return nullptr;
    // A cell only planned for this day has not come yet at the start of work.
    if (at->kind == Kind::Held && at->days.first == day && at != segments.begin() &&
        !side.rounds[static_cast<std::size_t>(at->round)].done)
        --at;
    return &*at;
}

SideDay sideOn(const SideOutlook& side, Day day, Day today) {
    SideDay result;
    result.state = NucState::NotStocked;
    result.reason = NotReady::NotStocked;
    if (!side.yardOn(day) || !side.stands.contains(day)) {
        result.reason = side.stands.contains(day) ? NotReady::Retired : NotReady::NotStocked;
        if (day > side.stands.last) result.reason = NotReady::Retired;
        result.shares[indexOf(result.state)] = 1;
        return result;
    }
    const auto* at = segmentOn(side, day);
    if (at == nullptr) return result.shares[indexOf(result.state)] = 1, result;
    result.since = at->days.first;
    switch (at->kind) {
        case Kind::NotStocked:
            result.canStock = day > today && day > side.stands.first && side.yardOn(day - Days{1});
            if (const auto* next = at + 1; at != &side.segments.back() && next->kind == Kind::Empty)
                result.readyFrom = next->readyFrom;
            break;
        case Kind::Spent:
            result.state = NucState::Spent;
            result.reason = NotReady::Retired;
            break;
        case Kind::Held:
            held(side, *at, day, result);
            return result;
        case Kind::Wintered:
            wintered(side, *at, result);
            break;
        case Kind::Empty:
        case Kind::Freed:
            result.reason = NotReady::None;
            freeOfQueen(side, *at, day, result);
            break;
    }
    result.shares[indexOf(result.state)] = static_cast<float>(result.chance);
    if (result.chance < 1) {
        const auto other = result.state == NucState::NoQueen ? NucState::Caught : NucState::NoQueen;
        result.shares[indexOf(other)] = static_cast<float>(1 - result.chance);
    }
    return result;
}

ReadyNumbers numbersOf(const SideDay& day) {
    return {day.ready ? 1 : 0, day.likely, day.canStock ? 1 : 0, day.needsBrood ? 1 : 0};
}

std::optional<Day> stateSince(const SideOutlook& side, Day day, Day today) {
    const auto now = sideOn(side, day, today);
    if (!now.since) return std::nullopt;
    Day since = day;
    while (since > *now.since && sideOn(side, since - Days{1}, today).state == now.state)
        since -= Days{1};
    return since;
}

Days queenlessDays(const Facts& facts) {
    return Days{(static_cast<int>(facts[Fact::NucQueenlessH]) + 23) / 24};
}

}  // namespace tenthday
