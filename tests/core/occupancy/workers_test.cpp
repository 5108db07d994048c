#include "occupancy/workers.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;

TEST(Workers, Are300ACell) {  // S77, quoting Laidlaw & Page
    EXPECT_EQ(workersFor(Cells{20}, Facts()).workers, 6'000);
    EXPECT_EQ(workersFor(Cells{45}, Facts()).workers, 13'500);
    EXPECT_EQ(workersFor(Cells{60}, Facts()).workers, 18'000);
    EXPECT_EQ(workersFor(Cells{0}, Facts()).workers, 0);
}

TEST(Workers, FollowTheFactWhereItIsChanged) {
    test::SeasonMaker maker;
    const auto fact = test::with(maker.snapshot(),
                                 FactOverride{test::id<FactOverride>(1), 1,
                                              std::string(token(Fact::WorkersPerCell)), 400'000});
    EXPECT_EQ(workersFor(Cells{20}, fact.facts()).workers, 8'000);
}

TEST(Workers, ComeOnWholeFrames) {  // 1,600 to 2,000 on a full deep frame: common practice
    EXPECT_EQ(workersFor(Cells{20}, Facts()).fewest, Frames{3});
    EXPECT_EQ(workersFor(Cells{20}, Facts()).most, Frames{4});
    EXPECT_EQ(workersFor(Cells{0}, Facts()).most, Frames{0});
}

test::SeasonMaker season() {
    test::SeasonMaker maker("2027-06-01");
    maker.yard("East").builder("Box", "East").builder("Other", "East");
    maker.batch("1", "2027-06-10", 14, 15, "Box").bar("1", 2, 12, "Box").bar("1", 3, 9, "Other");
    maker.batch("2", "2027-06-10", 16, 5, "Box").batch("3", "2027-06-12", 14, 40, "Box");
    return maker;
}

TEST(Served, AreAllBarsOfTheFirstGraftDayThatStandThere) {
    const auto maker = season();
    const auto served = servedBy(maker.snapshot(), maker.builderId("Box"), day("2027-06-09"));
    EXPECT_EQ(served.batches.size(), 2U);
    EXPECT_EQ(served.graft, day("2027-06-10"));
    EXPECT_EQ(served.cells, Cells{15 + 12 + 5});
}

TEST(Served, IsNothingFiveDaysBeforeOrAfterTheLast) {
    const auto maker = season();
    EXPECT_TRUE(
        servedBy(maker.snapshot(), maker.builderId("Box"), day("2027-06-05")).batches.empty());
    const auto none = servedBy(maker.snapshot(), maker.builderId("Box"), day("2027-06-13"));
    EXPECT_TRUE(none.batches.empty());
    EXPECT_EQ(none.cells, Cells{0});
}

}  // namespace
}  // namespace tenthday
