/// Cells and nucs out of a yard under a hold for disease are told, planned or done, however the
/// plan came into the book: an import is not refused. Common practice; no source gives a rule for
/// cells.
#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Batch 9 grafted on 11 June at Home, its cells go into a nuc at Mill on 21 June.
class HoldTrips : public ::testing::Test {
protected:
    HoldTrips() {
        maker_.yard("Mill", 1).yard("Home", 2).yard("Island", 3).builder("Box", "Home");
        maker_.builder("End", "Mill", BuilderKind::Finisher);
        maker_.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-06-18");
        maker_.batch("9", "2027-06-11", 15, 12, "Box");
    }
    void cells(bool done = false) { maker_.place("9", "N1/-", "2027-06-21", done); }
    void hold(const char* yard, const char* from, const char* until) {
        rows_.add(YardNote{id<YardNote>(++next_),
                           1,
                           maker_.yardId(yard),
                           YardNoteKind::Disease,
                           day(from),
                           day(until),
                           {}});
    }
    void mateAt(const char* yard, const char* from, const char* until) {
        rows_.add(MatingStay{id<MatingStay>(++next_), 1, maker_.batchId("9"), maker_.yardId(yard),
                             day(from), day(until)});
    }
    std::vector<Finding> found(const char* today = "2027-06-01") {
        auto snapshot = applied(maker_.snapshot(), rows_).value();
        snapshot.setToday(day(today));
        std::vector<Finding> holds;
        const auto outlook = freshOutlook(snapshot);
        for (const auto& finding : outlook->findings)
            if (finding.kind == FindingKind::LeavesHold) holds.push_back(finding);
        return holds;
    }

    SeasonMaker maker_{"2027-06-01"};
    ChangeSet rows_;
    std::uint64_t next_ = 840'000;
};

TEST_F(HoldTrips, RipeCellsStayInAHeldYard) {
    cells();
    hold("Home", "2027-06-15", "2027-07-30");
    const auto all = found();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].day, day("2027-06-21"));
    EXPECT_EQ(all[0].severity, Severity::Danger);
    EXPECT_EQ(all[0].subjectLabel, "9");
    EXPECT_EQ(englishText(all[0]).find("cells would leave Home, which is held until"), 0U);
}

TEST_F(HoldTrips, WhatWasDoneIsToldAsLongAsTheHoldLasts) {
    hold("Home", "2027-06-15", "2027-07-30");
    cells(true);
    const auto all = found("2027-06-25");
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].severity, Severity::Warning);
    EXPECT_EQ(englishText(all[0]).find("cells left Home"), 0U);
    EXPECT_TRUE(found("2027-07-31").empty());
}

TEST_F(HoldTrips, CellsMayGoIntoNucsOfTheirOwnYardAndIntoAHeldOne) {
    cells();
    hold("Mill", "2027-06-15", "2027-07-30");
    EXPECT_TRUE(found().empty()) << "they come in, nothing leaves";
    maker_.box("N2", "Home", "7", "2027-04-01").stock("N2/-", "2027-06-18");
    maker_.batch("10", "2027-06-11", 15, 12, "Box").place("10", "N2/-", "2027-06-21", false);
    hold("Home", "2027-06-15", "2027-07-30");
    const auto all = found();
    ASSERT_EQ(all.size(), 1U) << "those of batch 9";
    EXPECT_EQ(all[0].subjectLabel, "9");
}

TEST_F(HoldTrips, AHoldThatIsOverByThenIsNone) {
    cells();
    hold("Home", "2027-06-05", "2027-06-20");
    EXPECT_TRUE(found().empty());
}

TEST_F(HoldTrips, CellsStayInTheirStarterToo) {
    maker_.batch("11", "2027-06-12", 15, 12, "Box", "starter and finisher");
    maker_.load("11", 1, 2, "End");
    hold("Home", "2027-06-12", "2027-06-15");
    const auto all = found();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].subjectLabel, "11");
    EXPECT_EQ(all[0].event, Event::ToFinisher);
    EXPECT_EQ(all[0].day, day("2027-06-13"));
}

TEST_F(HoldTrips, NoNucGoesToAStationOutOfAHeldYardNorBackFromOne) {
    cells();
    mateAt("Island", "2027-06-24", "2027-07-06");
    hold("Mill", "2027-06-22", "2027-06-30");
    auto all = found();
    ASSERT_EQ(all.size(), 1U);
    EXPECT_EQ(all[0].day, day("2027-06-24"));
    EXPECT_EQ(englishText(all[0]).find("nucs on the way to or from a mating station would leave "
                                       "Mill"),
              0U);
    hold("Island", "2027-07-01", "2027-07-30");
    all = found();
    ASSERT_EQ(all.size(), 2U);
    EXPECT_EQ(all[1].day, day("2027-07-06"));
    EXPECT_EQ(all[1].otherLabel, "Island");
}

}  // namespace
}  // namespace tenthday::test
