// Minutes of work and driving, from the book or by common practice.
#include "tasks/work_time.h"

#include <gtest/gtest.h>

#include "support/ids.h"
#include "support/season_maker.h"
#include "tasks/given.h"

namespace tenthday {
namespace {

using test::day;

class WorkTimes : public ::testing::Test {
protected:
    WorkTimes() : maker_("2027-06-01") {
        maker_.yard("Mill", 2).yard("Heron", 1).yard("Dike", 3);
        book_ = maker_.snapshot();
    }
    Id<Yard> yard(const char* label) { return maker_.yardId(label); }
    DriveTime way(std::optional<Id<Yard>> from, Id<Yard> to, int minutes) {
        return {{}, 1, from, to, minutes};
    }
    void set(const std::vector<WorkTime>& works, const std::vector<DriveTime>& drives) {
        const auto edit =
            setTimes(book_, works, drives, [this] { return test::id<Book>(9000 + ++next_).uuid; });
        ASSERT_TRUE(edit) << edit.error().text;
        const auto next = applied(book_, edit.value());
        ASSERT_TRUE(next) << next.error().text;
        book_ = next.value();
    }
    test::SeasonMaker maker_;
    Snapshot book_;
    std::uint64_t next_ = 0;
};

TEST_F(WorkTimes, ATaskTakesItsMinutesOnceAndThoseOfEachPieceRoundedUp) {
    set({{{}, 1, TaskRule::Graft, 20, Tenths{5}}}, {});
    EXPECT_EQ(workMinutes(book_, TaskRule::Graft, 0), 20);
    EXPECT_EQ(workMinutes(book_, TaskRule::Graft, 60), 50);
    EXPECT_EQ(workMinutes(book_, TaskRule::Graft, 61), 51) << "30.5 minutes more";
    EXPECT_TRUE(taskMinutes(book_, TaskRule::Graft).own);
    EXPECT_FALSE(taskMinutes(book_, TaskRule::Feed).own);
    EXPECT_GT(workMinutes(book_, TaskRule::Feed, 0), 0) << "common practice";
}

TEST_F(WorkTimes, ARoundGoesFromHomeThroughTheYardsInDrivingOrderAndBack) {
    set({}, {way({}, yard("Heron"), 10), way(yard("Mill"), yard("Heron"), 7),
             way({}, yard("Mill"), 25)});
    const auto round = roundThrough(book_, {yard("Mill"), yard("Heron"), yard("Mill")});
    EXPECT_EQ(round.round, (std::vector<Id<Yard>>{yard("Heron"), yard("Mill")}));
    EXPECT_EQ(round.drive, 10 + 7 + 25);
    EXPECT_EQ(round.unknownWays, 0);
    EXPECT_EQ(roundThrough(book_, {yard("Dike")}).unknownWays, 2) << "there and back";
    EXPECT_EQ(roundThrough(book_, {}).minutes(), 0);
}

TEST_F(WorkTimes, AWayIsTheSameBothWaysAndSetAgainChangesItsRow) {
    set({}, {way(yard("Mill"), yard("Dike"), 12)});
    EXPECT_EQ(driveMinutes(book_, yard("Dike"), yard("Mill")), 12);
    set({}, {way(yard("Dike"), yard("Mill"), 15)});
    EXPECT_EQ(book_.all<DriveTime>().size(), 1U);
    EXPECT_EQ(driveMinutes(book_, yard("Mill"), yard("Dike")), 15);
    EXPECT_EQ(driveMinutes(book_, {}, yard("Mill")), std::nullopt);
}

TEST_F(WorkTimes, WhatIsClearedIsOfCommonPracticeAgainAndTheRestStays) {
    const auto usual = usualMinutes(TaskRule::Graft);
    set({{{}, 1, TaskRule::Graft, 50, {}}, {{}, 1, TaskRule::Feed, 7, {}}},
        {way({}, yard("Mill"), 20)});
    const auto edit =
        dropTimes(book_, {TaskRule::Graft, TaskRule::Confine}, {{std::nullopt, yard("Mill")}});
    const auto after = applied(book_, edit);
    ASSERT_TRUE(after) << after.error().text;
    EXPECT_EQ(taskMinutes(after.value(), TaskRule::Graft).once, usual.once);
    EXPECT_FALSE(taskMinutes(after.value(), TaskRule::Graft).own);
    EXPECT_EQ(taskMinutes(after.value(), TaskRule::Feed).once, 7);
    EXPECT_FALSE(driveMinutes(after.value(), std::nullopt, yard("Mill")));
    EXPECT_TRUE(applied(after.value(), edit.inverse()).value().sameContent(book_));
}

TEST_F(WorkTimes, WhatCannotBeIsRefused) {
    const auto no = [] { return test::id<Book>(1).uuid; };
    EXPECT_FALSE(setTimes(book_, {{{}, 1, TaskRule::Graft, -1, {}}}, {}, no));
    EXPECT_FALSE(setTimes(book_, {{{}, 1, TaskRule::Graft, 0, Tenths{2401}}}, {}, no));
    EXPECT_FALSE(setTimes(book_, {}, {way(yard("Mill"), yard("Mill"), 5)}, no));
    EXPECT_FALSE(setTimes(book_, {}, {way({}, test::id<Yard>(77), 5)}, no));
    EXPECT_FALSE(setTimes(book_, {}, {way({}, yard("Mill"), 1441)}, no));
}

TEST_F(WorkTimes, ATaskStaysGivenWhenItMovesAndIsTakenBack) {
    Task task;
    task.key = {TaskRule::Graft, test::id<Batch>(5).uuid, {}, 0};
    task.day = day("2027-06-04");
    const auto fresh = [] { return test::id<Book>(9500).uuid; };
    auto edit = giveTasks(book_, {task}, "AK", fresh);
    ASSERT_TRUE(edit) << edit.error().text;
    book_ = applied(book_, edit.value()).value();
    task.day = day("2027-06-09");
    EXPECT_EQ(givenTo(book_, task.key), "AK");
    EXPECT_EQ(everybody(book_), std::vector<std::string>{"AK"});
    EXPECT_TRUE(giveTasks(book_, {task}, " AK", fresh).value().isEmpty());
    EXPECT_FALSE(giveTasks(book_, {task}, "A name that is too long", fresh));
    book_ = applied(book_, giveTasks(book_, {task}, "  ", fresh).value()).value();
    EXPECT_EQ(givenTo(book_, task.key), "");
}

}  // namespace
}  // namespace tenthday
