#include "occupancy/free_sides.h"

#include <algorithm>
#include <bit>

namespace tenthday {
namespace {

constexpr std::size_t kBits = 64;

/// It stands in the yard on the day.
/// @param holds  brought down to the last day for which that is so
bool standsIn(const SideOutlook& side, Id<Yard> yard, Day day, Day& holds) {
    if (side.stays.size() == 1 && side.stays.front().yard == yard) {  // most boxes never move
        const Day comes = side.stays.front().from;
        if (comes > day) holds = std::min(holds, comes - Days{1});
        return comes <= day;
    }
    for (const auto& stay : side.stays)
        if (stay.from > day) holds = std::min(holds, stay.from - Days{1});
    return side.yardOn(day) == yard;
}

/// When another cell comes. A nuc that is divided anew, or whose box goes, cannot hold a queen
/// beyond that either.
Day nextRound(const SideOutlook& side, Day day, const RoundTest& ignored) {
    Day next = side.stands.last < kLastDay ? side.stands.last + Days{1} : kLastDay;
    for (const auto& stay : side.stays)
        if (stay.from > day && !stay.yard) next = std::min(next, stay.from);
    for (auto round = side.rounds.rbegin();
         round != side.rounds.rend() && round->transferDay >= day; ++round)
        if (!ignored || !ignored(*round)) next = std::min(next, round->transferDay);
    return next;
}

}  // namespace

Freedom freedomOn(const SideOutlook& side, Id<Yard> yard, Day day, const RoundTest& ignored) {
    using Kind = SideSegment::Kind;
    Freedom found;
    found.holds = kLastDay - Days{1};
    const bool here = standsIn(side, yard, day, found.holds);
    const auto& segments = side.segments;
    const auto at = std::find_if(segments.begin(), segments.end(),
                                 [&](const auto& s) { return s.days.contains(day); });
    // What is recorded before its layout came into force makes stretches before it stands.
    if (at == segments.end() || !side.stands.contains(day)) {
        found.holds = day < side.stands.first ? side.stands.first - Days{1} : day;
        return found;
    }
    found.holds = std::min(found.holds, at->days.last);
    if (!here || (at->kind != Kind::Empty && at->kind != Kind::Freed) || day >= at->needsBroodFrom)
        return found;
    found.free = at->readyFrom;
    found.certain = at->certain;
    found.holds = std::min(found.holds, at->needsBroodFrom - Days{1});
    found.nextRound = nextRound(side, day, ignored);
    return found;
}

void FreeSides::add(std::size_t side) {
    Slot slot;
    slot.side = side;
    slots_.push_back(slot);
    free_.resize((slots_.size() + kBits - 1) / kBits);
}

std::vector<FreeSide> FreeSides::on(Day day, Day heldUntil) {
    goTo(day);
    std::vector<FreeSide> free;
    for (std::size_t word = 0; word < free_.size(); ++word)
        for (auto bits = free_[word]; bits != 0; bits &= bits - 1) {
            const auto& slot =
                slots_[word * kBits + static_cast<std::size_t>(std::countr_zero(bits))];
            if (slot.found.takes(day, heldUntil))
                free.push_back({slot.found.free, slot.found.certain, slot.side});
        }
    return free;
}

void FreeSides::forget(std::size_t side) {
    const auto slot =
        std::lower_bound(slots_.begin(), slots_.end(), side,
                         [](const Slot& s, std::size_t wanted) { return s.side < wanted; });
    if (!asked_ || slot == slots_.end() || slot->side != side) return;
    const auto index = static_cast<std::int32_t>(slot - slots_.begin());
    wake(index);
    look(index, true);
}

/// Looks at all whose day has come.
void FreeSides::goTo(Day day) {
    if (!asked_) {
        asked_ = true;
        first_ = now_ = day;
        for (std::size_t i = 0; i < slots_.size(); ++i) look(static_cast<std::int32_t>(i), true);
        return;
    }
    while (now_ < day) {
        now_ += Days{1};
        if (now_ - first_ >= Days{static_cast<int>(waiting_.size())}) {
            now_ = day;
            return;  // nobody waits any longer
        }
        for (auto slot = waitingFor(now_); slot >= 0; slot = waitingFor(now_)) {
            wake(slot);
            look(slot, false);
        }
    }
}

/// Finds what one is on the latest day, if that is not known, and until when that is so.
void FreeSides::look(std::int32_t index, bool changed) {
    auto& slot = slots_[static_cast<std::size_t>(index)];
    if (changed || now_ > slot.found.holds) slot.found = freedomOn(sides_[slot.side], yard_, now_);
    slot.lookAgain = slot.found.holds + Days{1};
    const bool isFree = slot.found.free <= now_;
    const auto bit = std::uint64_t{1} << (static_cast<std::size_t>(index) % kBits);
    auto& word = free_[static_cast<std::size_t>(index) / kBits];
    word = isFree ? word | bit : word & ~bit;
    if (!isFree) slot.lookAgain = std::min(slot.lookAgain, slot.found.free);
    if (slot.lookAgain < kLastDay) wait(index);
}

std::int32_t& FreeSides::waitingFor(Day day) {
    const auto at = static_cast<std::size_t>((day - first_).count());
    if (at >= waiting_.size()) waiting_.resize(at + 1, -1);
    return waiting_[at];
}

void FreeSides::wait(std::int32_t index) {
    auto& slot = slots_[static_cast<std::size_t>(index)];
    auto& head = waitingFor(slot.lookAgain);
    slot.before = -1;
    slot.after = head;
    if (head >= 0) slots_[static_cast<std::size_t>(head)].before = index;
    head = index;
}

void FreeSides::wake(std::int32_t index) {
    const auto& slot = slots_[static_cast<std::size_t>(index)];
    if (slot.lookAgain == kLastDay) return;
    if (slot.before >= 0)
        slots_[static_cast<std::size_t>(slot.before)].after = slot.after;
    else
        waitingFor(slot.lookAgain) = slot.after;
    if (slot.after >= 0) slots_[static_cast<std::size_t>(slot.after)].before = slot.before;
}

}  // namespace tenthday
