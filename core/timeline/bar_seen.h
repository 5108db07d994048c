/// @file bar_seen.h  What was counted of each bar of a batch.
#pragma once
#include "timeline/batch_timeline.h"

namespace tenthday {

/// By bar, in the order of inputs.bars.
struct BarsSeen {
    std::vector<ChainCounts> counts;  ///< seen or expected
    /// Counted: of the bar itself; else its part of a count of the whole batch that is not older
    /// (see countedOf), in proportion to what was expected, so not whole.
    std::vector<SeenCounts> seen;
};
[[nodiscard]] BarsSeen barsSeen(const BatchInputs& inputs, Given given);

}  // namespace tenthday
