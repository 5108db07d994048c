// What the times of ticks teach, and what they do not.
#include "tasks/learned_times.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

std::vector<TickTime> ticksEvery(std::int64_t seconds, int count) {
    std::vector<TickTime> ticks{{TaskRule::Own, day("2027-06-01"), 0}};
    for (int i = 1; i <= count; ++i)
        ticks.push_back({TaskRule::CatchQueens, day("2027-06-01"), i * seconds});
    return ticks;
}

TEST(LearnedTimes, TheGapBeforeATickIsTheTasksTime) {
    const auto learned = learnedTimes(ticksEvery(40 * 60, 6));
    ASSERT_EQ(learned.size(), 1U);
    EXPECT_EQ(learned[0].rule, TaskRule::CatchQueens);
    EXPECT_EQ(learned[0].minutes, 40);
    EXPECT_EQ(learned[0].gaps, 6);
}

TEST(LearnedTimes, TicksOfOneEveningFewOnesAndOtherDaysTeachNothing) {
    EXPECT_TRUE(learnedTimes(ticksEvery(20, 50)).empty()) << "entered together";
    EXPECT_TRUE(learnedTimes(ticksEvery(40 * 60, kLeastGaps - 1)).empty()) << "too few";
    auto ticks = ticksEvery(40 * 60, 8);
    for (std::size_t i = 0; i < ticks.size(); ++i) ticks[i].day += Days{static_cast<int>(i)};
    EXPECT_TRUE(learnedTimes(ticks).empty()) << "each of another day";
    EXPECT_TRUE(learnedTimes(ticksEvery(300 * 60, 8)).empty()) << "half a day between";
}

TEST(LearnedTimes, ARareBreakDoesNotCount) {
    auto ticks = ticksEvery(10 * 60, 7);
    for (std::size_t i = 4; i < ticks.size(); ++i) ticks[i].second += 90 * 60;
    EXPECT_EQ(learnedTimes(ticks)[0].minutes, 10);
}

}  // namespace
}  // namespace tenthday
