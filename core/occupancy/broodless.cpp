#include "occupancy/broodless.h"

#include <algorithm>

#include "occupancy/brood_run.h"

namespace tenthday {
namespace {

std::vector<BroodGiven> broodOf(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    std::vector<BroodGiven> all;
    for (const auto& row : outlook.makeUps)
        all.push_back({row->day, row->day, row->openBrood, row->broodFrames != Frames{0}});
    for (const auto& note : snapshot.all<BuilderNote>().of(outlook.builder->id.uuid))
        if (note->kind == BuilderNoteKind::BroodIn && note->day >= outlook.makeUps.front()->day)
            all.push_back({note->day, note->day, note->openBrood, true});
    std::stable_sort(all.begin(), all.end(),
                     [](const auto& a, const auto& b) { return a.from < b.from; });
    return all;
}

}  // namespace

std::vector<BroodlessSpan> broodlessSpans(const Snapshot& snapshot, const BuilderOutlook& outlook) {
    if (outlook.makeUps.empty() || !outlook.builder) return {};
    const Days worker{static_cast<int>(snapshot.facts()[Fact::WorkerD])};
    return spansBetween(broodOf(snapshot, outlook), worker, outlook.builder->until);
}

}  // namespace tenthday
