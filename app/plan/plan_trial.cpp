#include "plan/plan_trial.h"

#include <algorithm>

#include "planning/adopt.h"
#include "screen_text/plan_text.h"

namespace tenthday {
namespace {

/// Of rows that are never kept; the book's own ids are made in its thread.
IdSource passingIds() {
    return [next = std::uint64_t{0}]() mutable { return Uuid{~std::uint64_t{1}, ++next}; };
}

/// The same warning, whatever number it has come to.
bool isSame(const Finding& one, const Finding& other) {
    return one.kind == other.kind && one.subject == other.subject &&
           one.severity == other.severity && one.day == other.day && one.builder == other.builder;
}

std::vector<Finding> newWarnings(const Outlook& before, const Outlook& after) {
    std::vector<Finding> fresh;
    for (const auto& finding : after.findings) {
        const bool known = std::any_of(before.findings.begin(), before.findings.end(),
                                       [&](const Finding& each) { return isSame(each, finding); });
        if (!known && finding.severity != Severity::Note) fresh.push_back(finding);
    }
    std::stable_sort(fresh.begin(), fresh.end(), [](const Finding& one, const Finding& other) {
        return one.severity > other.severity;
    });
    return fresh;
}

double thickest(const LoadSpan& load) {
    double most = 0;
    for (const auto& part : load.thickness) most = std::max(most, part.cells);
    return most;
}

void addGhost(const ProposedBatch& proposed, const BatchOutlook& batch, ChartProposals& ghosts) {
    const auto label = plan_text::ghost(proposed.graft);
    for (const auto& load : batch.timeline.loads)
        if (load.builder)
            ghosts.loads.push_back(
                {*load.builder, label, load.span.from, load.span.until, thickest(load)});
    const DayWindow held{batch.timeline.hold.transferDay, batch.timeline.hold.catchDay};
    for (const auto& [yard, cells] : proposed.shares)
        ghosts.stays.push_back({yard, label, held, cells});
}

}  // namespace

Result<PlanTrial> tryPlan(const Outlook& outlook, const std::vector<ProposedBatch>& batches) {
    auto answer = recheckPlan(outlook, batches);
    if (!answer) return answer.error();
    PlanTrial trial;
    trial.answer = std::move(answer).value();
    const auto adopted = adoptNamed(outlook.snapshot, trial.answer.batches, passingIds());
    if (!adopted) return adopted.error();
    const auto season = applied(outlook.snapshot, adopted.value().changes);
    if (!season) return season.error();
    OutlookMemo memo;
    trial.outlook = outlookOf(season.value(), memo);
    trial.batches = adopted.value().batches;
    trial.warnings = newWarnings(outlook, *trial.outlook);
    return trial;
}

ChartProposalsPtr ghostsOf(const PlanTrial& trial) {
    if (trial.batches.empty()) return nullptr;
    auto ghosts = std::make_shared<ChartProposals>();
    for (std::size_t i = 0; i < trial.batches.size(); ++i)
        if (const auto* batch = trial.outlook->find(trial.batches[i]))
            addGhost(trial.answer.batches[i], *batch, *ghosts);
    return ghosts;
}

}  // namespace tenthday
