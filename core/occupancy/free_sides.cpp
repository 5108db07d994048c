#include "occupancy/free_sides.h"

#include <algorithm>

namespace tenthday {

std::vector<FreeSide> FreeSides::on(Day day, Day heldUntil, bool certainOnly) {
    std::vector<FreeSide> free;
    for (auto& slot : slots_) {
        if (day > slot.known) look(slot, day);
        if (slot.takes(day, heldUntil, certainOnly))
            free.push_back({slot.free, slot.certain, slot.side});
    }
    return free;
}

std::int32_t FreeSides::count(Day day, Day heldUntil, bool certainOnly) {
    std::int32_t count = 0;
    for (auto& slot : slots_) {
        if (day > slot.known) look(slot, day);
        count += slot.takes(day, heldUntil, certainOnly);
    }
    return count;
}

void FreeSides::forget(std::size_t side) {
    const auto slot =
        std::lower_bound(slots_.begin(), slots_.end(), side,
                         [](const Slot& s, std::size_t wanted) { return s.side < wanted; });
    if (slot != slots_.end() && slot->side == side) slot->known = kFirstDay - Days{1};
}

/// Finds the stretch the day lies in and how long what it says stays true.
void FreeSides::look(Slot& slot, Day day) const {
    using Kind = SideSegment::Kind;
    const auto& side = sides_[slot.side];
    slot.free = kLastDay;
    slot.nextRound = kLastDay;
    for (const auto& round : side.rounds)
        if (round.transferDay >= day) slot.nextRound = std::min(slot.nextRound, round.transferDay);
    // A nuc that is divided anew, or whose box goes, cannot hold a queen beyond that.
    if (side.stands.last < kLastDay)
        slot.nextRound = std::min(slot.nextRound, side.stands.last + Days{1});
    for (const auto& stay : side.stays)
        if (stay.from > day && !stay.yard) slot.nextRound = std::min(slot.nextRound, stay.from);
    const auto& segments = side.segments;
    const auto at = std::find_if(segments.begin(), segments.end(),
                                 [&](const auto& s) { return s.days.contains(day); });
    if (at == segments.end()) {
        slot.known = day;
        return;
    }
    slot.known = at->days.last;
    for (const auto& stay : side.stays)
        if (stay.from > day) slot.known = std::min(slot.known, stay.from - Days{1});
    const bool here = side.yardOn(day) == yard_;
    if (!here || (at->kind != Kind::Empty && at->kind != Kind::Freed)) return;
    if (day >= at->needsBroodFrom) return;
    slot.free = at->readyFrom;
    slot.certain = at->certain;
    slot.known = std::min(slot.known, at->needsBroodFrom - Days{1});
}

}  // namespace tenthday
