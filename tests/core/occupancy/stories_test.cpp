// Two stories of the trade, told by the numbers that must come out.
#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;
using test::SeasonMaker;

/// Builder dequeened Thu 10 June 17:00 with open brood, grafted Fri 11, cells out Mon 21 9:00.
SeasonMaker wildQueenStory(std::string_view today) {
    SeasonMaker maker(today);
    maker.yard("Home").builder("Box 1", "Home").makeUp("Box 1", "2027-06-10", 17, true);
    maker.batch("7", "2027-06-11", 9, 24, "Box 1");
    return maker;
}

// Hours of first possible wild queens: S118 and derived (facts.md section 5.5).
TEST(WildQueenStory, TheClockTellsWhenAWildQueenCanBeOut) {
    const auto outlook = wildQueenStory("2027-06-12").outlook();
    ASSERT_EQ(outlook->builders.size(), 1U);
    ASSERT_EQ(outlook->builders[0].clocks.size(), 1U);
    const auto& clock = outlook->builders[0].clocks[0];
    EXPECT_EQ(clock.oldest, moment("2027-06-19T17:00"));
    EXPECT_EQ(clock.old, moment("2027-06-20T17:00"));
    EXPECT_EQ(clock.young, moment("2027-06-22T05:00"));
    EXPECT_EQ(clock.firstLook, (DayWindow{day("2027-06-15"), day("2027-06-17")}));
    EXPECT_EQ(clock.secondLook, (DayWindow{day("2027-06-18"), day("2027-06-19")}));
    EXPECT_EQ(outlook->batches[0]->timeline.hold.transfer, moment("2027-06-21T09:00"));
}

std::size_t wildFindings(const Outlook& outlook) {
    std::size_t count = 0;
    for (const auto& finding : outlook.findings)
        count += finding.kind == FindingKind::WildQueenOverdue;
    return count;
}

TEST(WildQueenStory, ALookIsATaskUntilSaturdayNoonThenAFinding) {
    EXPECT_EQ(wildFindings(*wildQueenStory("2027-06-18").outlook()), 0U);
    const auto overdue = wildQueenStory("2027-06-19").outlook();
    ASSERT_EQ(wildFindings(*overdue), 1U);
    const auto& finding = overdue->findings.front();
    EXPECT_EQ(finding.severity, Severity::Danger);
    EXPECT_EQ(finding.subjectLabel, "7");
    EXPECT_NE(englishText(finding).find("look today, or cage the cells in place"),
              std::string::npos)
        << englishText(finding);
}

TEST(WildQueenStory, ATickedSecondLookEndsItAnEarlyOneDoesNot) {
    EXPECT_EQ(wildFindings(*wildQueenStory("2027-06-19").look("Box 1", "2027-06-18").outlook()),
              0U);
    EXPECT_EQ(wildFindings(*wildQueenStory("2027-06-19").look("Box 1", "2027-06-15").outlook()),
              1U);
}

TEST(WildQueenStory, WithoutOpenBroodThereIsNoClock) {
    SeasonMaker maker("2027-06-19");
    maker.yard("Home").builder("Box 1", "Home").makeUp("Box 1", "2027-06-10", 17, false);
    maker.batch("7", "2027-06-11", 9, 24, "Box 1");
    const auto outlook = maker.outlook();
    EXPECT_TRUE(outlook->builders[0].clocks.empty());
    EXPECT_EQ(wildFindings(*outlook), 0U);
}

