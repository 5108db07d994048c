#include "records/relations.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

TEST(Relations, ABoxStandsWhereItsLastStayPutsIt) {
    test::SeasonMaker maker;
    maker.yard("East").box("N1", "East", "3+3", "2027-05-01");
    const auto snapshot = maker.snapshot();
    const auto box = (*snapshot.all<Box>().begin())->id;
    EXPECT_FALSE(yardOn(snapshot, box, day("2027-04-30")));
    EXPECT_EQ(yardOn(snapshot, box, day("2027-05-01")), maker.yardId("East"));
    EXPECT_EQ(yardOn(snapshot, box, day("2028-02-29")), maker.yardId("East"));
}

TEST(Relations, ANucIsNamedByItsBoxAndSide) {
    Box box;
    box.label = "Q18";
    NucSide side;
    side.side = "A";
    EXPECT_EQ(nucName(box, side), "Q18 A");
    side.side = "-";
    EXPECT_EQ(nucName(box, side), "Q18");
}

TEST(Relations, AMakeUpServesAGraftWithinFourDays) {
    const Day made = day("2027-06-10");
    EXPECT_FALSE(isMadeUpFor(made, day("2027-06-09")));
    EXPECT_TRUE(isMadeUpFor(made, made));
    EXPECT_TRUE(isMadeUpFor(made, day("2027-06-14")));
    EXPECT_FALSE(isMadeUpFor(made, day("2027-06-15")));
}

}  // namespace
}  // namespace tenthday
