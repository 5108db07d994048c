// Tasks of feeding, drone comb and days for mating; hours at which boxes stay shut.
#include <gtest/gtest.h>

#include <algorithm>

#include "outlook/outlook.h"
#include "support/season_maker.h"
#include "tasks/tick.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// One batch grafted on Fri 11 June 2027 at Home, ten nucs at Mill.
class SeasonTasks : public ::testing::Test {
protected:
    SeasonTasks() {
        maker_.yard("Mill", 2).yard("Home", 1).yard("Isle", 3).builder("Box", "Home");
        maker_.makeUp("Box", "2027-06-10", 17, true);
        for (int i = 1; i <= 10; ++i) {
            const auto box = "N" + std::to_string(i);
            maker_.box(box, "Mill", "7", "2027-04-01").stock(box + "/-", "2027-06-18");
        }
        maker_.batch("9", "2027-06-11", 15, 14, "Box");
        snapshot_ = maker_.snapshot();
    }
    template <class Row>
    void add(Row row) {
        row.id = id<Row>(++next_);
        ChangeSet changes;
        changes.add(std::move(row));
        snapshot_ = applied(snapshot_, changes).value();
    }
    void note(const char* yard, YardNoteKind kind, const char* from, const char* until) {
        add(YardNote{{}, 1, maker_.yardId(yard), kind, day(from), day(until), {}});
    }
    void mate(Mating mating) {
        ChangeSet changes;
        const auto before = snapshot_.find(maker_.batchId("9"));
        Batch after = *before;
        after.mating = mating;
        changes.edit(before, after);
        snapshot_ = applied(snapshot_, changes).value();
    }
    /// Those of one rule; they point into the last outlook.
    std::vector<Task> tasks(TaskRule rule) {
        outlook_ = outlookOf(snapshot_, memo_);
        auto all = tasksOf(*outlook_);
        std::erase_if(all, [&](const Task& task) { return task.key.rule != rule; });
        return all;
    }

    SeasonMaker maker_{"2027-04-01"};
    Snapshot snapshot_;
    OutlookPtr outlook_;
    OutlookMemo memo_;
    std::uint64_t next_ = 830'000;
};

TEST_F(SeasonTasks, ABuilderInADearthIsFedFromItsMakeUpOn) {
    EXPECT_TRUE(tasks(TaskRule::Feed).empty());
    note("Home", YardNoteKind::Dearth, "2027-06-01", "2027-06-30");
    const auto feed = tasks(TaskRule::Feed);
    ASSERT_EQ(feed.size(), 1U);
    EXPECT_EQ(feed[0].day, day("2027-06-10")) << "three days before, but it stands from then on";
    EXPECT_EQ(feed[0].window.last, day("2027-06-11"));
    EXPECT_FALSE(feed[0].done);
    EXPECT_EQ(feed[0].builder, maker_.builderId("Box"));
    // Ticked, it counts as fed: the take is that of other days.
    const auto hungry = outlook_->batches[0]->timeline.counts.accepted;
    const auto ticked = tick(snapshot_, feed[0], day("2027-06-10"), id<TaskDone>(++next_));
    snapshot_ = applied(snapshot_, ticked).value();
    EXPECT_EQ(tasks(TaskRule::Feed).at(0).done, day("2027-06-10"));
    EXPECT_NEAR(hungry, 14 * 0.15, 1e-9);
    EXPECT_NEAR(outlook_->batches[0]->timeline.counts.accepted, 14 * 0.75, 1e-9);
}

// S18: two months before the first flights, 18 days after the graft.
TEST_F(SeasonTasks, DroneCombGoesInForTheFirstFlights) {
    const auto comb = tasks(TaskRule::DroneComb);
    ASSERT_EQ(comb.size(), 1U);
    EXPECT_EQ(comb[0].day, day("2027-04-30"));
    EXPECT_EQ(comb[0].window.last, day("2027-05-20"));
    EXPECT_EQ(comb[0].yard, maker_.yardId("Mill"));
    EXPECT_EQ(comb[0].count, 8);
    add(DroneSighting{{}, 1, maker_.yardId("Mill"), day("2027-04-20"), DroneStage::CombIn, 8, {}});
    EXPECT_EQ(tasks(TaskRule::DroneComb).at(0).done, day("2027-04-20"));
}

