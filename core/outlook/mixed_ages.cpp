#include "outlook/mixed_ages.h"

#include <algorithm>

namespace tenthday {
namespace {

bool overlap(const MomentSpan& a, const MomentSpan& b) {
    return a.from < b.until && b.from < a.until;
}

}  // namespace

std::optional<OldestCells> oldestCells(const Outlook& outlook, Id<Builder> builder,
                                       Id<Batch> batch) {
    const auto at = std::find_if(outlook.builders.begin(), outlook.builders.end(),
                                 [&](const auto& one) { return one.builder->id == builder; });
    if (at == outlook.builders.end()) return std::nullopt;
    const auto& loads = at->loads;
    std::optional<OldestCells> oldest;
    bool mixed = false;
    for (const auto& load : loads) {
        const bool isWith = std::any_of(loads.begin(), loads.end(), [&](const auto& own) {
            return own.batch == batch && overlap(own.span->span, load.span->span);
        });
        if (!isWith) continue;
        mixed = mixed || load.batch != batch;
        const auto* line = outlook.find(load.batch);
        if (line == nullptr || line->timeline.latestMove == Moment::max()) continue;
        if (!oldest || line->timeline.latestMove < oldest->latestMove)
            oldest = OldestCells{load.batch, line->timeline.latestMove};
    }
    return mixed ? oldest : std::nullopt;
}

}  // namespace tenthday
