#include "calendar/window.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;

const DayWindow kFive{day("2027-06-14"), day("2027-06-18")};

TEST(DayWindow, HoldsBothItsEnds) {
    EXPECT_TRUE(kFive.contains(day("2027-06-14")));
    EXPECT_TRUE(kFive.contains(day("2027-06-18")));
    EXPECT_FALSE(kFive.contains(day("2027-06-13")));
    EXPECT_FALSE(kFive.contains(day("2027-06-19")));
    EXPECT_EQ(kFive.size(), 5);
}

TEST(DayWindow, OfOneDayHasSizeOne) {
    const DayWindow one{day("2027-06-14"), day("2027-06-14")};
    EXPECT_FALSE(one.isEmpty());
    EXPECT_EQ(one.size(), 1);
    EXPECT_TRUE(one.contains(one.first));
}

TEST(DayWindow, WhoseLastComesFirstIsEmpty) {
    const DayWindow none{day("2027-06-14"), day("2027-06-13")};
    EXPECT_TRUE(none.isEmpty());
    EXPECT_EQ(none.size(), 0);
    EXPECT_FALSE(none.contains(day("2027-06-14")));
    EXPECT_FALSE(none.contains(day("2027-06-13")));
}

TEST(DayWindow, OverlapsWhenOneDayIsShared) {
    EXPECT_TRUE(kFive.overlaps({day("2027-06-18"), day("2027-06-30")}));
    EXPECT_TRUE(kFive.overlaps({day("2027-06-01"), day("2027-06-14")}));
    EXPECT_TRUE(kFive.overlaps({day("2027-06-15"), day("2027-06-16")}));
    EXPECT_FALSE(kFive.overlaps({day("2027-06-19"), day("2027-06-30")}));
    EXPECT_FALSE(kFive.overlaps({day("2027-06-01"), day("2027-06-13")}));
}

const MomentSpan kNight{moment("2027-06-14T18:00"), moment("2027-06-15T00:00")};

TEST(MomentSpan, HoldsItsBeginningButNotItsEnd) {
    EXPECT_TRUE(kNight.contains(moment("2027-06-14T18:00")));
    EXPECT_TRUE(kNight.contains(moment("2027-06-14T23:59")));
    EXPECT_FALSE(kNight.contains(moment("2027-06-15T00:00")));
    EXPECT_FALSE(kNight.contains(moment("2027-06-14T17:59")));
}

TEST(MomentSpan, ThatFollowsAnotherDoesNotOverlapIt) {
    const MomentSpan after{kNight.until, moment("2027-06-15T06:00")};
    EXPECT_FALSE(kNight.overlaps(after));
    EXPECT_FALSE(after.overlaps(kNight));
    EXPECT_TRUE(kNight.overlaps({moment("2027-06-14T23:59"), moment("2027-06-15T06:00")}));
}

TEST(MomentSpan, UntilMidnightDoesNotTouchTheNextDay) {
    EXPECT_EQ(kNight.days(), (DayWindow{day("2027-06-14"), day("2027-06-14")}));
    const MomentSpan longer{kNight.from, kNight.until + std::chrono::minutes{1}};
    EXPECT_EQ(longer.days(), (DayWindow{day("2027-06-14"), day("2027-06-15")}));
}

}  // namespace
}  // namespace tenthday
