// The numbers of a week's tasks, what is still open, and tasks of the user's own.
#include "tasks/week.h"

#include <gtest/gtest.h>

#include "outlook/outlook.h"
#include "support/season_maker.h"
#include "tasks/event_behind.h"
#include "tasks/own_task.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

Snapshot with(const Snapshot& snapshot, const Result<ChangeSet>& changes) {
    return applied(snapshot, changes.value()).value();
}

Snapshot season() {
    SeasonMaker maker("2027-06-10");
    maker.yard("East").yard("West", 1).builder("Box", "East");
    auto snapshot = maker.snapshot();
    const std::pair<const char*, const char*> all[] = {{"2027-06-01", "old"},
                                                       {"2027-06-07", "a"},
                                                       {"2027-06-08", "b"},
                                                       {"2027-06-10", "c"},
                                                       {"2027-06-14", "next week"}};
    std::uint64_t id = 50;
    for (const auto& [on, text] : all)
        snapshot = with(snapshot, addOwnTask({day(on), {}, text, false}, test::id<OwnTask>(++id)));
    return snapshot;
}

std::vector<Task> tasksIn(const Snapshot& snapshot, OutlookPtr& outlook) {
    OutlookMemo memo;
    outlook = outlookOf(snapshot, memo);
    return tasksOf(*outlook);
}

TEST(Week, NumbersRunFromMondayToSunday) {
    OutlookPtr outlook;
    const auto numbered = ofWeek(tasksIn(season(), outlook), {2027, 23});
    ASSERT_EQ(numbered.size(), 3U);
    for (std::size_t i = 0; i < numbered.size(); ++i)
        EXPECT_EQ(numbered[i].number, static_cast<int>(i) + 1);
    EXPECT_EQ(numbered[0].task.subjectLabel, "a");
    EXPECT_EQ(numbered[2].task.subjectLabel, "c");
}

TEST(Week, WhatIsStillOpenKeepsTheNumberOfItsOwnWeek) {
    auto snapshot = season();
    OutlookPtr outlook;
    auto open = stillOpen(tasksIn(snapshot, outlook), day("2027-06-10"));
    ASSERT_EQ(open.size(), 3U);
    EXPECT_EQ(open[0].task.subjectLabel, "old");
    EXPECT_EQ(open[0].number, 1);
    EXPECT_EQ(open[1].number, 1);
    EXPECT_EQ(open[2].number, 2);
    snapshot =
        with(snapshot, tick(snapshot, open[1].task, day("2027-06-09"), test::id<TaskDone>(7)));
    open = stillOpen(tasksIn(snapshot, outlook), day("2027-06-10"));
    ASSERT_EQ(open.size(), 2U);
    EXPECT_EQ(open[1].task.subjectLabel, "b");
    EXPECT_EQ(open[1].number, 2) << "what is done keeps its number";
}

TEST(OwnTask, IsChangedAndDeletedWithItsTick) {
    auto snapshot = season();
    const auto id = test::id<OwnTask>(51);
    snapshot = with(snapshot,
                    changeOwnTask(snapshot, id, {day("2027-06-02"), {}, "  feed the nucs ", true}));
    const auto row = snapshot.find(id);
    EXPECT_EQ(row->text, "feed the nucs");
    EXPECT_TRUE(row->must);
    OutlookPtr outlook;
    const auto tasks = tasksIn(snapshot, outlook);
    snapshot =
        with(snapshot, tick(snapshot, tasks.front(), day("2027-06-02"), test::id<TaskDone>(7)));
    EXPECT_EQ(snapshot.all<TaskDone>().size(), 1U);
    const auto gone = deleteOwnTask(snapshot, id);
    const auto back = gone.value().inverse();
    snapshot = with(snapshot, gone);
    EXPECT_EQ(snapshot.find(id), nullptr);
    EXPECT_EQ(snapshot.all<TaskDone>().size(), 0U);
    snapshot = with(snapshot, back);
    EXPECT_EQ(snapshot.find(id)->text, "feed the nucs");
    EXPECT_EQ(snapshot.all<TaskDone>().size(), 1U);
}

TEST(OwnTask, WithoutATextOrOnceGoneIsRefused) {
    const auto snapshot = season();
    const auto id = test::id<OwnTask>(51);
    EXPECT_FALSE(addOwnTask({day("2027-06-02"), {}, " \t", false}, test::id<OwnTask>(9)).ok());
    EXPECT_FALSE(changeOwnTask(snapshot, id, {day("2027-06-02"), {}, "", false}).ok());
    EXPECT_FALSE(deleteOwnTask(snapshot, test::id<OwnTask>(999)).ok());
    EXPECT_FALSE(
        changeOwnTask(snapshot, test::id<OwnTask>(999), {day("2027-06-02"), {}, "x", false}).ok());
    const auto row = snapshot.find(id);
    EXPECT_TRUE(
        changeOwnTask(snapshot, id, {row->day, row->yard, row->text, row->must}).value().isEmpty());
}

TEST(EventBehind, NamesADateOfTheBatchThatIsThere) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").builder("Box", "East").box("1", "East", "3+3", "2027-04-01");
    maker.stock("1/A", "2027-05-20").stock("1/B", "2027-05-20");
    maker.batch("1", "2027-05-15", 12, 20, "Box").share("1", "East", 2);
    const auto outlook = maker.outlook();
    const auto& line = outlook->batches.front()->timeline;
    int known = 0;
    for (const auto& task : tasksOf(*outlook)) {
        if (!task.batch) continue;
        const auto event = eventBehind(task, line);
        if (!event) continue;
        ++known;
        EXPECT_EQ(dayOf(line.find(*event)->likely), task.day) << token(task.key.rule);
    }
    EXPECT_GE(known, 7);
}

}  // namespace
}  // namespace tenthday
