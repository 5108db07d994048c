#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "calendar/iso_week.h"
#include "outlook/work_days.h"
#include "records/verbs.h"
#include "support/ids.h"
#include "support/season_maker.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// One batch grafted on Fri 11 June 2027 in a box made up with open brood the evening before; ten
/// nucs in a yard further on.
SeasonMaker season(std::string_view today = "2027-06-01") {
    SeasonMaker maker(today);
    maker.yard("Mill", 2).yard("Home", 1).builder("Box", "Home");
    maker.makeUp("Box", "2027-06-10", 17, true);
    for (int i = 1; i <= 10; ++i) {
        const auto box = "N" + std::to_string(i);
        maker.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-06-18");
    }
    return maker.batch("9", "2027-06-11", 15, 14, "Box");
}

std::vector<std::string> lines(const std::vector<Task>& tasks, const Snapshot& snapshot) {
    std::vector<std::string> all;
    for (const auto& task : tasks) {
        const auto yard = task.yard ? snapshot.find(*task.yard) : nullptr;
        all.push_back(toText(task.day) + " " + (yard ? yard->label : "-") + " " +
                      std::string(token(task.key.rule)) + " " + task.subjectLabel + " " +
                      std::to_string(task.count) + (task.must ? " must" : "") +
                      (task.done ? " done" : ""));
    }
    return all;
}

std::vector<std::string> weekOf(const OutlookPtr& outlook, std::string_view week) {
    return lines(within(tasksOf(*outlook), daysOf(*isoWeekFromText(week))), outlook->snapshot);
}

const Task& only(const std::vector<Task>& tasks, TaskRule rule) {
    const auto found = std::find_if(tasks.begin(), tasks.end(),
                                    [&](const Task& task) { return task.key.rule == rule; });
    if (found == tasks.end()) throw std::out_of_range(std::string(token(rule)));
    return *found;
}

TEST(Tasks, AreListedByDayYardAndMust) {
    const auto outlook = season().outlook();
    EXPECT_EQ(weekOf(outlook, "2027-W23"),
              (std::vector<std::string>{
                  "2027-06-07 Home confine 9 0", "2027-06-08 Home free_breeder 9 0 must",
                  "2027-06-10 Home make_up_builder Box 0", "2027-06-11 Home graft 9 14 must",
                  "2027-06-12 Home take_count 9 14"}));
    EXPECT_EQ(weekOf(outlook, "2027-W24"),
              (std::vector<std::string>{"2027-06-15 Home first_wild_look Box 0",
                                        "2027-06-18 Mill stock_nucs  10",
                                        "2027-06-19 Home second_wild_look Box 0"}));
    EXPECT_EQ(weekOf(outlook, "2027-W25"),
              (std::vector<std::string>{"2027-06-21 Home cells_out 9 10 must",
                                        "2027-06-21 Mill cells_in 9 10 must"}));
}

TEST(Tasks, FirstLookAndCatchFollowTheNucs) {
    const auto outlook = season().outlook();
    const auto tasks = tasksOf(*outlook);
    const auto& hold = outlook->batches.front()->timeline.hold;
    EXPECT_EQ(only(tasks, TaskRule::FirstLook).day, hold.lookDay);
    EXPECT_EQ(only(tasks, TaskRule::FirstLook).sides.size(), 10U);
    EXPECT_EQ(only(tasks, TaskRule::CatchQueens).day, hold.catchDay);
    EXPECT_EQ(only(tasks, TaskRule::CatchQueens).count, std::lround(10 * .88 * .80));
}

