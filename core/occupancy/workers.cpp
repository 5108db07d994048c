#include "occupancy/workers.h"

#include "records/relations.h"

namespace tenthday {

WorkersWanted workersFor(Cells cells, const Facts& facts) {
    const auto workers = static_cast<std::int32_t>(cells.value * facts[Fact::WorkersPerCell]);
    const auto frames = [&](std::int32_t each) { return Frames{(workers + each - 1) / each}; };
    return {workers, frames(kMostOnFrame), frames(kFewestOnFrame)};
}

Served servedBy(const Snapshot& snapshot, Id<Builder> builder, Day day) {
    MakeUp there;
    there.builder = builder;
    there.day = day;
    Served served{batchesServed(snapshot, there), {}, {}};
    for (const auto& batch : served.batches) {
        served.graft = graftDay(snapshot, *batch);
        for (const auto& load : snapshot.all<BatchLoad>().of(batch->id.uuid))
            for (const auto& bar : snapshot.all<BatchBar>().of(batch->id.uuid))
                if (load->step == 1 && load->builder == builder && load->bar == bar->bar)
                    served.cells += bar->cells;
    }
    return served;
}

}  // namespace tenthday
