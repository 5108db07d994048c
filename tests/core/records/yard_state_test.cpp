#include "records/yard_state.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// One batch grafted on Fri 11 June 2027 in a box at Home; notes of the yard by hand.
class DearthTest : public ::testing::Test {
protected:
    DearthTest() {
        maker_.yard("Home").builder("Box", "Home").batch("9", "2027-06-11", 15, 40, "Box");
        snapshot_ = maker_.snapshot();
    }
    void note(YardNoteKind kind, const char* from, const char* until) {
        ChangeSet changes;
        changes.add(YardNote{
            id<YardNote>(++next_), 1, maker_.yardId("Home"), kind, day(from), day(until), {}});
        snapshot_ = applied(snapshot_, changes).value();
    }
    void feed(const char* on) {
        ChangeSet changes;
        changes.add(BuilderNote{id<BuilderNote>(++next_),
                                1,
                                maker_.builderId("Box"),
                                BuilderNoteKind::Feed,
                                day(on),
                                {},
                                false,
                                BroodAge::All,
                                {},
                                {}});
        snapshot_ = applied(snapshot_, changes).value();
    }
    OutlookPtr outlook() { return outlookOf(snapshot_, memo_); }
    double accepted() {
        const auto all = outlook();
        return all->batches[0]->timeline.counts.accepted;
    }
    std::vector<FindingKind> kinds() {
        const auto all = outlook();
        std::vector<FindingKind> found;
        for (const auto& finding : all->findings) found.push_back(finding.kind);
        return found;
    }
    static bool has(const std::vector<FindingKind>& kinds, FindingKind kind) {
        return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
    }

    SeasonMaker maker_{"2027-06-01"};
    Snapshot snapshot_;
    OutlookMemo memo_;
    std::uint64_t next_ = 810'000;
};

// S83: 10 to 20 % in a late-summer dearth; S19: 80 % and more even in poor weather, fed.
TEST_F(DearthTest, StartsFewGraftsUnlessTheBuilderIsFed) {
    EXPECT_NEAR(accepted(), 30, 1e-9);
    note(YardNoteKind::Dearth, "2027-06-09", "2027-06-30");
    EXPECT_NEAR(accepted(), 6, 1e-9) << "40 grafts, 15 %";
    EXPECT_TRUE(has(kinds(), FindingKind::HungryBuilder));
    feed("2027-06-08");
    EXPECT_NEAR(accepted(), 30, 1e-9);
    EXPECT_FALSE(has(kinds(), FindingKind::HungryBuilder));
}

TEST_F(DearthTest, CountsOnTheDayOfTheGraftOnly) {
    note(YardNoteKind::Dearth, "2027-06-12", "2027-06-30");
    EXPECT_NEAR(accepted(), 30, 1e-9);
}

TEST_F(DearthTest, AFlowThatIsSeenDecides) {
    note(YardNoteKind::Dearth, "2027-06-01", "2027-06-30");
    note(YardNoteKind::Flow, "2027-06-10", "2027-06-14");
    EXPECT_NEAR(accepted(), 30, 1e-9);
}

TEST_F(DearthTest, AFeedLongAgoServesNoMore) {
    note(YardNoteKind::Dearth, "2027-05-20", "2027-06-30");
    feed("2027-06-03");  // eight days before
    EXPECT_NEAR(accepted(), 6, 1e-9);
    feed("2027-06-04");
    EXPECT_NEAR(accepted(), 30, 1e-9);
}

// Contract: a warning above 24 started cells in a box that finishes, above 20 in a dearth; none
// where a flow or feed is noted. S76: 15 to 20 in a dearth, 100 and more in a flow.
TEST_F(DearthTest, RoomFollowsFlowAndDearth) {
    const auto full = [&]() -> std::optional<BuilderOutlook::Overfull> {
        const auto all = outlook();
        const auto& found = all->builders[0].overfull;
        return found.empty() ? std::nullopt : std::optional(found.front());
    };
    ASSERT_TRUE(full());
    EXPECT_EQ(full()->room, 24);
    EXPECT_FALSE(full()->dearth);
    note(YardNoteKind::Flow, "2027-06-10", "2027-06-30");
    EXPECT_FALSE(full());
}

TEST_F(DearthTest, ADearthThatBeginsWhileTheyStandThereLeavesLessRoom) {
    SeasonMaker maker("2027-06-01");
    maker.yard("Home").builder("Box", "Home").batch("9", "2027-06-11", 15, 30, "Box");
    ChangeSet changes;
    changes.add(YardNote{id<YardNote>(++next_),
                         1,
                         maker.yardId("Home"),
                         YardNoteKind::Dearth,
                         day("2027-06-13"),
                         day("2027-06-30"),
                         {}});
    const auto all = outlookOf(applied(maker.snapshot(), changes).value(), memo_);
    ASSERT_EQ(all->builders[0].overfull.size(), 1U) << "22.5 cells fit the box, not the dearth";
    const auto& full = all->builders[0].overfull.front();
    EXPECT_TRUE(full.dearth);
    EXPECT_EQ(full.room, 20);
    EXPECT_EQ(dayOf(full.from), day("2027-06-13"));
    ChangeSet fed;
    fed.add(BuilderNote{id<BuilderNote>(++next_),
                        1,
                        maker.builderId("Box"),
                        BuilderNoteKind::Feed,
                        day("2027-06-12"),
                        {},
                        false,
                        BroodAge::All,
                        {},
                        {}});
    EXPECT_TRUE(
        outlookOf(applied(all->snapshot, fed).value(), memo_)->builders[0].overfull.empty());
}

TEST_F(DearthTest, ATickedFeedCountsForTheRoomToo) {
    note(YardNoteKind::Dearth, "2027-06-09", "2027-06-30");
    ChangeSet counted;  // the take is known: 22 cells started
    Outcome take;
    take.id = id<Outcome>(++next_);
    take.batch = maker_.batchId("9");
    take.kind = OutcomeKind::TakeCount;
    take.day = day("2027-06-12");
    take.count = Cells{22};
    counted.add(take);
    snapshot_ = applied(snapshot_, counted).value();
    const auto hungry = outlook();
    ASSERT_EQ(hungry->builders[0].overfull.size(), 1U);
    ChangeSet ticked;
    TaskDone tick;
    tick.id = id<TaskDone>(++next_);
    tick.rule = TaskRule::Feed;
    tick.subject = toText(maker_.batchId("9").uuid);
    tick.place = toText(maker_.builderId("Box").uuid);
    tick.day = day("2027-06-10");
    ticked.add(tick);
    snapshot_ = applied(snapshot_, ticked).value();
    const auto fed = outlook();
    EXPECT_TRUE(fed->builders[0].overfull.empty());
}

}  // namespace
}  // namespace tenthday
