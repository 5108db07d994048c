#include "occupancy/first_fit.h"

#include <algorithm>
#include <unordered_map>

#include "base/side_by_side.h"
#include "occupancy/ripe_for_nucs.h"

namespace tenthday {
namespace {

/// The day is over and cells of it are recorded: what was not placed then is not coming.
bool isClosed(const Snapshot& snapshot, Id<Batch> batch, const BatchTimeline& timeline) {
    const auto placements = snapshot.all<Placement>().of(batch.uuid);
    return timeline.hold.transferDay < snapshot.today() &&
           std::any_of(placements.begin(), placements.end(),
                       [](const auto& p) { return p->done && p->target == CellTarget::Nuc; });
}

/// Chooses among what is left of the yards asked about.
class Choice {
public:
    Choice(BatchFit& fit, std::size_t yards,
           const std::function<std::vector<FreeSide>(std::size_t)>& freeIn)
        : fit_(fit), freeIn_(freeIn), left_(yards) {}

    void run() {
        auto wanted = fit_.wish.cells;
        for (const auto& [yard, cells] : fit_.wish.planned)
            wanted -= fill(yard, std::min(wanted, cells), false);
        for (const bool certainOnly : {true, false})
            while (wanted > 0) {
                const auto yard = bestYard(wanted, certainOnly);
                if (!yard) break;
                wanted -= fill(*yard, wanted, certainOnly);
            }
    }

private:
    using Free = std::vector<FreeSide>;

    Free& left(std::size_t yard) {
        if (!left_[yard]) {
            fit_.asked.push_back({yard, freeIn_(yard)});
            left_[yard] = fit_.asked.back().free;
        }
        return *left_[yard];
    }

    /// Takes the best of a yard, at most so many.
    std::int32_t fill(std::size_t yard, std::int32_t cells, bool certainOnly) {
        if (cells <= 0) return 0;
        auto& free = left(yard);
        const auto candidates =
            certainOnly ? std::partition(free.begin(), free.end(), isCertain) : free.end();
        const auto end = free.begin() + std::min<std::ptrdiff_t>(candidates - free.begin(), cells);
        if (end != candidates) std::nth_element(free.begin(), end, candidates);
        std::sort(free.begin(), end);
        for (auto at = free.begin(); at != end; ++at) fit_.taken.push_back({at->side, yard});
        const auto taken = end - free.begin();
        free.erase(free.begin(), end);
        return static_cast<std::int32_t>(taken);
    }

    static bool isCertain(const FreeSide& side) { return side.certain; }

    std::int32_t room(std::size_t yard, bool certainOnly) {
        const auto& free = left(yard);
        return static_cast<std::int32_t>(certainOnly
                                             ? std::count_if(free.begin(), free.end(), isCertain)
                                             : static_cast<std::ptrdiff_t>(free.size()));
    }

    /// The yard that takes all with the least to spare; failing that the one that takes most.
    std::optional<std::size_t> bestYard(std::int32_t wanted, bool certainOnly) {
        std::optional<std::size_t> best;
        std::int32_t bestRoom = 0;
        for (std::size_t yard = 0; yard < left_.size(); ++yard) {
            const auto here = room(yard, certainOnly);
            if (here == 0) continue;
            const bool takesAll = here >= wanted;
            const bool bestTakesAll = bestRoom >= wanted;
            const bool better =
                !best || (takesAll && !bestTakesAll) ||
                (takesAll == bestTakesAll && (takesAll ? here < bestRoom : here > bestRoom));
            if (!better) continue;
            best = yard;
            bestRoom = here;
        }
        return best;
    }

