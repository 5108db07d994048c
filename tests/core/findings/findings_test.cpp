#include "findings/finding.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

std::vector<std::string> told(const SeasonMaker& maker) {
    std::vector<std::string> texts;
    const auto outlook = maker.outlook();
    for (const auto& finding : outlook->findings)
        texts.push_back(toText(finding.day) + " " + std::string(token(finding.severity)) + " " +
                        std::string(token(finding.kind)) + " " + finding.subjectLabel + ": " +
                        englishText(finding));
    return texts;
}

SeasonMaker bare() {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box 1", "East");
    for (int i = 1; i <= 30; ++i) {
        maker.box(std::to_string(i), "East", "7", "2027-04-01");
        maker.stock(std::to_string(i) + "/-", "2027-05-15");
    }
    return maker;
}

TEST(Findings, AQuietSeasonHasNone) {
    EXPECT_EQ(told(bare().batch("1", "2027-05-10", 12, 30, "Box 1")), std::vector<std::string>{});
}

// Room of a box that finishes: 24 started cells (S74, S25). 40 grafts x .75 = 30 started.
TEST(Findings, BoxOverfull) {
    EXPECT_EQ(
        told(bare().batch("1", "2027-05-10", 12, 40, "Box 1")),
        std::vector<std::string>{"2027-05-10 warning box_overfull 1: 30 started cells expected "
                                 "in Box 1, room for 24: give fewer"});
}

TEST(Findings, TwoBatchesInOneBoxAreCountedTogetherWhileOpen) {
    const auto texts = told(bare()
                                .batch("1", "2027-05-10", 12, 20, "Box 1")
                                .batch("2", "2027-05-12", 12, 20, "Box 1")
                                .batch("3", "2027-05-18", 12, 20, "Box 1"));
    ASSERT_FALSE(texts.empty());
    EXPECT_NE(texts[0].find("2027-05-12 warning box_overfull 2: 30 started"), std::string::npos)
        << texts[0];
    for (const auto& text : texts) EXPECT_EQ(text.find("box_overfull 3"), std::string::npos);
}

TEST(Findings, QueenOutBeforeTheMoveAndWorkOnADayOff) {
    auto maker = bare();
    maker.batch("1", "2027-05-10", 12, 30, "Box 1").place("1", "1/-", "2027-05-22", false);
    maker.dayOff("2027-05-22", "2027-05-23");
    const auto texts = told(maker);
    ASSERT_EQ(texts.size(), 2U);
    EXPECT_EQ(texts[0].substr(0, 47), "2027-05-21 danger queen_out_before_move 1: a qu")
        << texts[0];
    EXPECT_NE(texts[0].find("before Friday midday"), std::string::npos) << texts[0];
    EXPECT_EQ(texts[1],
              "2027-05-22 warning work_on_day_off 1: cells into the nucs falls on a day off, "
              "Sat 22 May 12:00");
}

TEST(Findings, AMoveInTheFragileSpan) {
    auto maker = bare();
    maker.batch("1", "2027-05-10", 12, 30, "Box 1").place("1", "1/-", "2027-05-17", false);
    const auto texts = told(maker);
    ASSERT_FALSE(texts.empty());
    EXPECT_NE(
        texts[0].find("2027-05-17 warning fragile_move 1: cells are moved on Mon 17 May 12:00"),
        std::string::npos)
        << texts[0];
}

TEST(Findings, WhatIsOverIsNotToldAnyMore) {
    SeasonMaker maker("2027-08-01");
    maker.yard("East").builder("Box 1", "East").dayOff("2027-05-10", "2027-05-30");
    maker.batch("1", "2027-05-10", 12, 60, "Box 1");
    EXPECT_EQ(told(maker), std::vector<std::string>{});
}

// Drones out on 25 August: the last graft is on 1 August.
TEST(Findings, AGraftAfterTheLastWorthWhile) {
    auto maker = bare();
    maker.batch("1", "2027-08-01", 12, 20, "Box 1").batch("2", "2027-08-12", 12, 20, "Box 1");
    const auto before = maker.snapshot();
    ChangeSet changes;
    const auto yard = before.find(maker.yardId("East"));
    Yard out = *yard;
    out.dronesOutDay = day("2027-08-25");
    changes.edit(yard, out);
    OutlookMemo memo;
    const auto texts = [&](std::string_view today) {
        auto snapshot = applied(before, changes).value();
        snapshot.setToday(day(today));
        std::vector<std::string> all;
        const auto outlook = outlookOf(snapshot, memo);
        for (const auto& finding : outlook->findings)
            if (finding.kind == FindingKind::BeyondLimits)
                all.push_back(finding.subjectLabel + ": " + englishText(finding));
        return all;
    };
    EXPECT_EQ(texts("2027-05-01"),
              std::vector<std::string>{
                  "2: is grafted after the last worth while, Sun 1 August: drones are thrown out "
                  "about Wed 25 August in East; queens fly up to 24 days after the graft"});
    EXPECT_TRUE(texts("2027-08-13").empty()) << "that is past";
}

}  // namespace
}  // namespace tenthday
