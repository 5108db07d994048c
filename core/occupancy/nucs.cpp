#include "occupancy/nucs.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>

#include "base/side_by_side.h"
#include "occupancy/fitted_nucs.h"

namespace tenthday {
namespace {

/// Cells placed by record, per day: at the start of that day their sides were ready.
std::unordered_map<std::int32_t, std::int32_t> recordedByDay(const SharedList<SideOutlook>& sides) {
    std::unordered_map<std::int32_t, std::int32_t> recorded;
    for (const auto& side : sides)
        for (const auto& round : side.rounds)
            if (round.done) ++recorded[round.transferDay.time_since_epoch().count()];
    return recorded;
}

/// Adds a batch to the days its cells come out on: those named on their days, the rest on the
/// first of the batch's own.
void addCells(std::map<Day, CellsDay>& days, Id<Batch> batch, const BatchTimeline& timeline,
              const PlacedCells& cells) {
    std::map<Day, std::int32_t> others;
    std::int32_t onOthers = 0;
    const Day first = timeline.hold.transferDay;
    for (const auto& [day, count] : cells.stored)
        if (day != first) others[day] += count, onOthers += count;
    const auto add = [&](Day day, std::int32_t ripe, std::int32_t forNucs, std::int32_t placed) {
        auto& sum = days[day];
        sum.day = day;
        sum.batches.push_back(batch);
        sum.ripe += ripe;
        sum.toNucs += forNucs;
        sum.placed += placed;
    };
    const auto ripe = static_cast<std::int32_t>(std::lround(timeline.counts.ripe));
    add(first, std::max(ripe - onOthers, 0), cells.forNucs - onOthers, cells.placed - onOthers);
    for (const auto& [day, count] : others) add(day, count, count, count);
}

/// @param placed  by place in the timelines
std::vector<CellsDay> cellsDaysOf(const Snapshot& snapshot, const Timelines& timelines,
                                  const std::vector<PlacedCells>& placed,
                                  const std::unordered_map<std::int32_t, std::int32_t>& recorded,
                                  const std::vector<YardOutlook>& yards) {
    const auto season = snapshot.season();
    std::map<Day, CellsDay> days;
    for (std::size_t i = 0; i < timelines.size(); ++i)
        addCells(days, timelines[i].first, *timelines[i].second, placed[i]);
    std::vector<CellsDay> all;
    for (auto& [day, cells] : days) {
        if (!season.contains(day)) continue;
        const auto index = static_cast<std::size_t>((day - season.first).count());
        for (const auto& yard : yards) cells.numbers += yard.days[index].numbers;
        if (const auto at = recorded.find(day.time_since_epoch().count()); at != recorded.end())
            cells.numbers.ready += at->second;
        all.push_back(std::move(cells));
    }
    return all;
}

/// Counts a side in all yards it stays in.
void count(std::vector<YardSums>& sums, const YardsOfSides& yards, const SideOutlook& side,
           DayWindow season, std::int32_t by) {
    eachStay(side, season, [&](Id<Yard> yard, DayWindow days) {
        if (const auto at = yards.find(yard)) sums[*at].add(side, days, by);
    });
}

/// From the start.
std::shared_ptr<const FittedNucs> fittedNucs(const Snapshot& snapshot, const Timelines& timelines,
                                             std::shared_ptr<const BareSides> bare,
                                             std::shared_ptr<const void> owner) {
    auto made = std::make_shared<FittedNucs>(
        FittedNucs{snapshot, bare, std::move(owner), {snapshot, *bare}, {}, {}, {}, {}, {}});
    const auto& yards = made->yards;
    auto sides = storedSides(snapshot, timelines, *bare);
    made->fits = firstFit(sides, yards, snapshot, timelines, *bare);
    for (std::size_t i = 0; i < made->fits.size(); ++i) made->places[made->fits[i].wish.batch] = i;
    // In one piece: a list of them is copied without touching each.
    const auto block = std::make_shared<const std::vector<SideOutlook>>(std::move(sides));
    made->sides.reserve(block->size());
    for (const auto& side : *block)
        made->sides.push_back(std::shared_ptr<const SideOutlook>(block, &side));
    made->recorded = recordedByDay(made->sides);
    const auto season = snapshot.season();
    made->sums.assign(yards.yards.size(), YardSums(season, snapshot.today()));
    sideBySide(yards.yards.size(), [&](std::size_t yard) {
        for (const auto side : yards.sides[yard])
            eachStay(made->sides[side], season, [&](Id<Yard> in, DayWindow days) {
                if (in == yards.yards[yard]->id) made->sums[yard].add(made->sides[side], days, 1);
            });
    });
    return made;
}

std::vector<PlacedCells> placedCells(const FittedNucs& fitted, const Timelines& timelines) {
    std::vector<PlacedCells> placed;
    for (const auto& [batch, timeline] : timelines)
        placed.push_back(fitted.fits[fitted.places.at(batch)].cells);
    return placed;
}

/// The sums of the yards, were these sides others.
std::vector<YardSums> sumsWith(const FittedNucs& before, const RefittedNucs& now,
                               DayWindow season) {
    auto sums = before.sums;
    for (const auto side : now.changed) {
        count(sums, before.yards, before.sides[side], season, -1);
        count(sums, before.yards, now.sides[side], season, 1);
    }
    return sums;
}

}  // namespace

NucOutlook nucOutlook(const Snapshot& snapshot, const Timelines& timelines,
                      std::shared_ptr<const void> owner, NucMemo& memo) {
    auto before = memo.fitted();
    auto now = before ? refit(*before, snapshot, timelines) : std::nullopt;
    if (!now) {
        before = fittedNucs(snapshot, timelines, memo.bareSides(snapshot), std::move(owner));
        memo.keep(before);
        now = RefittedNucs{before->sides, {}, placedCells(*before, timelines), {}};
    } else {
        memo.sawDiffering(std::move(now->differing));
    }
    NucOutlook nucs;
    nucs.bare = before->bare;
    nucs.fitted = before;
    nucs.yards = yardOutlooks(
        before->yards.yards,
        now->changed.empty() ? before->sums : sumsWith(*before, *now, snapshot.season()));
    nucs.sides = std::move(now->sides);
    nucs.cellsDays = cellsDaysOf(snapshot, timelines, now->placed, before->recorded, nucs.yards);
    return nucs;
}

}  // namespace tenthday
