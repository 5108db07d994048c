// Unsealed cells given to the nucs on day 3 (published French practice).
#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

SeasonMaker young() {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East");
    for (int i = 1; i <= 10; ++i)
        maker.box("N" + std::to_string(i), "East", "7", "2027-04-01")
            .stock("N" + std::to_string(i) + "/-", "2027-05-10");
    maker.batch("1", "2027-05-10", 14, 20, "Box", "one box, young cells");
    return maker;
}

TEST(YoungCells, GoOutOnDayThreeAsTheyWereStarted) {
    const auto maker = young();
    const auto outlook = maker.outlook();
    const auto& line = outlook->find(maker.batchId("1"))->timeline;
    EXPECT_EQ(line.hold.transferDay, day("2027-05-13"));
    EXPECT_NEAR(line.counts.ripe, 20 * .75, 1e-9);  // started, sealing is still to come
    EXPECT_NEAR(line.counts.emerged, 20 * .75 * .95 * .88, 1e-9);
    EXPECT_NEAR(line.hold.layingShare, .95 * .88 * .80, 1e-9);
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 1U);
    EXPECT_EQ(outlook->nucs.cellsDays[0].ripe, 15);
}

TEST(YoungCells, HangAloneSoNoFirstQueenIsFeared) {
    const auto maker = young();
    const auto outlook = maker.outlook();
    const auto& line = outlook->find(maker.batchId("1"))->timeline;
    for (const auto event : {Event::CageFrom, Event::LatestMove, Event::FirstOut})
        EXPECT_EQ(line.find(event), nullptr);
    EXPECT_NE(line.find(Event::FragileFrom), nullptr);  // the nuc must not be shaken then
    for (const auto& finding : outlook->findings) {
        EXPECT_NE(finding.kind, FindingKind::FragileMove);
        EXPECT_NE(finding.kind, FindingKind::QueenOutBeforeMove);
    }
}

TEST(YoungCells, EmergeOnTheSameDayAsTheOthers) {
    const auto maker = young();
    SeasonMaker ripe("2027-05-01");
    ripe.yard("East").builder("Box", "East").batch("1", "2027-05-10", 14, 20, "Box");
    const auto youngs = maker.outlook();
    const auto ripes = ripe.outlook();
    EXPECT_EQ(youngs->find(maker.batchId("1"))->timeline.find(Event::Emergence)->likely,
              ripes->find(ripe.batchId("1"))->timeline.find(Event::Emergence)->likely);
}

TEST(YoungCells, RecordedPlacementsBeforeSealingCountTheSame) {
    SeasonMaker maker("2027-05-14");
    maker.yard("East").builder("Box", "East").box("N1", "East", "7", "2027-04-01");
    maker.stock("N1/-", "2027-05-10").batch("1", "2027-05-10", 14, 4, "Box");
    maker.place("1", "N1/-", "2027-05-13", true);
    const auto outlook = maker.outlook();
    const auto& line = outlook->find(maker.batchId("1"))->timeline;
    EXPECT_NEAR(line.hold.layingShare, .95 * .88 * .80, 1e-9);
}

}  // namespace
}  // namespace tenthday
