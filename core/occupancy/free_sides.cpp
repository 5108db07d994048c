#include "occupancy/free_sides.h"

#include <algorithm>

namespace tenthday {

void FreeSides::add(std::size_t side) {
    if (!slots_.empty() && slots_.back().side == side) return;
    const auto& stays = sides_[side].stays;
    const Day last = sides_[side].stands.last;
    Slot slot;
    slot.side = side;
    slot.ends = last < kLastDay ? last + Days{1} : kLastDay;
    if (stays.size() == 1 && stays.front().yard == yard_) slot.comes = stays.front().from;
    slots_.push_back(slot);
    isFree_.push_back(false);
}

std::vector<FreeSide> FreeSides::on(Day day, Day heldUntil, bool certainOnly) {
    goTo(day);
    std::vector<FreeSide> free;
    for (std::size_t i = 0; i < slots_.size(); ++i) {
        if (!isFree_[i]) continue;
        const auto& slot = slots_[i];
        if (slot.takes(heldUntil, certainOnly))
            free.push_back({slot.free, slot.certain, slot.side});
    }
    return free;
}

std::int32_t FreeSides::count(Day day, Day heldUntil, bool certainOnly) {
    goTo(day);
    const auto takes = [&](std::int32_t slot) {
        return slots_[static_cast<std::size_t>(slot)].takes(heldUntil, certainOnly);
    };
    return certain_ + (certainOnly ? 0 : planned_) +
           static_cast<std::int32_t>(std::count_if(bounded_.begin(), bounded_.end(), takes));
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
    if (slot.isFree) count(index, -1);
    if (changed || now_ > slot.holds) find(slot);
    slot.lookAgain = slot.holds + Days{1};
    slot.isFree = slot.free <= now_;
    isFree_[static_cast<std::size_t>(index)] = slot.isFree;
    if (slot.isFree)
        count(index, 1);
    else
        slot.lookAgain = std::min(slot.lookAgain, slot.free);
    if (slot.lookAgain < kLastDay) wait(index);
}

void FreeSides::count(std::int32_t index, std::int32_t by) {
    const auto& slot = slots_[static_cast<std::size_t>(index)];
    if (!slot.isBounded())
        (slot.certain ? certain_ : planned_) += by;
    else if (by > 0)
        bounded_.push_back(index);
    else
        std::erase(bounded_, index);
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

/// Finds the stretch the latest day lies in and how long what it says stays true.
void FreeSides::find(Slot& slot) const {
    using Kind = SideSegment::Kind;
    const Day day = now_;
    const auto& side = sides_[slot.side];
    slot.free = kLastDay;
    // A nuc that is divided anew, or whose box goes, cannot hold a queen beyond that.
    slot.nextRound = slot.ends;
    for (auto round = side.rounds.rbegin();
         round != side.rounds.rend() && round->transferDay >= day; ++round)
        slot.nextRound = std::min(slot.nextRound, round->transferDay);
    slot.holds = kLastDay - Days{1};
    if (slot.comes) {
        if (*slot.comes > day) slot.holds = *slot.comes - Days{1};
    } else {
        for (const auto& stay : side.stays) {
            if (stay.from <= day) continue;
            slot.holds = std::min(slot.holds, stay.from - Days{1});
            if (!stay.yard) slot.nextRound = std::min(slot.nextRound, stay.from);
        }
    }
    const auto& segments = side.segments;
    const auto at = std::find_if(segments.begin(), segments.end(),
                                 [&](const auto& s) { return s.days.contains(day); });
    if (at == segments.end()) {
        slot.holds = day < side.stands.first ? side.stands.first - Days{1} : day;
        return;
    }
    slot.holds = std::min(slot.holds, at->days.last);
    const bool here = slot.comes ? *slot.comes <= day : side.yardOn(day) == yard_;
    if (here && (at->kind == Kind::Empty || at->kind == Kind::Freed) && day < at->needsBroodFrom) {
        slot.free = at->readyFrom;
        slot.certain = at->certain;
        slot.holds = std::min(slot.holds, at->needsBroodFrom - Days{1});
    }
}

}  // namespace tenthday
