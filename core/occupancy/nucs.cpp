#include "occupancy/nucs.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <unordered_map>

#include "occupancy/sides.h"
#include "occupancy/yard_days.h"

namespace tenthday {
namespace {

/// Cells placed by record, per day: at the start of that day their sides were ready.
std::unordered_map<std::int32_t, std::int32_t> recordedByDay(
    const std::vector<SideOutlook>& sides) {
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

std::vector<CellsDay> cellsDaysOf(const Snapshot& snapshot, const Timelines& timelines,
                                  const std::vector<PlacedCells>& placed, const NucOutlook& nucs) {
    const auto season = snapshot.season();
    std::map<Day, CellsDay> days;
    for (std::size_t i = 0; i < timelines.size(); ++i)
        addCells(days, timelines[i].first, *timelines[i].second, placed[i]);
    auto recorded = recordedByDay(nucs.sides);
    std::vector<CellsDay> all;
    for (auto& [day, cells] : days) {
        if (!season.contains(day)) continue;
        const auto index = static_cast<std::size_t>((day - season.first).count());
        for (const auto& yard : nucs.yards) cells.numbers += yard.days[index].numbers;
        cells.numbers.ready += recorded[day.time_since_epoch().count()];
        all.push_back(std::move(cells));
    }
    return all;
}

}  // namespace

NucOutlook nucOutlook(const Snapshot& snapshot, const Timelines& timelines, const BareSides& bare) {
    NucOutlook nucs;
    nucs.sides = storedSides(snapshot, timelines, bare, nucs.stays);
    const auto placed = placeByFirstFit(nucs.sides, snapshot, timelines);
    nucs.yards = yardOutlooks(snapshot, timelines, nucs.sides);
    nucs.cellsDays = cellsDaysOf(snapshot, timelines, placed, nucs);
    return nucs;
}

}  // namespace tenthday
