#include "drafting/day_trials.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

#include "calendar/iso_week.h"
#include "support/draft_maker.h"
#include "support/with_rows.h"

namespace tenthday {
namespace {

using test::day;
using test::freshOutlook;
using test::id;
using test::methodId;
using test::saved;
using test::SeasonMaker;

const auto kNew = id<Batch>(700'000);
constexpr std::array<bool, 7> kNoWeekend{false, false, false, false, false, true, true};

/// Nucs enough for every cell, and one builder of each kind.
SeasonMaker season() {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("Box", "Mill").builder("Start", "Mill", BuilderKind::Starter);
    maker.builder("Finish", "Mill", BuilderKind::Finisher);
    for (int i = 1; i <= 30; ++i) {
        const auto box = "N" + std::to_string(i);
        maker.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-06-07");
    }
    return maker;
}

/// Larvae of 18 h grafted on Friday 11 June 2027 at 15:00, in one box.
BatchDraft friday(const Snapshot& snapshot, MakeUpPlan makeUp) {
    auto draft = newDraft(snapshot, day("2027-06-11"), kNew);
    draft.method = methodId(snapshot, "one box");
    draft.bars = {{0, {}, Cells{20}, {findByLabel<Builder>(snapshot, "Box")->id}, {}}};
    draft.hour = Hour{15};
    draft.larvaFromH = draft.larvaToH = 18;
    draft.makeUp = makeUp;
    return draft;
}

DayTrials trials(const Snapshot& snapshot, const BatchDraft& draft) {
    return {*freshOutlook(snapshot), draft, freeDays(snapshot, kNoWeekend)};
}

/// "graft 2027-06-11", by the day it falls on beside free days.
std::vector<std::string> jobLines(const DayTrial& trial, const FreeDays& free) {
    std::vector<std::string> lines;
    for (const auto& job : trial.jobs)
        lines.push_back(std::string(token(job.rule)) + " " + toText(job.dayBeside(free)));
    return lines;
}

std::vector<Day> clearDays(const std::vector<DayTrial>& week) {
    std::vector<Day> clear;
    for (const auto& trial : week)
        if (trial.onFreeDays.empty()) clear.push_back(trial.graft);
    return clear;
}

TEST(DayTrials, WithoutWeekendWorkAndOpenBroodFridayIsTheOnlyDay) {
    const auto snapshot = season().snapshot();
    const auto week = trials(snapshot, friday(snapshot, MakeUpPlan::WithoutOpenBrood)).week();
    ASSERT_EQ(week.size(), 7U);
    EXPECT_EQ(week.front().graft, day("2027-06-07"));
    EXPECT_EQ(clearDays(week), std::vector{day("2027-06-11")});
    EXPECT_EQ(jobLines(week[4], freeDays(snapshot, kNoWeekend)),
              (std::vector<std::string>{"confine 2027-06-07", "free_breeder 2027-06-08",
                                        "make_up_builder 2027-06-10", "graft 2027-06-11",
                                        "take_count 2027-06-14", "cells_out 2027-06-21"}));
}

TEST(DayTrials, WithOpenBroodFridayHasOneLookOnSaturday) {
    const auto snapshot = season().snapshot();
    const auto week = trials(snapshot, friday(snapshot, MakeUpPlan::WithOpenBrood)).week();
    ASSERT_EQ(week.size(), 7U);
    EXPECT_TRUE(clearDays(week).empty());
    const auto& onFree = week[4].onFreeDays;
    ASSERT_EQ(onFree.size(), 1U);
    EXPECT_EQ(onFree[0].rule, TaskRule::SecondWildLook);
    EXPECT_EQ(onFree[0].dayBeside(freeDays(snapshot, kNoWeekend)), day("2027-06-19"));
    for (const auto& trial : week) EXPECT_GE(trial.onFreeDays.size(), 1U);
}

TEST(DayTrials, AStarterEmptiedTheDayAfterLeavesNoDay) {
    const auto maker = season();
    const auto snapshot = maker.snapshot();
    auto draft = friday(snapshot, MakeUpPlan::WithoutOpenBrood);
    draft.method = methodId(snapshot, "starter and finisher");
    draft.bars[0].steps = {maker.builderId("Start"), maker.builderId("Finish")};
    const auto week = trials(snapshot, draft).week();
    ASSERT_EQ(week.size(), 7U);
    EXPECT_TRUE(clearDays(week).empty());
    ASSERT_EQ(week[4].onFreeDays.size(), 1U);
    EXPECT_EQ(week[4].onFreeDays[0].rule, TaskRule::MoveCells);
}

TEST(DayTrials, AMakeUpThatWouldBePastIsTold) {
    const auto maker = season();
    const auto snapshot = maker.snapshot();
    auto draft = newDraft(snapshot, snapshot.today(), kNew);
    draft.makeUp = MakeUpPlan::WithoutOpenBrood;
    DayTrials all(*freshOutlook(snapshot), draft, {});
    EXPECT_EQ(all.on(draft.day).value().lateMakeUp, snapshot.today() - Days{1});
    EXPECT_FALSE(all.on(draft.day).value().isClear());
    EXPECT_FALSE(all.on(draft.day + Days{1}).value().lateMakeUp);
    draft.makeUp = MakeUpPlan::None;
    EXPECT_FALSE(DayTrials(*freshOutlook(snapshot), draft, {}).on(draft.day).value().lateMakeUp);
    // What was planned for yesterday and stays there is no news.
    auto made = season();
    made.makeUp("Box", "2027-04-30", 17, false).batch("9", "2027-05-01", 15, 14, "Box");
    const auto nine = draftOf(made.snapshot(), made.batchId("9"));
    EXPECT_FALSE(
        DayTrials(*freshOutlook(made.snapshot()), nine, {}).on(nine.day).value().lateMakeUp);
}

TEST(DayTrials, ThatFridaysLarvaEmergesOnWednesdayEvening) {
    const auto snapshot = season().snapshot();
    const auto after = saved(snapshot, friday(snapshot, MakeUpPlan::WithoutOpenBrood));
    OutlookMemo memo;
    const auto outlook = outlookOf(after, memo);
    const auto* emergence = outlook->find(kNew)->timeline.find(Event::Emergence);
    ASSERT_NE(emergence, nullptr);
    EXPECT_EQ(toText(emergence->likely), "2027-06-23T21:00");
}

/// Each weekday's jobs counted by hand from the offsets of the job: -4, -3, -1, 0, +1 to +3, +10.
TEST(DayTrials, WeekdaysAgreeWithCountingByHand) {
    const auto snapshot = season().snapshot();
    const auto week = trials(snapshot, friday(snapshot, MakeUpPlan::WithoutOpenBrood)).week();
    const auto isFree = [](Day d) { return isoWeekday(d) > 5; };
    for (const auto& trial : week) {
        std::size_t onFree = 0;
        for (const int offset : {-4, -3, -1, 0, 10}) onFree += isFree(trial.graft + Days{offset});
        onFree += isFree(trial.graft + Days{1}) && isFree(trial.graft + Days{2}) &&
                  isFree(trial.graft + Days{3});
        EXPECT_EQ(trial.onFreeDays.size(), onFree) << toText(trial.graft);
    }
}

TEST(DayTrials, DaysOffOfTheBookAreFreeDays) {
    auto maker = season();
    maker.dayOff("2027-06-21", "2027-06-22");
    const auto snapshot = maker.snapshot();
    const auto week = trials(snapshot, friday(snapshot, MakeUpPlan::WithoutOpenBrood)).week();
    ASSERT_EQ(week.size(), 7U);
    EXPECT_TRUE(clearDays(week).empty());
    ASSERT_EQ(week[4].onFreeDays.size(), 1U);
    EXPECT_EQ(week[4].onFreeDays[0].rule, TaskRule::CellsOut);
}

TEST(DayTrials, NearestClearDaysKeepOffAnotherBatch) {
    auto maker = season();
    maker.batch("9", "2027-06-09", 15, 20, "Box");
    const auto snapshot = maker.snapshot();
    auto draft = friday(snapshot, MakeUpPlan::None);
    DayTrials all(*freshOutlook(snapshot), draft, {});
    const auto own = all.on(draft.day);
    ASSERT_TRUE(own);
    EXPECT_FALSE(own.value().clashes.empty());
    const auto clear = all.nearestClear(3);
    ASSERT_EQ(clear.size(), 3U);
    // Whatever is offered is free of findings by the plain way too, and nothing nearer is.
    OutlookMemo memo;
    const auto before = outlookOf(snapshot, memo)->findings.size();
    const auto findingsOn = [&](Day on) {
        draft.day = on;
        return outlookOf(saved(snapshot, draft), memo)->findings.size();
    };
    auto furthest = Days{0};
    for (const auto& trial : clear) {
        EXPECT_EQ(findingsOn(trial.day), before) << toText(trial.day);
        furthest = std::max(furthest, date::abs(trial.day - day("2027-06-11")));
    }
    for (Days away{0}; away < furthest; away += Days{1})
        for (const Day on : {day("2027-06-11") - away, day("2027-06-11") + away}) {
            const bool offered = std::any_of(clear.begin(), clear.end(),
                                             [&](const auto& trial) { return trial.day == on; });
            if (!offered) {
                EXPECT_GT(findingsOn(on), before) << toText(on);
            }
        }
}

TEST(DayTrials, WhetherADayClashesIsToldWithoutItsJobsToo) {
    auto maker = season();
    maker.batch("9", "2027-06-09", 15, 20, "Box");
    const auto snapshot = maker.snapshot();
    const auto draft = friday(snapshot, MakeUpPlan::None);
    DayTrials all(*freshOutlook(snapshot), draft, {});
    DayTrials quick(*freshOutlook(snapshot), draft, {});
    int clear = 0;
    for (int by = -20; by <= 20; ++by) {
        const Day on = draft.day + Days{by};
        const auto trial = all.on(on);
        const bool isClear = trial && trial.value().clashesWithNothing();
        EXPECT_EQ(quick.clashesWithNothing(on), isClear) << toText(on);
        clear += isClear;
    }
    EXPECT_GT(clear, 0);
    EXPECT_LT(clear, 41);
}

TEST(DayTrials, AnEditedBatchDoesNotClashWithItself) {
    auto maker = season();
    maker.batch("9", "2027-06-11", 15, 20, "Box");
    const auto snapshot = maker.snapshot();
    DayTrials all(*freshOutlook(snapshot), draftOf(snapshot, maker.batchId("9")), {});
    const auto clear = all.nearestClear(3);
    ASSERT_EQ(clear.size(), 3U);
    EXPECT_EQ(clear[0].day, day("2027-06-11"));
    EXPECT_EQ(clear[1].day, day("2027-06-10"));
    EXPECT_EQ(clear[2].day, day("2027-06-12"));
}

/// What is wrong with it already speaks against its own day too.
TEST(DayTrials, AnEditedBatchThatClashesIsToldToClash) {
    auto maker = season();
    maker.batch("9", "2027-06-11", 15, 60, "Box");
    const auto snapshot = maker.snapshot();
    const auto draft = draftOf(snapshot, maker.batchId("9"));
    DayTrials all(*freshOutlook(snapshot), draft, {});
    EXPECT_FALSE(all.clashesWithNothing(draft.day)) << "60 cells, 20 nucs";
}

/// A batch that cannot be deleted, as queens of it were delivered, is still moved against the rest
/// of the season only, and not against itself.
TEST(DayTrials, ABatchWithDeliveriesDoesNotClashWithItselfEither) {
    auto maker = season();
    maker.batch("9", "2027-06-11", 15, 20, "Box");
    Delivery delivery;
    delivery.id = id<Delivery>(1);
    delivery.order = id<Order>(1);
    delivery.day = day("2027-05-01");
    delivery.fromBatch = maker.batchId("9");
    const auto snapshot =
        test::with(maker.snapshot(), test::orderFor(1, 5, "2027-07-20"), delivery);
    DayTrials all(*freshOutlook(snapshot), draftOf(snapshot, maker.batchId("9")), {});
    const auto own = all.on(day("2027-06-12"));
    ASSERT_TRUE(own.ok());
    DayTrials bare(*freshOutlook(maker.snapshot()), draftOf(maker.snapshot(), maker.batchId("9")),
                   {});
    EXPECT_EQ(own.value().clashes.size(), bare.on(day("2027-06-12")).value().clashes.size());
    // Twenty cells more than there are nucs: told at its own day, as it is not there without it.
    auto crowded = draftOf(snapshot, maker.batchId("9"));
    crowded.bars[0].cells = Cells{60};
    DayTrials many(*freshOutlook(snapshot), crowded, {});
    EXPECT_FALSE(many.on(crowded.day).value().clashes.empty());
}

TEST(DayTrials, NothingIsOfferedBeforeTodayOrOutsideTheSeason) {
    const auto snapshot = season().snapshot();
    auto draft = friday(snapshot, MakeUpPlan::None);
    draft.day = day("2027-05-01");
    DayTrials all(*freshOutlook(snapshot), draft, {});
    const auto clear = all.nearestClear(200);
    ASSERT_FALSE(clear.empty());
    for (const auto& trial : clear) EXPECT_GE(trial.day, snapshot.today());
}

TEST(DayTrials, ACancelledSearchEndsEmpty) {
    const auto snapshot = season().snapshot();
    auto all = trials(snapshot, friday(snapshot, MakeUpPlan::None));
    int asked = 0;
    const auto cancelled = [&] { return ++asked > 2; };
    EXPECT_TRUE(all.week(cancelled).empty());
    EXPECT_EQ(asked, 3);
    EXPECT_TRUE(all.nearestClear(3, cancelled).empty());
}

TEST(DayTrials, ARefusedDraftHasNoTrials) {
    const auto snapshot = season().snapshot();
    auto draft = friday(snapshot, MakeUpPlan::None);
    draft.bars.clear();
    auto all = trials(snapshot, draft);
    EXPECT_FALSE(all.on(draft.day));
    EXPECT_TRUE(all.week().empty());
    EXPECT_TRUE(all.nearestClear(3).empty());
    EXPECT_FALSE(startFor(snapshot, draft, Event::Ripe, day("2027-06-30"), Sureness::Likely));
}

/// The last start found by trying every day of the weeks before.
std::optional<Day> lastByTrying(const Snapshot& snapshot, BatchDraft draft, Event event, Day wanted,
                                Sureness sureness) {
    std::optional<Day> last;
    OutlookMemo memo;
    for (Day start = wanted - Days{70}; start <= wanted + Days{5}; start += Days{1}) {
        draft.day = start;
        const auto next = saved(snapshot, draft);
        const auto* dates = memo.batch(next, next.find(draft.id))->timeline.find(event);
        if (dates == nullptr) return std::nullopt;
        if (dayOf(sureness == Sureness::Likely ? dates->likely : dates->latest) <= wanted)
            last = start;
    }
    return last;
}

TEST(StartFor, IsTheLastDayThatWillDo) {
    const auto snapshot = season().snapshot();
    auto draft = friday(snapshot, MakeUpPlan::None);
    for (const auto start :
         {Start::Graft, Start::Confined, Start::SealedFound, Start::Ripe, Start::Virgin})
        for (const auto event :
             {Event::Ripe, Event::Emergence, Event::FirstEggs, Event::SealedBrood, Event::Catch})
            for (const auto sureness : {Sureness::Likely, Sureness::Latest}) {
                draft.start = start;
                EXPECT_EQ(startFor(snapshot, draft, event, day("2027-08-02"), sureness),
                          lastByTrying(snapshot, draft, event, day("2027-08-02"), sureness))
                    << token(start) << " " << token(event);
            }
}

TEST(StartFor, RipeCellsOnAMondayNeedAFriday) {
    const auto snapshot = season().snapshot();
    const auto draft = friday(snapshot, MakeUpPlan::None);
    EXPECT_EQ(startFor(snapshot, draft, Event::Ripe, day("2027-06-21"), Sureness::Likely),
              day("2027-06-11"));
}

TEST(JobsOf, LooksBelongToTheBatchTheyThreaten) {
    auto maker = season();
    maker.makeUp("Box", "2027-06-10", 17, true).batch("9", "2027-06-11", 15, 20, "Box");
    maker.batch("8", "2027-05-20", 15, 20, "Box");
    const auto outlook = maker.outlook();
    const auto tasks = tasksOf(*outlook);
    const auto looks = [&](const std::string& label) {
        const auto jobs = jobsOf(*outlook, tasks, maker.batchId(label));
        return std::count_if(jobs.begin(), jobs.end(), [](const Job& job) {
            return job.rule == TaskRule::FirstWildLook || job.rule == TaskRule::SecondWildLook;
        });
    };
    EXPECT_EQ(looks("9"), 2);
    EXPECT_EQ(looks("8"), 0);
}

}  // namespace
}  // namespace tenthday
