#include "occupancy/open_sides.h"

#include <algorithm>
#include <map>

#include "occupancy/free_sides.h"
#include "occupancy/sides.h"

namespace tenthday {
namespace {

/// Sides without the rounds that are only planned and may be planned anew.
std::vector<SideOutlook> withoutPlanned(const NucOutlook& nucs, const Snapshot& snapshot,
                                        std::span<const Id<Batch>> batches, Day day) {
    const auto goes = [&](const SideRound& round) {
        const bool own = std::find(batches.begin(), batches.end(), round.batch) != batches.end();
        if (round.done) return false;
        if (!round.named) return own || round.transferDay >= day;
        return own && isReplaceable(round.done, round.transferDay, day, snapshot.today());
    };
    std::vector<SideOutlook> sides(nucs.sides.begin(), nucs.sides.end());
    for (auto& side : sides)
        if (std::erase_if(side.rounds, goes) > 0) divide(side, snapshot);
    return sides;
}

}  // namespace

std::vector<OpenSide> openSides(const NucOutlook& nucs, const Snapshot& snapshot,
                                std::span<const Id<Batch>> batches, Day day, Day heldUntil) {
    const auto sides = withoutPlanned(nucs, snapshot, batches, day);
    std::map<Id<Yard>, FreeSides> yards;
    for (std::size_t i = 0; i < sides.size(); ++i)
        if (const auto yard = sides[i].yardOn(day))
            yards.try_emplace(*yard, sides, *yard).first->second.add(i);
    std::vector<OpenSide> open;
    for (auto& [yard, free] : yards)
        for (const auto& side : free.on(day, heldUntil))
            open.push_back({side.side, yard, side.since, side.certain});
    std::sort(open.begin(), open.end(),
              [](const auto& a, const auto& b) { return a.side < b.side; });
    return open;
}

}  // namespace tenthday