/// 36 ripe on Mon 14 June; Mill and Home as the story has them.
SeasonMaker readyStory(std::string_view today) {
    SeasonMaker maker(today);
    maker.yard("Mill", 1).yard("Home", 0).builder("Box 1", "Home").builder("Box 2", "Home");
    maker.batch("3", "2027-05-04", 12, 60, "Box 1").batch("4", "2027-06-04", 12, 60, "Box 2");
    maker.outcome("3", OutcomeKind::Graft, "2027-05-04", 60);
    maker.outcome("3", OutcomeKind::Ripe, "2027-05-14", 6);
    maker.outcome("4", OutcomeKind::Graft, "2027-06-04", 60);
    maker.outcome("4", OutcomeKind::Sealed, "2027-06-10", 36);
    const auto nucs = [&](const std::string& yard, int from, int count, const char* stocked,
                          bool openBrood) {
        for (int i = from; i < from + count; ++i) {
            const auto label = std::to_string(i);
            maker.box(label, yard, "7", "2027-04-01");
            if (stocked != nullptr) maker.stock(label + "/-", stocked, openBrood);
        }
    };
    nucs("Mill", 1, 20, "2027-06-11", true);
    nucs("Mill", 21, 10, nullptr, false);
    nucs("Mill", 31, 6, "2027-05-10", true);
    nucs("Mill", 37, 4, "2027-05-24", false);
    nucs("Home", 41, 14, "2027-06-12", true);
    for (int i = 31; i < 37; ++i) {
        maker.place("3", std::to_string(i) + "/-", "2027-05-14", true);
        maker.outcome("3", OutcomeKind::FirstEggs, "2027-06-02", {}, std::to_string(i) + "/-");
    }
    return maker;
}

TEST(ReadyStory, FourNumbersOnTheCellsDay) {
    const auto outlook = readyStory("2027-06-13").outlook();
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 2U);
    const auto& cells = outlook->nucs.cellsDays[1];
    EXPECT_EQ(cells.day, day("2027-06-14"));
    EXPECT_EQ(cells.ripe, 36);
    EXPECT_EQ(cells.numbers.ready, 34);
    EXPECT_EQ(cells.numbers.canStock, 10);
    EXPECT_GT(cells.numbers.likely, 5.0);
    EXPECT_LE(cells.numbers.likely, 6.0);
    EXPECT_EQ(cells.numbers.needsBrood, 4);
    EXPECT_EQ(cells.left(), -2);
    EXPECT_EQ(cells.placed, 36);  // two of them where a queen is caught first
}

TEST(ReadyStory, TwoCellsTooManyAreTold) {
    const auto outlook = readyStory("2027-06-13").outlook();
    const auto at = std::find_if(outlook->findings.begin(), outlook->findings.end(),
                                 [](auto& f) { return f.kind == FindingKind::TooManyCells; });
    ASSERT_NE(at, outlook->findings.end());
    EXPECT_EQ(englishText(*at),
              "36 ripe on Mon 14 June, 34 nucs ready: 2 cells too many; 10 can be stocked by "
              "Sun 13 June; likely 6 more if caught by Sun 13 June; 4 need open brood first");
}

TEST(ReadyStory, SidesSayWhyTheyAreNotReady) {
    const auto maker = readyStory("2027-06-13");
    const auto outlook = maker.outlook();
    const auto on = [&](const std::string& box) {
        for (const auto& side : outlook->nucs.sides)
            if (side.box->label == box) return sideOn(side, day("2027-06-14"), day("2027-06-13"));
        throw std::out_of_range(box);
    };
    EXPECT_TRUE(on("1").ready);
    EXPECT_EQ(on("21").reason, NotReady::NotStocked);
    EXPECT_TRUE(on("21").canStock);
    EXPECT_EQ(on("37").reason, NotReady::NeedsBrood);
    EXPECT_TRUE(on("41").ready);
    EXPECT_EQ(on("31").reason, NotReady::AwaitingCatch);
}

TEST(ReadyStory, TheDayAfterHomeIsStockedIsTheFirstReadyOne) {
    const auto outlook = readyStory("2027-06-11").outlook();
    for (const auto& side : outlook->nucs.sides) {
        if (side.box->label != "41") continue;
        EXPECT_EQ(sideOn(side, day("2027-06-12"), day("2027-06-11")).state, NucState::NotStocked);
        EXPECT_EQ(sideOn(side, day("2027-06-12"), day("2027-06-11")).readyFrom, day("2027-06-13"));
        EXPECT_TRUE(sideOn(side, day("2027-06-13"), day("2027-06-11")).ready);
    }
}

}  // namespace
}  // namespace tenthday
