#include "findings/disease_hold.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

class DiseaseHold : public ::testing::Test {
protected:
    DiseaseHold() {
        maker_.yard("Mill").yard("Millbrook", 2).yard("Home", 3).builder("Box", "Home");
        maker_.box("N1", "Mill", "7", "2027-04-01").box("N2", "Home", "7", "2027-04-01");
        snapshot_ = maker_.snapshot();
        add(YardNote{{},
                     1,
                     maker_.yardId("Mill"),
                     YardNoteKind::Disease,
                     day("2027-06-05"),
                     day("2027-06-20"),
                     {}});
    }
    template <class Row>
    void add(Row row) {
        row.id = id<Row>(++next_);
        ChangeSet changes;
        changes.add(std::move(row));
        snapshot_ = applied(snapshot_, changes).value();
    }
    void makeUp(const char* on, const char* donors) {
        MakeUp row;
        row.builder = maker_.builderId("Box");
        row.day = day(on);
        row.donors = donors;
        add(row);
    }

    SeasonMaker maker_{"2027-06-01"};
    Snapshot snapshot_;
    std::uint64_t next_ = 840'000;
};

TEST_F(DiseaseHold, NoBeesAreTakenFromThere) {
    makeUp("2027-06-10", "Home 2, Mill 3");
    const auto found = leavesHold(snapshot_);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found[0].day, day("2027-06-10"));
    EXPECT_EQ(found[0].subjectLabel, "Box");
    EXPECT_NE(englishText(found[0]).find("would leave Mill, which is held until"),
              std::string::npos);
}

TEST_F(DiseaseHold, DonorsAreReadAsPeopleWriteThem) {
    makeUp("2027-06-10", "from mill 3 and Home");
    EXPECT_EQ(leavesHold(snapshot_).size(), 1U);
}

TEST_F(DiseaseHold, TheLongestYardInADonorIsMeant) {
    maker_.yard("Mill Road", 4);
    auto other = maker_.snapshot();
    ChangeSet hold;
    hold.add(YardNote{id<YardNote>(++next_),
                      1,
                      maker_.yardId("Mill"),
                      YardNoteKind::Disease,
                      day("2027-06-05"),
                      day("2027-06-20"),
                      {}});
    snapshot_ = applied(other, hold).value();
    makeUp("2027-06-10", "Mill Road 3");
    EXPECT_TRUE(leavesHold(snapshot_).empty());
}

TEST_F(DiseaseHold, OtherYardsAndOtherDaysAreFree) {
    makeUp("2027-06-10", "Millbrook, Home");
    makeUp("2027-06-04", "Mill");
    makeUp("2027-06-21", "Mill");
    EXPECT_TRUE(leavesHold(snapshot_).empty());
}

TEST_F(DiseaseHold, NucsAreNotStockedFromThereNorMovedOut) {
    Stocking bees;
    bees.side = maker_.sideId("N2/-");
    bees.day = day("2027-06-12");
    bees.donor = "Mill";
    add(bees);
    BoxStay stay;
    stay.box = snapshot_.find(snapshot_.find(maker_.sideId("N1/-"))->layout)->box;
    stay.yard = maker_.yardId("Home");
    stay.from = day("2027-06-08");
    add(stay);
    auto found = leavesHold(snapshot_);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_EQ(found[0].subjectLabel, "N2");
    EXPECT_EQ(found[1].subjectLabel, "N1");
    snapshot_.setToday(day("2027-06-13"));
    found = leavesHold(snapshot_);
    ASSERT_EQ(found.size(), 2U) << "what was done is told while the hold lasts";
    EXPECT_EQ(found[0].severity, Severity::Warning);
    EXPECT_NE(englishText(found[0]).find("left Mill, which is held until"), std::string::npos);
    snapshot_.setToday(day("2027-06-21"));
    EXPECT_TRUE(leavesHold(snapshot_).empty());
}

}  // namespace
}  // namespace tenthday
