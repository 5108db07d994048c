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

std::vector<CellsDay> cellsDaysOf(const Snapshot& snapshot, const Timelines& timelines,
                                  const std::vector<std::int32_t>& placed, const NucOutlook& nucs) {
    const auto season = snapshot.season();
    std::map<Day, CellsDay> days;
    for (std::size_t i = 0; i < timelines.size(); ++i) {
        const auto& [batch, timeline] = timelines[i];
        const Day day = timeline->hold.transferDay;
        if (!season.contains(day)) continue;
        auto& cells = days[day];
        cells.day = day;
        cells.batches.push_back(batch);
        cells.ripe += static_cast<std::int32_t>(std::lround(timeline->counts.ripe));
        cells.toNucs += cellsForNucs(snapshot, batch, *timeline);
        cells.placed += placed[i];
    }
    auto recorded = recordedByDay(nucs.sides);
    std::vector<CellsDay> all;
    for (auto& [day, cells] : days) {
        const auto index = static_cast<std::size_t>((day - season.first).count());
        for (const auto& yard : nucs.yards) cells.numbers += yard.days[index].numbers;
        cells.numbers.ready += recorded[day.time_since_epoch().count()];
        all.push_back(std::move(cells));
    }
    return all;
}

}  // namespace

NucOutlook nucOutlook(const Snapshot& snapshot, const Timelines& timelines) {
    NucOutlook nucs;
    nucs.sides = storedSides(snapshot, timelines, nucs.stays);
    for (auto& side : nucs.sides) divide(side, snapshot.facts());
    const auto placed = placeByFirstFit(nucs.sides, snapshot, timelines);
    nucs.yards = yardOutlooks(snapshot, timelines, nucs.sides);
    nucs.cellsDays = cellsDaysOf(snapshot, timelines, placed, nucs);
    return nucs;
}

}  // namespace tenthday
