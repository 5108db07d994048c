#include "occupancy/winter.h"

#include <algorithm>
#include <unordered_map>

#include "records/queen_verbs.h"

namespace tenthday {
namespace {

/// The stays of one queen in her nuc.
void addStaysOf(const Snapshot& snapshot, const Ptr<CaughtQueen>& raised, Day since,
                std::vector<WinterStay>& found) {
    const auto stays = staysOf(snapshot, raised->queen);
    for (std::size_t i = 0; i < stays.size(); ++i) {
        if (stays[i]->place != QueenPlace::Nuc) continue;
        std::size_t next = i + 1;
        while (next < stays.size() && stays[next]->place == QueenPlace::Nuc) ++next;
        const auto left = next < stays.size() ? stays[next] : nullptr;
        if (!left || left->from >= since)
            found.push_back({raised, snapshot.find(raised->queen), stays[i]->from, left});
        i = next;
    }
}

/// The newest round of her batch that began by the day.
SideRound* roundOf(SideOutlook& side, Id<Batch> batch, Day by) {
    SideRound* found = nullptr;
    for (auto& round : side.rounds)
        if (round.batch == batch && round.transferDay <= by) found = &round;
    return found;
}

void leave(SideRound& round, const WinterStay& stay) {
    round.seen = NucState::JudgedGood;
    round.seenDay = stay.from;
    round.catchDay = kLastDay;
    if (!stay.next) return;
    round.seen = stay.next->place == QueenPlace::Lost ? NucState::NoQueen : NucState::Caught;
    round.seenDay = stay.next->from;
    round.catchDay = stay.next->from;
}

}  // namespace

std::vector<WinterStay> winterStays(const Snapshot& snapshot, Day since) {
    std::vector<WinterStay> found;
    const auto& stays = snapshot.all<QueenStay>();
    const bool any = std::any_of(stays.begin(), stays.end(),
                                 [](const auto& stay) { return stay->place == QueenPlace::Nuc; });
    if (!any) return found;
    for (const auto& raised : snapshot.all<CaughtQueen>())
        if (raised->side) addStaysOf(snapshot, raised, since, found);
    return found;
}

const WinterStay* winterStayIn(const std::vector<WinterStay>& stays, Id<NucSide> side, Day day) {
    for (const auto& stay : stays)
        if (stay.raised->side == side && stay.from <= day && (!stay.next || day < stay.next->from))
            return &stay;
    return nullptr;
}

const WinteredQueen* winteredOn(const SideOutlook& side, Day day) {
    for (const auto& queen : side.wintered)
        if (queen.from <= day && day < queen.last) return &queen;
    return nullptr;
}

void leaveForWinter(std::vector<SideOutlook>& sides, const Snapshot& snapshot) {
    const auto stays = winterStays(snapshot, snapshot.season().first - kLeadIn);
    if (stays.empty()) return;
    std::unordered_map<Id<NucSide>, std::size_t> byId;
    for (std::size_t i = 0; i < sides.size(); ++i) byId[sides[i].side->id] = i;
    for (const auto& stay : stays) {
        const auto at = byId.find(*stay.raised->side);
        if (at == byId.end()) continue;
        auto& side = sides[at->second];
        if (auto* round = roundOf(side, stay.raised->batch, stay.from)) {
            leave(*round, stay);
        } else if (!snapshot.find(stay.raised->batch)) {
            const bool lost = stay.next && stay.next->place == QueenPlace::Lost;
            side.wintered.push_back(
                {stay.queen, stay.from, stay.next ? stay.next->from : kLastDay, lost});
        }
    }
    for (auto& side : sides)
        std::stable_sort(side.wintered.begin(), side.wintered.end(),
                         [](const auto& a, const auto& b) { return a.from < b.from; });
}

}  // namespace tenthday
