#include "support/large_season.h"

#include <gtest/gtest.h>

namespace tenthday::test {
namespace {

TEST(LargeSeason, HasTheSizeAskedForAndIsTheSameEveryTime) {
    const auto season = largeSeason({40, 400});
    EXPECT_EQ(season.all<Batch>().size(), 40U);
    EXPECT_EQ(season.all<NucSide>().size(), 400U);
    EXPECT_TRUE(season.sameContent(largeSeason({40, 400})));
}

TEST(LargeSeason, IsUnderWay) {
    const auto season = largeSeason({40, 400});
    std::size_t caught = 0;
    for (const auto& outcome : season.all<Outcome>()) {
        EXPECT_LT(outcome->day, season.today());
        caught += outcome->kind == OutcomeKind::Catch;
    }
    EXPECT_GT(season.all<Placement>().size(), 150U);
    EXPECT_GT(caught, 20U);
    EXPECT_LT(caught, season.all<Placement>().size());
    EXPECT_GT(season.find(largeSeasonBatch(39))->day, season.today());
}

}  // namespace
}  // namespace tenthday::test
