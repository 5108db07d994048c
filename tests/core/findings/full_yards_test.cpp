// Cells planned for a yard without nucs for them stand in another one on the chart: that is told.
#include <gtest/gtest.h>

#include <cmath>

#include "findings/finding.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

/// Mill has four nucs, Hill thirty; thirty grafts are about eighteen ripe cells.
test::SeasonMaker twoYards() {
    test::SeasonMaker maker("2027-05-01");
    maker.yard("Mill", 1).yard("Hill", 2).builder("Box", "Hill");
    for (int i = 1; i <= 34; ++i) {
        const auto label = std::to_string(i);
        maker.box(label, i <= 4 ? "Mill" : "Hill", "7", "2027-04-01");
        maker.stock(label + "/-", "2027-05-15");
    }
    maker.batch("1", "2027-05-20", 12, 30, "Box");
    return maker;
}

std::vector<Finding> told(const test::SeasonMaker& maker, FindingKind kind) {
    std::vector<Finding> found;
    const auto outlook = maker.outlook();
    for (const auto& finding : outlook->findings)
        if (finding.kind == kind) found.push_back(finding);
    return found;
}

std::vector<Finding> fullYardsOf(const test::SeasonMaker& maker) {
    return told(maker, FindingKind::YardFull);
}

TEST(FullYards, WhatFindsNoNucInItsYardIsTold) {
    auto maker = twoYards();
    const auto found = fullYardsOf(maker.share("1", "Mill", 10));
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].severity, Severity::Warning);
    EXPECT_EQ(found[0].subjectLabel, "1");
    EXPECT_EQ(found[0].otherLabel, "Mill");
    EXPECT_EQ(found[0].count, 10);
    EXPECT_EQ(found[0].limit, 4);
    EXPECT_EQ(englishText(found[0]),
              "10 cells are planned for Mill, where 4 nucs are free for them: give fewer there, or "
              "stock more");
}

TEST(FullYards, AYardWithRoomIsNot) {
    auto maker = twoYards();
    EXPECT_TRUE(fullYardsOf(maker.share("1", "Mill", 4)).empty());
    EXPECT_TRUE(fullYardsOf(twoYards()).empty()) << "no yard is named";
}

TEST(FullYards, FewerCellsThanPlannedAreNoFullYard) {
    auto maker = twoYards();
    EXPECT_TRUE(fullYardsOf(maker.share("1", "Hill", 29)).empty()) << "not so many ripen";
}

TEST(FullYards, BatchesThatCameBeforeTakeTheRoom) {
    auto maker = twoYards();
    maker.share("1", "Mill", 4).batch("2", "2027-05-22", 12, 12, "Box").share("2", "Mill", 3);
    const auto found = fullYardsOf(maker);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].subjectLabel, "2");
    EXPECT_EQ(found[0].limit, 0);
}

// Where no yard has room the day's own finding tells it.
TEST(FullYards, TooManyCellsForAllYardsAreToldOnce) {
    auto maker = twoYards();
    maker.batch("2", "2027-05-20", 12, 60, "Box").share("1", "Mill", 10);
    ASSERT_EQ(told(maker, FindingKind::TooManyCells).size(), 1U);
    EXPECT_TRUE(told(maker, FindingKind::YardFull).empty());
}

// What is named elsewhere is not wanted here any more.
TEST(FullYards, CellsNamedForAnotherYardDoNotFillThisOne) {
    auto maker = twoYards();
    maker.share("1", "Hill", 20);
    for (int i = 1; i <= 3; ++i) maker.place("1", std::to_string(i) + "/-", "2027-06-01", false);
    const auto outlook = maker.outlook();
    ASSERT_LT(std::lround(outlook->batches.front()->timeline.counts.ripe), 20 + 3);
    EXPECT_TRUE(fullYardsOf(maker).empty()) << "Hill has room for all that are left";
}

TEST(FullYards, WhatIsNamedCountsAmongThePlanned) {
    auto maker = twoYards();
    maker.share("1", "Mill", 10).place("1", "1/-", "2027-06-01", false);
    const auto found = fullYardsOf(maker);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].count, 10);
    EXPECT_EQ(found[0].limit, 4);
}

// Yards of the same place in the driving order are served as first fit serves them.
TEST(FullYards, YardsOfOneOrderAreServedAsTheyAreFilled) {
    for (const bool reversed : {false, true}) {
        test::SeasonMaker maker("2027-05-01");
        maker.yard("Mill").yard("Hill").builder("Box", "Hill");
        for (int i = 1; i <= 40; ++i) {
            const auto label = std::to_string(i);
            maker.box(label, i <= 20 ? "Mill" : "Hill", "7", "2027-04-01");
            maker.stock(label + "/-", "2027-05-15");
        }
        maker.batch("1", "2027-05-20", 12, 30, "Box");
        maker.share("1", reversed ? "Hill" : "Mill", 12).share("1", reversed ? "Mill" : "Hill", 12);
        EXPECT_TRUE(fullYardsOf(maker).empty()) << "both have room";
    }
}

TEST(FullYards, WhatIsPastIsNotTold) {
    test::SeasonMaker maker("2027-06-20");
    maker.yard("Mill", 1).builder("Box", "Mill").box("1", "Mill", "7", "2027-04-01");
    maker.stock("1/-", "2027-05-15").batch("1", "2027-05-20", 12, 30, "Box").share("1", "Mill", 9);
    EXPECT_TRUE(fullYardsOf(maker).empty());
}

}  // namespace
}  // namespace tenthday