TEST(Tasks, KeepTheirIdentityWhenTheBatchMovesAndSoDoTicks) {
    const auto maker = season();
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    auto outlook = outlookOf(snapshot, memo);
    const auto before = tasksOf(*outlook);
    const auto ticked =
        tick(snapshot, only(before, TaskRule::Confine), day("2027-06-07"), test::id<TaskDone>(5));
    snapshot = applied(snapshot, ticked).value();
    snapshot = applied(snapshot, moveBatch(snapshot, maker.batchId("9"), day("2027-06-14")).value())
                   .value();
    outlook = outlookOf(snapshot, memo);
    const auto after = tasksOf(*outlook);
    std::set<TaskKey> was;
    std::set<TaskKey> is;
    for (const auto& task : before) was.insert(task.key);
    for (const auto& task : after) is.insert(task.key);
    EXPECT_EQ(was, is);
    EXPECT_EQ(was.size(), before.size()) << "no two tasks have the same name";
    EXPECT_EQ(only(after, TaskRule::Confine).day, day("2027-06-10"));
    EXPECT_EQ(only(after, TaskRule::Confine).done, day("2027-06-07"));
    EXPECT_EQ(only(after, TaskRule::Graft).day, day("2027-06-14"));
    EXPECT_FALSE(only(after, TaskRule::Graft).done);
}

TEST(Tasks, ATickCanBeTakenBackAndChanged) {
    const auto maker = season();
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    const auto outlook = outlookOf(snapshot, memo);
    const auto tasks = tasksOf(*outlook);
    const auto& graft = only(tasks, TaskRule::Graft);
    const auto id = test::id<TaskDone>(5);
    snapshot = applied(snapshot, tick(snapshot, graft, day("2027-06-11"), id)).value();
    EXPECT_TRUE(tick(snapshot, graft, day("2027-06-11"), test::id<TaskDone>(6)).isEmpty());
    snapshot =
        applied(snapshot, tick(snapshot, graft, day("2027-06-12"), test::id<TaskDone>(6))).value();
    ASSERT_EQ(snapshot.all<TaskDone>().size(), 1U);
    EXPECT_EQ((*snapshot.all<TaskDone>().begin())->day, day("2027-06-12"));
    snapshot = applied(snapshot, tick(snapshot, graft, std::nullopt, id)).value();
    EXPECT_TRUE(snapshot.all<TaskDone>().empty());
    EXPECT_TRUE(tick(snapshot, graft, std::nullopt, id).isEmpty());
}

TEST(Tasks, WhatIsCountedIsDone) {
    auto maker = season("2027-06-13");
    maker.outcome("9", OutcomeKind::Graft, "2027-06-11", 14);
    const auto tasks = tasksOf(*maker.outlook());
    for (const auto rule :
         {TaskRule::Confine, TaskRule::FreeBreeder, TaskRule::MakeUpBuilder, TaskRule::Graft})
        EXPECT_TRUE(only(tasks, rule).done) << token(rule);
    EXPECT_FALSE(only(tasks, TaskRule::TakeCount).done);
    EXPECT_EQ(only(tasks, TaskRule::TakeCount).day, day("2027-06-13"))
        << "not counted yesterday, and there is still time";
    maker.outcome("9", OutcomeKind::TakeCount, "2027-06-13", 12);
    const auto counted = maker.outlook();
    EXPECT_EQ(only(tasksOf(*counted), TaskRule::TakeCount).done, day("2027-06-13"));
}

TEST(Tasks, ALookEarlyInItsWindowIsTickedByItsNote) {
    auto maker = season("2027-06-17");
    maker.look("Box", "2027-06-16");
    const auto outlook = maker.outlook();
    const auto tasks = tasksOf(*outlook);
    EXPECT_EQ(only(tasks, TaskRule::FirstWildLook).done, day("2027-06-16"));
    EXPECT_FALSE(only(tasks, TaskRule::SecondWildLook).done);
}

/// The danger of a wild queen, told while cells hang in the box.
bool warnsOfWildQueens(const Outlook& outlook) {
    return std::any_of(
        outlook.findings.begin(), outlook.findings.end(),
        [](const Finding& finding) { return finding.kind == FindingKind::WildQueenOverdue; });
}

