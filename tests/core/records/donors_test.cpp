#include "records/donors.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;

TEST(Donors, AreOfAYardByItsLabelOrAColonyOfIt) {
    EXPECT_TRUE(namesYard("Mill", "Mill"));
    EXPECT_TRUE(namesYard("Heath,Mill 3", "Mill"));
    EXPECT_TRUE(namesYard("Heath;  Mill ", "Mill"));
    EXPECT_FALSE(namesYard("Millbrook", "Mill"));
    EXPECT_TRUE(namesYard("from mill 3 and Heath", "Mill"));
    EXPECT_TRUE(namesYard("Old Mill", "Mill"));
    EXPECT_FALSE(namesYard("Old Mill", "Mill", {"Mill", "Old Mill"}));
    EXPECT_TRUE(namesYard("Old Mill, Mill 2", "Mill", {"Mill", "Old Mill"}));
    EXPECT_FALSE(namesYard("", "Mill"));
}

TEST(DonorHolds, AreThoseInForceOnTheDay) {
    test::SeasonMaker maker;
    maker.yard("Mill").yard("Heath", 1);
    ChangeSet changes;
    changes.add(YardNote{test::id<YardNote>(1),
                         1,
                         maker.yardId("Mill"),
                         YardNoteKind::Disease,
                         day("2027-06-05"),
                         day("2027-06-20"),
                         {}});
    changes.add(YardNote{test::id<YardNote>(2),
                         1,
                         maker.yardId("Heath"),
                         YardNoteKind::Robbing,
                         day("2027-06-05"),
                         day("2027-06-20"),
                         {}});
    const auto book = applied(maker.snapshot(), changes).value();
    const auto on = [&](const char* donors, const char* text) {
        return donorHolds(book, donors, day(text));
    };
    ASSERT_EQ(on("Heath, Mill 3", "2027-06-20").size(), 1U);
    EXPECT_EQ(on("Mill", "2027-06-05").front().yard->label, "Mill");
    EXPECT_TRUE(on("Mill", "2027-06-04").empty());
    EXPECT_TRUE(on("Mill", "2027-06-21").empty());
    EXPECT_TRUE(on("Heath", "2027-06-10").empty()) << "robbing is no hold";
}

}  // namespace
}  // namespace tenthday
