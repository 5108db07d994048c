#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "occupancy/free_sides.h"
#include "occupancy/sides.h"

namespace tenthday {
namespace {

/// Places cells batch by batch, in order of their transfer.
class Placer {
public:
    Placer(std::vector<SideOutlook>& sides, const Snapshot& snapshot)
        : sides_(sides), snapshot_(snapshot) {
        for (const auto& yard : snapshot.all<Yard>()) yards_.push_back(yard);
        std::stable_sort(yards_.begin(), yards_.end(), [](const auto& a, const auto& b) {
            return a->driveOrder < b->driveOrder;
        });
        std::unordered_map<Id<Yard>, std::size_t> index;
        for (std::size_t i = 0; i < yards_.size(); ++i) {
            index[yards_[i]->id] = i;
            free_.emplace_back(sides, yards_[i]->id);
        }
        sideIndex_.reserve(sides.size());
        for (std::size_t i = 0; i < sides.size(); ++i) {
            sideIndex_[sides[i].side->id] = i;
            std::optional<std::size_t> last;
            for (const auto& stay : sides[i].stays) {
                const auto at = stay.yard ? index.find(*stay.yard) : index.end();
                if (at == index.end() || last == at->second) continue;
                free_[at->second].add(i);
                last = at->second;
            }
        }
    }

    /// How many cells of the batch found a side.
    std::int32_t place(Id<Batch> batch, const BatchTimeline& timeline) {
        batch_ = batch;
        timeline_ = &timeline;
        std::int32_t stored = 0;
        std::unordered_map<Id<Yard>, std::int32_t> storedIn;
        countStored(stored, storedIn);
        std::int32_t wanted = cellsForNucs(snapshot_, batch, timeline) - stored;
        const std::int32_t before = wanted;
        for (std::size_t yard = 0; yard < yards_.size() && wanted > 0; ++yard)
            for (const auto& share : snapshot_.all<BatchShare>().of(batch.uuid))
                if (share->yard == yards_[yard]->id)
                    wanted -=
                        fill(yard, std::min(wanted, share->cells.value - storedIn[share->yard]));
        for (const bool certainOnly : {true, false})
            while (wanted > 0) {
                const auto yard = bestYard(wanted, certainOnly);
                if (!yard) break;
                wanted -= fill(*yard, wanted, certainOnly);
            }
        return stored + before - std::max(wanted, 0);
    }

private:
    void countStored(std::int32_t& stored, std::unordered_map<Id<Yard>, std::int32_t>& byYard) {
        for (const auto& placement : snapshot_.all<Placement>().of(batch_.uuid)) {
            if (placement->target != CellTarget::Nuc || !placement->side) continue;
            ++stored;
            if (const auto side = sideIndex_.find(*placement->side); side != sideIndex_.end())
                if (const auto yard = sides_[side->second].yardOn(placement->day)) ++byYard[*yard];
        }
    }

    std::vector<FreeSide> freeSides(std::size_t yard, bool certainOnly) {
        return free_[yard].on(timeline_->hold.transferDay, timeline_->hold.catchDay, certainOnly);
    }

    std::int32_t fill(std::size_t yard, std::int32_t cells, bool certainOnly = false) {
        if (cells <= 0) return 0;
        auto free = freeSides(yard, certainOnly);
        const auto taken = std::min<std::size_t>(free.size(), static_cast<std::size_t>(cells));
        const auto end = free.begin() + static_cast<std::ptrdiff_t>(taken);
        if (end != free.end()) std::nth_element(free.begin(), end, free.end());
        std::sort(free.begin(), end);
        for (auto at = free.begin(); at != end; ++at) {
            auto& side = sides_[at->side];
            const auto round =
                plannedRound(batch_, *timeline_, timeline_->hold.transferDay, snapshot_.today());
            side.rounds.insert(std::upper_bound(side.rounds.begin(), side.rounds.end(), round,
                                                [](const auto& a, const auto& b) {
                                                    return a.transferDay < b.transferDay;
                                                }),
                               round);
            divide(side, snapshot_.facts());
            free_[yard].forget(at->side);
        }
        return static_cast<std::int32_t>(taken);
    }

    /// The yard that takes all with the least to spare; failing that the one that takes most.
    [[nodiscard]] std::optional<std::size_t> bestYard(std::int32_t wanted, bool certainOnly) {
        std::optional<std::size_t> best;
        std::int32_t bestRoom = 0;
        for (std::size_t yard = 0; yard < yards_.size(); ++yard) {
            const auto room = static_cast<std::int32_t>(freeSides(yard, certainOnly).size());
            if (room == 0) continue;
            const bool takesAll = room >= wanted;
            const bool bestTakesAll = bestRoom >= wanted;
            const bool better =
                !best || (takesAll && !bestTakesAll) ||
                (takesAll == bestTakesAll && (takesAll ? room < bestRoom : room > bestRoom));
            if (!better) continue;
            best = yard;
            bestRoom = room;
        }
        return best;
    }

    std::vector<SideOutlook>& sides_;
    const Snapshot& snapshot_;
    std::vector<Ptr<Yard>> yards_;
    std::vector<FreeSides> free_;  ///< in the order of yards_
    std::unordered_map<Id<NucSide>, std::size_t> sideIndex_;
    Id<Batch> batch_;
    const BatchTimeline* timeline_ = nullptr;
};

}  // namespace

std::int32_t cellsForNucs(const Snapshot& snapshot, Id<Batch> batch,
                          const BatchTimeline& timeline) {
    std::int32_t elsewhere = 0;
    std::int32_t inNucs = 0;
    for (const auto& placement : snapshot.all<Placement>().of(batch.uuid))
        ++(placement->target == CellTarget::Nuc ? inNucs : elsewhere);
    const auto ripe = static_cast<std::int32_t>(std::lround(timeline.counts.ripe));
    // More placed than counted: what was done stands.
    return std::max(ripe - elsewhere, inNucs);
}

std::vector<std::int32_t> placeByFirstFit(std::vector<SideOutlook>& sides, const Snapshot& snapshot,
                                          const Timelines& timelines) {
    std::vector<std::size_t> order(timelines.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return timelines[a].second->hold.transfer < timelines[b].second->hold.transfer;
    });
    Placer placer(sides, snapshot);
    std::vector<std::int32_t> placed(timelines.size());
    for (const auto i : order) placed[i] = placer.place(timelines[i].first, *timelines[i].second);
    return placed;
}

}  // namespace tenthday
