#include "chart/load_troubles.h"

#include "chart/builder_row.h"

namespace tenthday {

LoadTroubles::LoadTroubles(const std::vector<Finding>& findings) : findings_(findings) {
    for (std::size_t i = 0; i < findings.size(); ++i) {
        const auto& finding = findings[i];
        if (finding.severity == Severity::Note || finding.kind == FindingKind::TooManyCells)
            continue;
        if (const auto* batch = std::get_if<Id<Batch>>(&finding.subject))
            ofBatch_[*batch].push_back(static_cast<int>(i));
        if (const auto* builder = std::get_if<Id<Builder>>(&finding.subject))
            ofBuilder_[*builder].push_back(static_cast<int>(i));
    }
}

int LoadTroubles::worst(const BuilderRow& row, const BuilderLoad& load) const {
    int worst = -1;
    const auto take = [&](int index) {
        const auto severity = [&](int i) {
            return findings_[static_cast<std::size_t>(i)].severity;
        };
        if (worst < 0 || severity(index) > severity(worst) ||
            (severity(index) == severity(worst) && index < worst))
            worst = index;
    };
    const auto* builder = row.builder ? row.builder->builder.get() : nullptr;
    if (const auto at = ofBatch_.find(load.batch); at != ofBatch_.end())
        for (const int i : at->second) {
            const auto& where = findings_[static_cast<std::size_t>(i)].builder;
            if (!where || !builder || *where == builder->id) take(i);
        }
    if (!builder) return worst;
    if (const auto at = ofBuilder_.find(builder->id); at != ofBuilder_.end())
        for (const int i : at->second)
            if (load.span->span.days().contains(findings_[static_cast<std::size_t>(i)].day))
                take(i);
    return worst;
}

}  // namespace tenthday
