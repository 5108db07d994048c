#include "support/property.h"

#include <gtest/gtest-spi.h>
#include <gtest/gtest.h>

namespace tenthday {
namespace {

// A property that does not hold fails its test and names the smallest case.
TEST(Property, TheSmallestFailingCaseIsTold) {
    testing::TestPartResultArray told;
    {
        const testing::ScopedFakeTestPartResultReporter caught(
            testing::ScopedFakeTestPartResultReporter::INTERCEPT_ONLY_CURRENT_THREAD, &told);
        test::holdsFor(50, [] {
            const int drawn = test::drawnBelow(1000);
            EXPECT_LT(drawn, 17) << "drawn " << drawn;
        });
    }
    ASSERT_EQ(told.size(), 1);
    EXPECT_NE(std::string(told.GetTestPartResult(0).message()).find("drawn 17"), std::string::npos)
        << told.GetTestPartResult(0).message();
}

TEST(Property, EveryCaseIsTried) {
    int cases = 0;
    int sum = 0;
    test::holdsFor(40, [&] {
        ++cases;
        sum += test::drawnBelow(10);
    });
    EXPECT_EQ(cases, 40);
    EXPECT_GT(sum, 100) << "draws are spread from the first case on";
    EXPECT_LT(sum, 260);
}

}  // namespace
}  // namespace tenthday
