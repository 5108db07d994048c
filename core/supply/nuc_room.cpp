#include "supply/nuc_room.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// Sides that stand unstocked for a while, with the day from which no other batch has them.
class Unstocked {
public:
    Unstocked(const NucOutlook& nucs, Day today) : today_(today) {
        for (const auto& side : nucs.sides)
            for (const auto& segment : side.segments)
                if (segment.kind == SideSegment::Kind::NotStocked && !segment.days.isEmpty())
                    stretches_.push_back({&side, segment.days});
    }

    /// Takes up to so many from the transfer to the catch.
    std::int32_t take(const NucHold& hold, std::int32_t wanted) {
        std::int32_t taken = 0;
        if (hold.transferDay <= today_) return taken;
        for (auto& stretch : stretches_) {
            if (taken == wanted) break;
            if (stretch.freeFrom > hold.transferDay || !stretch.days.contains(hold.transferDay) ||
                !stretch.days.contains(hold.catchDay) || !stretch.side->yardOn(hold.transferDay))
                continue;
            stretch.freeFrom = hold.catchDay + Days{1};
            ++taken;
        }
        return taken;
    }

private:
    struct Stretch {
        const SideOutlook* side;
        DayWindow days;
        Day freeFrom = kFirstDay;
    };
    Day today_;
    std::vector<Stretch> stretches_;
};

bool isRecorded(const Snapshot& snapshot, Id<Batch> batch) {
    const auto placements = snapshot.all<Placement>().of(batch.uuid);
    return std::any_of(placements.begin(), placements.end(), [](const auto& placement) {
        return placement->done && placement->target == CellTarget::Nuc;
    });
}

}  // namespace

CellsElsewhere cellsElsewhere(const Snapshot& snapshot, Id<Batch> batch) {
    CellsElsewhere cells;
    for (const auto& placement : snapshot.all<Placement>().of(batch.uuid))
        switch (placement->target) {
            case CellTarget::Nuc:
                break;
            case CellTarget::Sold:
                ++cells.sold;
                break;
            case CellTarget::Caged:
            case CellTarget::Incubator:
                ++cells.kept;
                break;
            default:
                ++cells.other;
        }
    return cells;
}

std::unordered_map<Id<Batch>, BatchNucs> batchNucs(const Snapshot& snapshot,
                                                   const Timelines& timelines,
                                                   const NucOutlook& nucs) {
    std::unordered_map<Id<Batch>, BatchNucs> all;
    for (const auto& side : nucs.sides)
        for (const auto& round : side.rounds)
            all[round.batch].rounds.push_back({side.side->id, &round});
    auto byTransfer = timelines;
    std::stable_sort(byTransfer.begin(), byTransfer.end(), [](const auto& a, const auto& b) {
        return a.second->hold.transfer < b.second->hold.transfer;
    });
    Unstocked unstocked(nucs, snapshot.today());
    for (const auto& [id, timeline] : byTransfer) {
        auto& batch = all[id];
        batch.isSettled = timeline->hold.transferDay < snapshot.today() && isRecorded(snapshot, id);
        const auto placed = static_cast<std::int32_t>(batch.rounds.size());
        const auto wanted = static_cast<std::int32_t>(std::lround(timeline->counts.ripe)) -
                            cellsElsewhere(snapshot, id).all() - placed;
        if (nucs.sides.empty() || batch.isSettled || wanted <= 0) continue;
        const auto more = unstocked.take(timeline->hold, wanted);
        if (more < wanted) batch.room = placed + more;
    }
    return all;
}

}  // namespace tenthday
