/// @file counted_bars.h  The bars of a batch with what was counted of them. Inner to the room.
#pragma once
#include <vector>

#include "losses/batch_losses.h"
#include "records/snapshot.h"
#include "timeline/batch_timeline.h"

namespace tenthday {

/// One bar, counted and expected.
struct CountedBar {
    Ptr<BatchBar> bar;
    bool isHungry = false;     ///< rears in a dearth without feed
    double acceptedShare = 0;  ///< by the facts
    SeenCounts seen;           ///< whole numbers; those of the whole batch dealt to its bars
    ChainCounts expected;      ///< or seen
};

struct CountedBars {
    Given given = Given::Sealed;
    std::vector<CountedBar> bars;  ///< by number
};

[[nodiscard]] CountedBars countedBars(const Snapshot& snapshot, const Ptr<Batch>& batch,
                                      const BatchTimeline& timeline);

}  // namespace tenthday
