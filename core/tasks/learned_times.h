/// @file learned_times.h  What the times of ticks teach about the length of tasks.
#pragma once
#include <cstdint>
#include <span>
#include <vector>

#include "calendar/day.h"
#include "records/kinds.h"

namespace tenthday {

/// A tick as the book's log of changes has it.
struct TickTime {
    TaskRule rule{};
    Day day;                  ///< on which the task was done
    std::int64_t second = 0;  ///< of the tick itself, on any clock that does not jump
};

struct LearnedTime {
    TaskRule rule{};
    std::int32_t minutes = 0;  ///< median
    std::int32_t gaps = 0;     ///< that speak for it, kLeastGaps or more
};
inline constexpr std::int32_t kLeastGaps = 5;

/// Where one ticks at work, the time since the tick before is what the task took, its way there
/// with it. So of two ticks in a row, for the same day, 3 to 240 minutes apart, the gap speaks for
/// the second; ticks entered together in the evening are closer and teach nothing. Breaks count as
/// work, which the median bears where they are rare. By rule, in the order of TaskRule.
/// @param ticks  in the order of their seconds
[[nodiscard]] std::vector<LearnedTime> learnedTimes(std::span<const TickTime> ticks);

}  // namespace tenthday
