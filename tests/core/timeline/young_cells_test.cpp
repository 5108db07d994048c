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

/// Ten nucs, a batch of four grafts of which three are started, so many of them given on day 3.
OutlookPtr givenOnDayThree(int cells, std::string_view restOn = {}) {
    SeasonMaker maker("2027-05-11");
    maker.yard("East").builder("Box", "East");
    for (int i = 1; i <= 10; ++i)
        maker.box("N" + std::to_string(i), "East", "7", "2027-04-01")
            .stock("N" + std::to_string(i) + "/-", "2027-05-10");
    maker.batch("1", "2027-05-10", 14, 4, "Box");
    for (int i = 1; i <= cells; ++i)
        maker.place("1", "N" + std::to_string(i) + "/-", "2027-05-13", false);
    if (!restOn.empty()) maker.place("1", "N10/-", restOn, false);
    return maker.outlook();
}

TEST(YoungCells, PlacedAllBeforeSealingCountTheSame) {
    const auto outlook = givenOnDayThree(3);
    EXPECT_NEAR(outlook->batches[0]->timeline.hold.layingShare, .95 * .88 * .80, 1e-9);
    EXPECT_EQ(outlook->batches[0]->timeline.find(Event::FirstOut), nullptr);
}

TEST(YoungCells, APartGivenLeavesTheRestInItsBoxWithAllItsDangers) {
    for (const char* rest : {"", "2027-05-24"}) {
        const auto outlook = givenOnDayThree(1, rest);
        const auto& line = outlook->batches[0]->timeline;
        EXPECT_NE(line.find(Event::FirstOut), nullptr) << rest;
        EXPECT_NEAR(line.hold.layingShare, .88 * .80, 1e-9);
        EXPECT_EQ(line.hold.transferDay, *rest ? day("2027-05-24") : day("2027-05-20"));
        std::map<Day, int> cells;
        for (const auto& is : outlook->nucs.cellsDays) cells[is.day] = is.toNucs;
        EXPECT_EQ(cells[day("2027-05-13")], 1);
        EXPECT_EQ(cells[line.hold.transferDay], 2);
        const bool told =
            std::any_of(outlook->findings.begin(), outlook->findings.end(),
                        [](const auto& f) { return f.kind == FindingKind::QueenOutBeforeMove; });
        EXPECT_EQ(told, *rest != 0);
    }
}

}  // namespace
}  // namespace tenthday
