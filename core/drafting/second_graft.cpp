#include "drafting/second_graft.h"

#include <algorithm>

namespace tenthday {
namespace {

Day topUpBy(const Snapshot& snapshot, const Batch& batch) {
    const auto hours = static_cast<int>(snapshot.facts()[Fact::TopUpByH]);
    return graftedOrPlanned(snapshot, batch) + Days{hours / 24};
}

/// What both have alike: the batch's own draft as a further one.
BatchDraft further(const Snapshot& snapshot, Id<Batch> batch, Day graft, Id<Batch> fresh) {
    auto draft = draftOf(snapshot, batch);
    draft.id = fresh;
    draft.label = nextLabel(snapshot);
    draft.start = Start::Graft;
    draft.day = graft;
    draft.note.clear();
    draft.makeUp = MakeUpPlan::None;  // it is made up already
    for (auto& bar : draft.bars) bar.number = 0, bar.taken.reset();
    for (auto& stay : draft.stays) stay.id = {};
    return draft;
}

}  // namespace

std::optional<TopUp> topUpOf(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    if (!batch || !hasGraft(batch->start) || !isGrafted(snapshot, id)) return std::nullopt;
    const Day by = topUpBy(snapshot, *batch);
    if (snapshot.today() > by) return std::nullopt;
    const auto bars = snapshot.all<BatchBar>().of(id.uuid);
    TopUp topUp{Cells{0}, by};
    for (const auto& bar : bars) {
        const auto count = takeCountOf(snapshot, id, bar->bar, bars.size() == 1);
        if (count && count->count && count->day <= by)
            topUp.cups += Cells{std::max(0, bar->cells.value - count->count->value)};
    }
    return topUp.cups > Cells{0} ? std::optional(topUp) : std::nullopt;
}

bool canInsure(const Snapshot& snapshot, Id<Batch> id) {
    const auto batch = snapshot.find(id);
    return batch && hasGraft(batch->start) && snapshot.today() <= topUpBy(snapshot, *batch);
}

BatchDraft topUpDraft(const Snapshot& snapshot, Id<Batch> batch, const TopUp& topUp,
                      Id<Batch> fresh) {
    auto draft = further(snapshot, batch, snapshot.today(), fresh);
    draft.bars.resize(std::min<std::size_t>(draft.bars.size(), 1));
    for (auto& bar : draft.bars) bar.cells = topUp.cups;
    draft.shares.clear();
    return draft;
}

BatchDraft insuranceDraft(const Snapshot& snapshot, Id<Batch> id, Id<Batch> fresh) {
    const Day next = graftedOrPlanned(snapshot, *snapshot.find(id)) + Days{1};
    return further(snapshot, id, std::max(next, snapshot.today()), fresh);
}

}  // namespace tenthday
