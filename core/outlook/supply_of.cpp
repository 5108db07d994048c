#include "outlook/supply_of.h"

namespace tenthday {

SeasonSupply supplyOf(const Outlook& outlook) {
    Timelines timelines;
    timelines.reserve(outlook.batches.size());
    for (const auto& batch : outlook.batches)
        timelines.emplace_back(batch->batch->id, &batch->timeline);
    return {outlook.snapshot, timelines, outlook.nucs, *outlook.mating};
}

}  // namespace tenthday