TEST_F(SeasonTasks, CombThatWouldComeTooLateIsNoTask) {
    snapshot_.setToday(day("2027-05-20"));
    EXPECT_EQ(tasks(TaskRule::DroneComb).at(0).day, day("2027-05-20"));
    snapshot_.setToday(day("2027-05-21"));
    EXPECT_TRUE(tasks(TaskRule::DroneComb).empty());
}

TEST_F(SeasonTasks, NucsGoToTheStationAndBack) {
    mate(Mating::Station);
    add(MatingStay{
        {}, 1, maker_.batchId("9"), maker_.yardId("Isle"), day("2027-06-27"), day("2027-07-10")});
    const auto there = tasks(TaskRule::ToStation);
    ASSERT_EQ(there.size(), 1U);
    EXPECT_EQ(there[0].day, day("2027-06-27"));
    EXPECT_EQ(there[0].yard, maker_.yardId("Isle"));
    EXPECT_EQ(there[0].count, 10) << "all its nucs";
    EXPECT_FALSE(there[0].must) << "only cells, cages, the breeder queen and the graft must";
    EXPECT_EQ(tasks(TaskRule::FromStation).at(0).day, day("2027-07-10"));
    EXPECT_TRUE(tasks(TaskRule::Inseminate).empty());
}

TEST_F(SeasonTasks, InseminationHasItsDays) {
    mate(Mating::Insemination);
    add(MatingStay{{}, 1, maker_.batchId("9"), {}, day("2027-07-01"), day("2027-07-03")});
    const auto days = tasks(TaskRule::Inseminate);
    ASSERT_EQ(days.size(), 1U);
    EXPECT_EQ(days[0].window.first, day("2027-07-01"));
    EXPECT_EQ(days[0].window.last, day("2027-07-03"));
    EXPECT_TRUE(tasks(TaskRule::DroneComb).empty()) << "no drones are wanted";
}

// S17: leave the nucs alone from 11 to 16 h.
TEST_F(SeasonTasks, NucsStayShutWhileVirginsFly) {
    maker_.batch("8", "2027-06-11", 15, 14, "Box");
    snapshot_ = maker_.snapshot();
    const auto look = tasks(TaskRule::FirstLook);
    ASSERT_FALSE(look.empty());
    ASSERT_TRUE(look[0].shut) << "not all lay yet";
    EXPECT_EQ(*look[0].shut, (ShutHours{Hour{11}, Hour{16}, true, false}));
    const auto on = shutHours(snapshot_, outlook_->nucs, *outlook_->mating, maker_.yardId("Mill"),
                              day("2027-06-22"), Opens::Nucs);
    EXPECT_FALSE(on) << "no virgin is old enough";
}

TEST_F(SeasonTasks, ADayKnownToBeTooColdShutsNothing) {
    add(WeatherDay{{}, 1, day("2027-07-02"), Tenths{120}, {}, Tenths{0}, Tenths{10}, {}});
    for (int i = 0; i < 400; ++i)  // a past year, so that weather is reckoned with
        add(WeatherDay{
            {}, 1, day("2025-12-01") + Days{i}, Tenths{250}, {}, Tenths{0}, Tenths{10}, {}});
    (void)tasks(TaskRule::FirstLook);
    const auto on = [&](const char* text) {
        return shutHours(snapshot_, outlook_->nucs, *outlook_->mating, maker_.yardId("Mill"),
                         day(text), Opens::Nucs);
    };
    EXPECT_FALSE(on("2027-07-02"));
    EXPECT_TRUE(on("2027-07-01"));
}

TEST_F(SeasonTasks, RobbingShutsAllBoxesForMostOfTheDay) {
    note("Home", YardNoteKind::Robbing, "2027-06-09", "2027-06-12");
    note("Mill", YardNoteKind::Robbing, "2027-07-01", "2027-07-20");
    const auto graft = tasks(TaskRule::Graft);
    ASSERT_TRUE(graft.at(0).shut);
    EXPECT_EQ(*graft[0].shut, (ShutHours{Hour{9}, Hour{18}, false, true}));
    const auto look = tasks(TaskRule::FirstLook);
    ASSERT_TRUE(look.at(0).shut);
    EXPECT_EQ(*look[0].shut, (ShutHours{Hour{9}, Hour{18}, true, true}));
}

}  // namespace
}  // namespace tenthday