TEST(Tasks, ATickedSecondLookEndsTheClockAndUntickingBringsItBack) {
    const auto maker = season("2027-06-19");  // day 9 from the make-up
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    auto outlook = outlookOf(snapshot, memo);
    ASSERT_TRUE(warnsOfWildQueens(*outlook));
    const auto tasks = tasksOf(*outlook);
    const auto& look = only(tasks, TaskRule::SecondWildLook);
    const auto id = test::id<TaskDone>(5);
    const auto early = applied(snapshot, tick(snapshot, look, day("2027-06-17"), id)).value();
    EXPECT_TRUE(warnsOfWildQueens(*outlookOf(early, memo))) << "not all cells were begun then";
    snapshot = applied(snapshot, tick(snapshot, look, day("2027-06-19"), id)).value();
    outlook = outlookOf(snapshot, memo);
    EXPECT_FALSE(warnsOfWildQueens(*outlook));
    EXPECT_TRUE(only(tasksOf(*outlook), TaskRule::SecondWildLook).done);
    snapshot = applied(snapshot, tick(snapshot, look, std::nullopt, id)).value();
    EXPECT_TRUE(warnsOfWildQueens(*outlookOf(snapshot, memo)));
}

TEST(Tasks, ATickOfAnotherLookDoesNotSilenceTheDanger) {
    auto maker = season("2027-06-20");
    maker.makeUp("Box", "2027-05-01", 17, true);  // an older clock of the same box
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    const auto outlook = outlookOf(snapshot, memo);
    ASSERT_TRUE(warnsOfWildQueens(*outlook));
    for (const auto& task : tasksOf(*outlook)) {
        const bool second = task.key.rule == TaskRule::SecondWildLook;
        if (task.key.rule != TaskRule::FirstWildLook && !second) continue;
        const bool own = task.day > day("2027-06-10");
        if (own && second) continue;  // all but the look that counts, ticked late
        const auto after =
            applied(snapshot, tick(snapshot, task, day("2027-06-20"), test::id<TaskDone>(5)))
                .value();
        EXPECT_TRUE(warnsOfWildQueens(*outlookOf(after, memo)));
    }
}

TEST(Tasks, WhatWasMadeUpInAnEarlierSeasonIsNoTaskOfThisOne) {
    auto maker = season();
    maker.makeUp("Box", "2026-06-10", 17, true);
    for (const auto& task : tasksOf(*maker.outlook())) EXPECT_GE(task.day, day("2027-01-01"));
}

TEST(WorkDays, ReachFromTheWeekBeforeTheFirstStartToTheLastCatch) {
    auto maker = season();
    const auto outlook = maker.outlook();
    EXPECT_EQ(workDays(*outlook),
              (DayWindow{outlook->season.first - Days{67}, outlook->season.last}));
    maker.batch("late", "2027-12-20", 12, 10, "Box");
    EXPECT_EQ(workDays(*maker.outlook()).last,
              maker.outlook()->batches.back()->timeline.hold.catchDay);
}

TEST(Tasks, ATickedLookStaysWithItsClockWhenAnEarlierOneComes) {
    const auto maker = season("2027-06-17");
    auto snapshot = maker.snapshot();
    OutlookMemo memo;
    const auto before = tasksOf(*outlookOf(snapshot, memo));
    const auto key = only(before, TaskRule::FirstWildLook).key;
    ChangeSet brood;
    BuilderNote note;
    note.id = test::id<BuilderNote>(5);
    note.builder = maker.builderId("Box");
    note.kind = BuilderNoteKind::BroodIn;
    note.day = day("2027-06-04");
    note.openBrood = true;
    brood.add(note);
    snapshot = applied(snapshot, brood).value();
    const auto after = tasksOf(*outlookOf(snapshot, memo));
    const auto same =
        std::find_if(after.begin(), after.end(), [&](const Task& task) { return task.key == key; });
    ASSERT_NE(same, after.end());
    EXPECT_EQ(same->window, only(before, TaskRule::FirstWildLook).window);
}

