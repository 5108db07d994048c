#include "tasks/learned_times.h"

#include <algorithm>
#include <array>

namespace tenthday {
namespace {

constexpr std::int64_t kLeastSeconds = 3 * 60;
constexpr std::int64_t kMostSeconds = 240 * 60;

}  // namespace

std::vector<LearnedTime> learnedTimes(std::span<const TickTime> ticks) {
    std::array<std::vector<std::int64_t>, kTokenCount<TaskRule>> gaps;
    for (std::size_t i = 1; i < ticks.size(); ++i) {
        const auto gap = ticks[i].second - ticks[i - 1].second;
        if (ticks[i].day == ticks[i - 1].day && gap >= kLeastSeconds && gap <= kMostSeconds)
            gaps[static_cast<std::size_t>(ticks[i].rule)].push_back(gap);
    }
    std::vector<LearnedTime> learned;
    for (std::size_t rule = 0; rule < gaps.size(); ++rule) {
        auto& of = gaps[rule];
        if (of.size() < static_cast<std::size_t>(kLeastGaps)) continue;
        std::sort(of.begin(), of.end());
        const auto median = (of[(of.size() - 1) / 2] + of[of.size() / 2]) / 2;
        learned.push_back({static_cast<TaskRule>(rule),
                           static_cast<std::int32_t>((median + 30) / 60),
                           static_cast<std::int32_t>(of.size())});
    }
    return learned;
}

}  // namespace tenthday
