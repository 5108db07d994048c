#include "planning/adopt.h"

#include "drafting/batch_draft.h"
#include "records/edit_sequence.h"

namespace tenthday {
namespace {

BatchDraft draftFor(const Snapshot& snapshot, const ProposedBatch& proposed, Id<Batch> id) {
    auto draft = newDraft(snapshot, proposed.graft, id);
    if (draft.start != Start::Graft) {
        draft.start = Start::Graft;
        draft.larvaFromH.reset();
        draft.larvaToH.reset();
    }
    draft.day = proposed.graft;
    draft.method = proposed.method;
    draft.mating = Mating::Open;
    draft.catchRule.reset();
    draft.note.clear();
    draft.stays.clear();
    draft.bars.clear();
    draft.shares.clear();
    for (const auto& bar : proposed.bars)
        draft.bars.push_back({0, bar.breeder, Cells{bar.grafts}, bar.builders, std::nullopt});
    for (const auto& [yard, cells] : proposed.shares) draft.shares.emplace_back(yard, Cells{cells});
    return draft;
}

/// Ripe cells planned to go elsewhere than into nucs.
ChangeSet elsewhere(const ProposedBatch& proposed, Id<Batch> batch, const IdSource& newId) {
    ChangeSet changes;
    const auto add = [&](CellTarget target, std::int32_t cells) {
        for (std::int32_t i = 0; i < cells; ++i) {
            Placement placement;
            placement.id = {newId()};
            placement.batch = batch;
            placement.target = target;
            placement.day = proposed.cellsDay;
            changes.add(placement);
        }
    };
    add(CellTarget::Sold, proposed.sold);
    add(CellTarget::Caged, proposed.caged);
    return changes;
}

}  // namespace

Result<Adopted> adoptNamed(const Snapshot& snapshot, std::span<const ProposedBatch> batches,
                           const IdSource& newId) {
    EditSequence edits(snapshot);
    Adopted adopted;
    std::string labels;
    for (const auto& proposed : batches) {
        const Id<Batch> id{newId()};
        const auto draft = draftFor(edits.snapshot(), proposed, id);
        if (auto done = edits.add(changesOf(edits.snapshot(), draft, {}, newId)); !done)
            return done.error();
        if (auto done = edits.add(elsewhere(proposed, id, newId)); !done) return done.error();
        labels += (labels.empty() ? "" : ", ") + draft.label;
        adopted.batches.push_back(id);
    }
    adopted.changes = edits.changes(Verb::PlanSeason, labels, std::nullopt);
    return adopted;
}

Result<ChangeSet> adopt(const Snapshot& snapshot, std::span<const ProposedBatch> batches,
                        const IdSource& newId) {
    auto adopted = adoptNamed(snapshot, batches, newId);
    if (!adopted) return adopted.error();
    return std::move(adopted.value().changes);
}

}  // namespace tenthday
