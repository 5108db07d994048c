#include "plan/event_brake.h"

#include <gtest/gtest.h>

namespace tenthday::test {
namespace {

TEST(EventBrake, LetsSomeTenASecondThroughHoweverManyCome) {
    EventBrake brake;
    int through = 0;
    for (int ms = 0; ms < 1000; ++ms) through += brake.lets(ms);
    EXPECT_EQ(through, 10);
    EXPECT_TRUE(EventBrake().lets(5)) << "the first is never kept back";
}

TEST(EventBrake, LetsAllThroughThatComeSeldom) {
    EventBrake brake;
    for (int ms = 0; ms < 1000; ms += 100) EXPECT_TRUE(brake.lets(ms)) << ms;
}

}  // namespace
}  // namespace tenthday::test
