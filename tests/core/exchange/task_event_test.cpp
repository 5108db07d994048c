#include "exchange/task_event.h"

#include <gtest/gtest.h>

#include <set>

#include "support/days.h"
#include "support/ids.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::moment;

Task task(TaskRule rule, std::string_view on) {
    Task task;
    task.key = {rule, id<Batch>(7).uuid, {}, 0};
    task.day = day(on);
    task.window = {task.day, task.day};
    return task;
}

TEST(TaskEvent, ItsUidComesFromTheKeyAndNeverFromTheDay) {
    auto graft = task(TaskRule::Graft, "2027-06-14");
    const auto uid = eventOf(graft, false, {}).uid;
    EXPECT_EQ(uid, "graft-01900000-0000-7000-8000-000000000007-0@tenthday");
    graft.day = day("2027-06-20");
    graft.hour = Hour{9};
    graft.count = 12;
    graft.done = day("2027-06-20");
    EXPECT_EQ(eventOf(graft, true, {}).uid, uid);

    std::set<std::string> uids{uid};
    auto other = graft.key;
    other.rule = TaskRule::TakeCount;
    EXPECT_TRUE(uids.insert(uidOf(other)).second);
    other = graft.key;
    other.subject = id<Batch>(8).uuid;
    EXPECT_TRUE(uids.insert(uidOf(other)).second);
    other = graft.key;
    other.place = id<Batch>(7).uuid;
    EXPECT_TRUE(uids.insert(uidOf(other)).second);
    other = graft.key;
    other.occurrence = 1;
    EXPECT_TRUE(uids.insert(uidOf(other)).second);
}

TEST(TaskEvent, ItsWordsAndTimesAreTheTasks) {
    auto graft = task(TaskRule::Graft, "2027-06-14");
    graft.hour = Hour{14};
    const auto timed = eventOf(graft, false, {"Graft batch 7", "at 14:00", "North", "Graft"});
    EXPECT_EQ(timed.summary, "Graft batch 7");
    EXPECT_EQ(timed.description, "at 14:00");
    EXPECT_EQ(timed.location, "North");
    EXPECT_EQ(timed.categories, std::vector<std::string>{"Graft"});
    EXPECT_EQ(timed.day, day("2027-06-14"));
    EXPECT_EQ(timed.hour, Hour{14});
    EXPECT_EQ(timed.minutes, 60);
    const auto all = eventOf(graft, true, {});
    EXPECT_FALSE(all.hour);
    EXPECT_TRUE(all.categories.empty());
}

// Hours of alarms: common practice.
TEST(TaskEvent, WhatMustBeDoneOnItsDayRingsBeforeItsHourOrInTheMorning) {
    auto graft = task(TaskRule::Graft, "2027-06-14");
    graft.must = true;
    EXPECT_EQ(eventOf(graft, false, {}).alarm, 7 * 60);
    graft.hour = Hour{14};
    EXPECT_EQ(eventOf(graft, false, {}).alarm, -60);
    EXPECT_EQ(eventOf(graft, true, {}).alarm, 7 * 60);
    graft.done = day("2027-06-14");
    EXPECT_FALSE(eventOf(graft, false, {}).alarm);
}

TEST(TaskEvent, WhatCanWaitRingsOnTheLastDayThatItCan) {
    auto look = task(TaskRule::FirstWildLook, "2027-06-14");
    EXPECT_FALSE(eventOf(look, false, {}).alarm) << "one day, but not a must";
    look.window.last = day("2027-06-16");
    EXPECT_EQ(eventOf(look, false, {}).alarm, (2 * 24 + 7) * 60);
    look.hour = Hour{9};
    EXPECT_EQ(eventOf(look, false, {}).alarm, (2 * 24 + 7 - 9) * 60);
    EXPECT_EQ(eventOf(look, true, {}).alarm, (2 * 24 + 7) * 60);
}

TEST(TaskEvent, AnAlarmIsNeverTooLateForTheFirstQueenOut) {
    auto out = task(TaskRule::CellsOut, "2027-06-24");
    out.must = true;
    out.hour = Hour{14};
    out.deadline = moment("2027-06-25T02:00");
    EXPECT_EQ(eventOf(out, false, {}).alarm, -60) << "no need to hurry";
    out.deadline = moment("2027-06-24T06:00");
    EXPECT_EQ(eventOf(out, false, {}).alarm, (4 - 14) * 60);
    EXPECT_EQ(eventOf(out, true, {}).alarm, 4 * 60);
}

}  // namespace
}  // namespace tenthday