    BatchFit& fit_;
    const std::function<Free(std::size_t)>& freeIn_;
    std::vector<std::optional<Free>> left_;  ///< by yard, once asked
};

}  // namespace

YardsOfSides::YardsOfSides(const Snapshot& snapshot, const BareSides& bare)
    : yards(snapshot.all<Yard>().begin(), snapshot.all<Yard>().end()), sides(yards.size()) {
    std::stable_sort(yards.begin(), yards.end(),
                     [](const auto& a, const auto& b) { return a->driveOrder < b->driveOrder; });
    std::unordered_map<Id<Yard>, std::size_t> index;
    for (std::size_t i = 0; i < yards.size(); ++i) index[yards[i]->id] = i;
    std::optional<Id<Yard>> known;  // boxes of a yard come together
    auto at = index.end();
    for (std::size_t i = 0; i < bare.sides().size(); ++i)
        for (const auto& stay : bare.sides()[i].stays) {
            if (!stay.yard) continue;
            if (stay.yard != known) known = stay.yard, at = index.find(*stay.yard);
            if (at == index.end()) continue;
            auto& here = sides[at->second];
            if (here.empty() || here.back() != i) here.push_back(i);  // a box may come back
        }
}

std::optional<std::size_t> YardsOfSides::find(Id<Yard> yard) const {
    for (std::size_t i = 0; i < yards.size(); ++i)
        if (yards[i]->id == yard) return i;
    return std::nullopt;
}

BatchFit wishOf(const Snapshot& snapshot, const YardsOfSides& yards, Id<Batch> batch,
                const BatchTimeline& timeline, const StoredRounds& stored, const BareSides& bare) {
    BatchFit fit;
    fit.wish.batch = batch;
    fit.wish.timeline = &timeline;
    std::unordered_map<Id<Yard>, std::int32_t> storedIn;
    for (const auto& [day, side] : stored) {
        fit.cells.stored.emplace_back(day, 1);
        if (const auto yard = bare.sides()[side].yardOn(day)) ++storedIn[*yard];
    }
    const auto placed = static_cast<std::int32_t>(stored.size());
    fit.cells.placed = placed;
    fit.cells.forNucs = isClosed(snapshot, batch, timeline)
                            ? placed
                            : std::max(ripeForNucs(snapshot, batch, timeline), placed);
    fit.wish.cells = fit.cells.forNucs - placed;
    const auto shares = snapshot.all<BatchShare>().of(batch.uuid);
    if (fit.wish.cells == 0 || shares.empty()) return fit;
    for (std::size_t yard = 0; yard < yards.yards.size(); ++yard)
        for (const auto& share : shares)
            if (share->yard == yards.yards[yard]->id)
                fit.wish.planned.push_back({yard, share->cells.value - storedIn[share->yard]});
    return fit;
}

void chooseSides(BatchFit& fit, std::size_t yards,
                 const std::function<std::vector<FreeSide>(std::size_t)>& freeIn) {
    Choice(fit, yards, freeIn).run();
    fit.cells.placed += static_cast<std::int32_t>(fit.taken.size());
}

void giveRound(SideOutlook& side, const FitWish& wish, const Snapshot& snapshot) {
    const auto round =
        plannedRound(wish.batch, *wish.timeline, wish.timeline->hold.transferDay, snapshot.today());
    side.rounds.insert(std::upper_bound(side.rounds.begin(), side.rounds.end(), round,
                                        [](const auto& a, const auto& b) {
                                            return a.transferDay < b.transferDay;
                                        }),
                       round);
    divide(side, snapshot);
}

std::vector<std::size_t> fitOrder(const Timelines& timelines) {
    std::vector<std::size_t> order(timelines.size());
    for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return timelines[a].second->hold.transfer < timelines[b].second->hold.transfer;
    });
    return order;
}

std::vector<BatchFit> firstFit(std::vector<SideOutlook>& sides, const YardsOfSides& yards,
                               const Snapshot& snapshot, const Timelines& timelines,
                               const BareSides& bare) {
    std::unordered_map<Id<Batch>, StoredRounds> stored;
    for (std::size_t i = 0; i < sides.size(); ++i)
        for (const auto& round : sides[i].rounds)
            stored[round.batch].emplace_back(round.transferDay, i);
    std::vector<FreeSides> free;
    for (std::size_t yard = 0; yard < yards.yards.size(); ++yard) {
        free.emplace_back(sides, yards.yards[yard]->id);
        for (const auto side : yards.sides[yard]) free.back().add(side);
    }
    const auto order = fitOrder(timelines);
    std::vector<BatchFit> fits;
    fits.reserve(order.size());
    if (order.empty()) return fits;
    const Day begin = timelines[order.front()].second->hold.transferDay;
    sideBySide(free.size(), [&](std::size_t yard) { free[yard].begin(begin); });
    for (const auto at : order) {
        const auto& [batch, timeline] = timelines[at];
        auto& fit =
            fits.emplace_back(wishOf(snapshot, yards, batch, *timeline, stored[batch], bare));
        const auto& hold = timeline->hold;
        const auto freeIn = [&](std::size_t yard) {
            return free[yard].on(hold.transferDay, hold.catchDay);
        };
        chooseSides(fit, yards.yards.size(), freeIn);
        if (fit.wish.cells > 0)
            for (std::size_t yard = 0; yard < yards.yards.size(); ++yard)
                if (!fit.hasAsked(yard)) fit.notAsked.push_back({yard, freeIn(yard)});
        for (const auto& [side, yard] : fit.taken) {
            giveRound(sides[side], fit.wish, snapshot);
            free[yard].forget(side);
        }
    }
    return fits;
}

}  // namespace tenthday
