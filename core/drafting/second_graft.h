/// @file second_graft.h  Another graft into the builders of a batch: cups that were not started
/// topped up, or a whole graft as insurance.
#pragma once
#include "drafting/batch_draft.h"

namespace tenthday {

/// Cups whose larvae were not started, to be grafted anew.
struct TopUp {
    Cells cups;
    Day by;  ///< at the latest: later the cells of one box are too far apart (fact top_up_by_h)
};
/// Of a batch that was grafted, and whose started cells were counted up to that day: by +2 (common
/// practice). None where all were started, nothing was counted in time, or that day is over.
[[nodiscard]] std::optional<TopUp> topUpOf(const Snapshot& snapshot, Id<Batch> batch);

/// A graft as insurance can be planned beside a batch that is grafted no longer ago than a top-up
/// would be, or is still to be.
[[nodiscard]] bool canInsure(const Snapshot& snapshot, Id<Batch> batch);

/// A batch of its own, for its queens are younger: today's graft of so many cups on the batch's
/// first bar, into the same builders, without a make-up. The box goes by the oldest of its cells.
[[nodiscard]] BatchDraft topUpDraft(const Snapshot& snapshot, Id<Batch> batch, const TopUp& topUp,
                                    Id<Batch> fresh);
/// The whole batch once more, the day after its graft and not before today, without a make-up.
[[nodiscard]] BatchDraft insuranceDraft(const Snapshot& snapshot, Id<Batch> batch, Id<Batch> fresh);

}  // namespace tenthday