TEST(Tasks, NucsLookedAtLeaveTheFirstLook) {
    auto maker = season("2027-07-08");
    for (int i = 1; i <= 10; ++i)
        maker.place("9", "N" + std::to_string(i) + "/-", "2027-06-21", true);
    for (int i = 1; i <= 9; ++i)
        maker.outcome("9", i < 9 ? OutcomeKind::FirstEggs : OutcomeKind::NoQueen, "2027-07-07", {},
                      "N" + std::to_string(i) + "/-");
    const auto outlook = maker.outlook();
    const auto tasks = tasksOf(*outlook);
    const auto& look = only(tasks, TaskRule::FirstLook);
    ASSERT_EQ(look.sides.size(), 1U);
    EXPECT_EQ(look.sides[0]->box->label, "N10");
    EXPECT_FALSE(look.done);
    EXPECT_TRUE(only(tasks, TaskRule::CellsIn).done);
    EXPECT_EQ(only(tasks, TaskRule::CatchQueens).sides.size(), 9U) << "the failed one is over";
}

TEST(Tasks, AFirstLookBeforeItsDayWasDoneWhenItWasDone) {
    auto maker = season("2027-07-03");
    for (int i = 1; i <= 10; ++i) {
        const auto nuc = "N" + std::to_string(i) + "/-";
        maker.place("9", nuc, "2027-06-21", true);
        maker.outcome("9", OutcomeKind::FirstEggs, i < 10 ? "2027-07-01" : "2027-07-02", {}, nuc);
    }
    const auto outlook = maker.outlook();
    const auto tasks = tasksOf(*outlook);
    const auto& look = only(tasks, TaskRule::FirstLook);
    EXPECT_GT(look.day, day("2027-07-03")) << "it keeps its place in the week";
    EXPECT_EQ(look.done, day("2027-07-02")) << "never a day that is still to come";
}

TEST(Tasks, CellsThatAreNotSafeUntilTheyLeaveAreCaged) {
    auto snapshot = season().snapshot();
    ChangeSet changes;
    const auto batch = *snapshot.all<Batch>().begin();
    auto older = *batch;
    older.larvaFromH = older.larvaToH = 60;
    changes.edit(batch, older);
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(snapshot, changes).value(), memo);
    const auto tasks = tasksOf(*outlook);
    const auto& cage = only(tasks, TaskRule::CageCells);
    EXPECT_TRUE(cage.must);
    EXPECT_EQ(cage.day, day("2027-06-20"));
    for (const auto& task : tasksOf(*season().outlook()))
        EXPECT_NE(task.key.rule, TaskRule::CageCells);
}

TEST(Tasks, OwnOnesStandAmongTheOthers) {
    const auto maker = season();
    ChangeSet changes;
    changes.add(OwnTask{test::id<OwnTask>(7), 1, day("2027-06-11"), maker.yardId("Home"),
                        "order cages", true});
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(maker.snapshot(), changes).value(), memo);
    const auto tasks = within(tasksOf(*outlook), {day("2027-06-11"), day("2027-06-11")});
    EXPECT_EQ(lines(tasks, outlook->snapshot),
              (std::vector<std::string>{"2027-06-11 Home graft 9 14 must",
                                        "2027-06-11 Home own order cages 0 must"}));
}

TEST(Tasks, BoughtVirginsComeOutOfNoBox) {
    auto snapshot = season().snapshot();
    ChangeSet changes;
    const auto batch = *snapshot.all<Batch>().begin();
    auto bought = *batch;
    bought.start = Start::Virgin;
    bought.day = day("2027-06-21");
    changes.edit(batch, bought);
    OutlookMemo memo;
    const auto outlook = outlookOf(applied(snapshot, changes).value(), memo);
    for (const auto& task : tasksOf(*outlook)) {
        EXPECT_NE(task.key.rule, TaskRule::CellsOut);
        EXPECT_NE(task.key.rule, TaskRule::Graft);
    }
    EXPECT_EQ(only(tasksOf(*outlook), TaskRule::CellsIn).day, day("2027-06-21"));
}

}  // namespace
}  // namespace tenthday
