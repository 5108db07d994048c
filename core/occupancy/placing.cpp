#include <algorithm>
#include <cmath>
#include <unordered_map>

#include "base/side_by_side.h"
#include "occupancy/free_sides.h"
#include "occupancy/ripe_for_nucs.h"
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
        std::optional<Id<Yard>> known;  // boxes of a yard come together
        auto at = index.end();
        for (std::size_t i = 0; i < sides.size(); ++i) {
            for (const auto& round : sides[i].rounds)
                stored_[round.batch].emplace_back(round.transferDay, i);
            std::optional<std::size_t> last;
            for (const auto& stay : sides[i].stays) {
                if (!stay.yard) continue;
                if (stay.yard != known) known = stay.yard, at = index.find(*stay.yard);
                if (at == index.end() || last == at->second) continue;
                free_[at->second].add(i);
                last = at->second;
            }
        }
    }

    /// Days are asked for from this one on.
    void begin(Day day) {
        sideBySide(free_.size(), [&](std::size_t yard) { free_[yard].begin(day); });
    }

    PlacedCells place(Id<Batch> batch, const BatchTimeline& timeline) {
        batch_ = batch;
        timeline_ = &timeline;
        const auto& stored = stored_[batch];
        std::unordered_map<Id<Yard>, std::int32_t> storedIn;
        PlacedCells cells;
        cells.placed = static_cast<std::int32_t>(stored.size());
        for (const auto& [day, side] : stored) {
            cells.stored.emplace_back(day, 1);
            if (const auto yard = sides_[side].yardOn(day)) ++storedIn[*yard];
        }
        cells.forNucs = isClosed()
                            ? cells.placed
                            : std::max(ripeForNucs(snapshot_, batch, timeline), cells.placed);
        fillAll(cells, storedIn);
        return cells;
    }

private:
    /// The day is over and cells of it are recorded: what was not placed then is not coming.
    [[nodiscard]] bool isClosed() const {
        const auto placements = snapshot_.all<Placement>().of(batch_.uuid);
        return timeline_->hold.transferDay < snapshot_.today() &&
               std::any_of(placements.begin(), placements.end(),
                           [](const auto& p) { return p->done && p->target == CellTarget::Nuc; });
    }

    void fillAll(PlacedCells& cells, std::unordered_map<Id<Yard>, std::int32_t>& storedIn) {
        std::int32_t wanted = cells.forNucs - cells.placed;
        const std::int32_t before = wanted;
        for (std::size_t yard = 0; yard < yards_.size() && wanted > 0; ++yard)
            for (const auto& share : snapshot_.all<BatchShare>().of(batch_.uuid))
                if (share->yard == yards_[yard]->id)
                    wanted -=
                        fill(yard, std::min(wanted, share->cells.value - storedIn[share->yard]));
        for (const bool certainOnly : {true, false})
            while (wanted > 0) {
                const auto yard = bestYard(wanted, certainOnly);
                if (!yard) break;
                wanted -= fill(*yard, wanted, certainOnly);
            }
        cells.placed += before - wanted;
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
        const auto round =
            plannedRound(batch_, *timeline_, timeline_->hold.transferDay, snapshot_.today());
        for (auto at = free.begin(); at != end; ++at) {
            auto& side = sides_[at->side];
            side.rounds.insert(std::upper_bound(side.rounds.begin(), side.rounds.end(), round,
                                                [](const auto& a, const auto& b) {
                                                    return a.transferDay < b.transferDay;
                                                }),
                               round);
            divide(side, snapshot_);
            free_[yard].forget(at->side);
        }
        return static_cast<std::int32_t>(taken);
    }

    /// The yard that takes all with the least to spare; failing that the one that takes most.
    [[nodiscard]] std::optional<std::size_t> bestYard(std::int32_t wanted, bool certainOnly) {
        std::optional<std::size_t> best;
        std::int32_t bestRoom = 0;
        for (std::size_t yard = 0; yard < yards_.size(); ++yard) {
            const auto room = free_[yard].count(timeline_->hold.transferDay,
                                                timeline_->hold.catchDay, certainOnly);
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
    /// Rounds by record or named plan: day and side.
    std::unordered_map<Id<Batch>, std::vector<std::pair<Day, std::size_t>>> stored_;
    Id<Batch> batch_;
    const BatchTimeline* timeline_ = nullptr;
};

}  // namespace

std::vector<PlacedCells> placeByFirstFit(std::vector<SideOutlook>& sides, const Snapshot& snapshot,
                                         const Timelines& timelines) {
    std::vector<std::size_t> order(timelines.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return timelines[a].second->hold.transfer < timelines[b].second->hold.transfer;
    });
    Placer placer(sides, snapshot);
    if (!order.empty()) placer.begin(timelines[order.front()].second->hold.transferDay);
    std::vector<PlacedCells> placed(timelines.size());
    for (const auto i : order) placed[i] = placer.place(timelines[i].first, *timelines[i].second);
    return placed;
}

}  // namespace tenthday
