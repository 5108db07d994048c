/// @file loads.h  A batch's stays in builders, step by step, with the cells that stand there.
#pragma once
#include "timeline/batch_timeline.h"

namespace tenthday {

/// Share of a bar's grafts that are started: less in a dearth without feed (S83).
[[nodiscard]] double acceptedShare(const BatchInputs& inputs, std::int32_t bar);

/// Expected or seen counts of each bar, in the order of inputs.bars; their sum is the batch's.
[[nodiscard]] std::vector<ChainCounts> barCounts(const BatchInputs& inputs, Given given);

/// Stays in the order of steps, then builders. Bars without a builder at a step share one stay.
[[nodiscard]] std::vector<LoadSpan> loadsOf(const BatchInputs& inputs, const BatchDates& dates,
                                            const std::vector<ChainCounts>& bars);

}  // namespace tenthday
