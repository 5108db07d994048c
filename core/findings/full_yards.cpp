#include "findings/full_yards.h"

#include <algorithm>
#include <unordered_map>

#include "occupancy/ripe_for_nucs.h"

namespace tenthday {
namespace {

using PerYard = std::vector<std::pair<Id<Yard>, std::int32_t>>;

std::int32_t& in(PerYard& cells, Id<Yard> yard) {
    for (auto& [id, count] : cells)
        if (id == yard) return count;
    return cells.emplace_back(yard, 0).second;
}

/// A batch that names yards for cells that are still to come.
struct Planned {
    Id<Batch> batch;
    const BatchTimeline* timeline;
    PerYard named;  ///< nucs that stored placements name, by where they stand then
    PerYard found;  ///< those that first fit gives a cell of it, likewise
};

/// Counts the nucs of those batches.
void countPlaced(const NucOutlook& nucs, Day today, std::vector<Planned>& planned) {
    std::unordered_map<Id<Batch>, Planned*> byBatch;
    for (auto& batch : planned) byBatch[batch.batch] = &batch;
    for (const auto& side : nucs.sides)
        for (const auto& round : side.rounds) {
            if (round.timeline->hold.transferDay < today)
                continue;  // none of them: most, and quick
            const auto at = byBatch.find(round.batch);
            if (at == byBatch.end()) continue;
            if (const auto yard = side.yardOn(round.transferDay))
                ++in(round.named ? at->second->named : at->second->found, *yard);
        }
}

}  // namespace

std::vector<Finding> fullYards(const Snapshot& snapshot, const Timelines& timelines,
                               const NucOutlook& nucs) {
    std::vector<Finding> found;
    std::vector<Planned> planned;
    for (const auto& [id, timeline] : timelines)
        if (timeline->hold.transferDay >= snapshot.today() &&
            !snapshot.all<BatchShare>().of(id.uuid).empty())
            planned.push_back({id, timeline, {}, {}});
    if (planned.empty()) return found;
    countPlaced(nucs, snapshot.today(), planned);
    for (auto& [id, timeline, named, given] : planned) {
        std::vector<std::pair<Ptr<Yard>, std::int32_t>> shares;
        for (const auto& share : snapshot.all<BatchShare>().of(id.uuid))
            if (auto yard = snapshot.find(share->yard))
                shares.emplace_back(std::move(yard), share->cells.value);
        std::stable_sort(shares.begin(), shares.end(), [](const auto& a, const auto& b) {
            return a.first->driveOrder != b.first->driveOrder
                       ? a.first->driveOrder < b.first->driveOrder
                       : a.first->id < b.first->id;
        });
        // As first fit does: what is named has its nuc. Where fewer cells ripen than are planned,
        // the last yards on the way want fewer.
        auto left = ripeForNucs(snapshot, id, *timeline);
        for (const auto& [yard, count] : named) left -= count;
        for (const auto& [yard, cells] : shares) {
            const auto there = in(named, yard->id);
            const auto wanted = std::clamp(left, 0, std::max(cells - there, 0));
            const auto got = in(given, yard->id);
            left -= std::min(wanted, got);
            if (got >= wanted) continue;
            Finding finding;
            finding.kind = FindingKind::YardFull;
            finding.severity = Severity::Warning;
            finding.day = timeline->hold.transferDay;
            finding.moment = timeline->hold.transfer;
            finding.subject = id;
            finding.subjectLabel = snapshot.find(id)->label;
            finding.otherLabel = yard->label;
            finding.count = there + wanted;
            finding.limit = there + got;
            found.push_back(std::move(finding));
        }
    }
    return found;
}

}  // namespace tenthday
