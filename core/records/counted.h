/// @file counted.h  What was counted of a batch at one stage: by bar, or of the whole batch at
/// once.
#pragma once
#include <optional>
#include <span>

#include "records/rows.h"
#include "records/table.h"

namespace tenthday {

/// The newest count of a stage: of one bar, or of the whole batch where `bar` is empty; of one day
/// the last. Null where there is none.
[[nodiscard]] Ptr<Outcome> newestCount(std::span<const Ptr<Outcome>> outcomes, OutcomeKind kind,
                                       std::optional<std::int32_t> bar);

/// Cells of a whole batch at a stage.
struct Counted {
    std::int32_t cells = 0;
    bool byBar = false;  ///< the sum of its bars
};
/// The newest count that speaks for the whole batch. A count of the whole is in place of its bars'
/// of that day and before; bars add up where each was counted after it. Nothing where only some
/// bars were counted.
/// @param outcomes  of the batch
/// @param bars      of the batch, all of them
[[nodiscard]] std::optional<Counted> countedOf(std::span<const Ptr<Outcome>> outcomes,
                                               std::span<const Ptr<BatchBar>> bars,
                                               OutcomeKind kind);

}  // namespace tenthday
