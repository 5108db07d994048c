// The memo must never show: after any edit the outlook equals one made afresh.
#include <gtest/gtest.h>

#include <random>
#include <utility>

#include "records/verbs.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::describe;
using test::SeasonMaker;

SeasonMaker season() {
    SeasonMaker maker("2027-05-20");
    maker.yard("East", 0).yard("West", 1).builder("Box 1", "East").builder("Box 2", "East");
    for (int i = 1; i <= 30; ++i) {
        const auto label = std::to_string(i);
        maker.box(label, i % 3 == 0 ? "West" : "East", i % 4 == 0 ? "3+3" : "7", "2027-04-01");
        const auto on = toText(day("2027-05-10") + Days{i});
        for (const char* side : {"/-", "/A", "/B"})
            if ((i % 4 == 0) != (side[1] == '-')) maker.stock(label + side, on);
    }
    for (int i = 1; i <= 6; ++i)
        maker.batch(std::to_string(i), toText(day("2027-05-12") + Days{6 * i}), 12, 20 + i,
                    i % 2 == 0 ? "Box 1" : "Box 2");
    maker.weather("2026-01-01", "2026-06-20", 16).weather("2026-06-21", "2026-12-31", 22);
    return maker.makeUp("Box 1", "2027-05-23", 17, true).dayOff("2027-06-12", "2027-06-13");
}

/// One random edit of the kinds a day brings.
class Editor {
public:
    Editor(const SeasonMaker& maker, std::uint32_t seed) : maker_(maker), random_(seed) {}

    ChangeSet next(const Snapshot& snapshot) {
        const auto batch = maker_.batchId(std::to_string(pick(1, 6)));
        ChangeSet changes;
        switch (pick(0, 7)) {
            case 0:
            case 1: {
                auto moved =
                    moveBatch(snapshot, batch, snapshot.find(batch)->day + Days{pick(-5, 5)});
                if (moved.ok()) changes = std::move(moved).value();
                break;
            }
            case 2: {
                const auto bar = snapshot.all<BatchBar>().of(batch.uuid)[0];
                auto edited = *bar;
                edited.cells = Cells{pick(5, 60)};
                changes.edit(bar, edited);
                break;
            }
            case 3: {
                Outcome outcome;
                outcome.id = test::id<Outcome>(50000 + count_++);
                outcome.batch = batch;
                outcome.kind = pick(0, 1) == 0 ? OutcomeKind::TakeCount : OutcomeKind::Sealed;
                outcome.day = snapshot.find(batch)->day + Days{pick(1, 6)};
                outcome.count = Cells{pick(0, 30)};
                changes.add(outcome);
                break;
            }
            case 4: {
                const auto outcomes = snapshot.all<Outcome>().of(batch.uuid);
                if (!outcomes.empty()) changes.erase(outcomes.front());
                break;
            }
            case 5: {
                const auto row = snapshot.find(batch);
                auto edited = *row;
                edited.catchRule = static_cast<CatchRule>(pick(0, 2));
                edited.larvaToH = pick(18, 48);
                edited.larvaFromH = 12;
                changes.edit(row, edited);
                break;
            }
            case 6: {
                // A cold or a warm day of the year before, which is part of every possible season.
                const auto& days = snapshot.all<WeatherDay>();
                const auto row = *(days.begin() + pick(0, static_cast<int>(days.size()) - 1));
                auto edited = *row;
                edited.tmaxC = Tenths{pick(0, 1) == 0 ? 120 : 220};
                changes.edit(row, edited);
                break;
            }
            default: {
                const auto overrides = snapshot.all<FactOverride>();
                if (overrides.empty())
                    changes.add(FactOverride{test::id<FactOverride>(90000 + count_++), 1,
                                             "accepted", pick(500, 900)});
                else
                    changes.erase(*overrides.begin());
            }
        }
        return changes;
    }

private:
    int pick(int low, int high) { return std::uniform_int_distribution<int>(low, high)(random_); }
    const SeasonMaker& maker_;
    std::mt19937 random_;
    std::uint64_t count_ = 0;
};

TEST(OutlookMemo, EqualsAFreshOneAfterEachOfAThousandRandomEdits) {
    const auto maker = season();
    auto snapshot = maker.snapshot();
    Editor editor(maker, 42);
    OutlookMemo memo;
    auto last = outlookOf(snapshot, memo);
    int applied_ = 0;
    for (int i = 0; i < 1000; ++i) {
        auto next = applied(snapshot, editor.next(snapshot));
        if (!next) continue;
        snapshot = std::move(next).value();
        ++applied_;
        OutlookMemo fresh;
        const auto afresh = describe(*outlookOf(snapshot, fresh));
        OutlookMemo another(*std::exchange(last, outlookOf(snapshot, memo)));
        ASSERT_EQ(describe(*last), afresh) << "after edit " << i;
        ASSERT_EQ(describe(*outlookOf(snapshot, another)), afresh) << "gone on from the last one";
    }
    EXPECT_GT(applied_, 800);
}

TEST(OutlookMemo, KeepsEveryBatchThatDidNotChange) {
    const auto maker = season();
    const auto snapshot = maker.snapshot();
    OutlookMemo memo;
    const auto before = outlookOf(snapshot, memo);
    const auto id = maker.batchId("3");
    const auto moved = moveBatch(snapshot, id, snapshot.find(id)->day + Days{2});
    OutlookMemo another(*before);
    for (auto* one : {&memo, &another}) {
        const auto after = outlookOf(applied(snapshot, moved.value()).value(), *one);
        for (const auto& batch : before->batches) {
            const auto same = std::find(after->batches.begin(), after->batches.end(), batch);
            EXPECT_EQ(same == after->batches.end(), batch->batch->id == id) << batch->batch->label;
        }
    }
}

TEST(Why, LeadsFromTheDateBackToWhatWasEntered) {
    const auto maker = season();
    const auto reasons = why(maker.snapshot(), maker.batchId("1"), Event::Catch);
    ASSERT_GE(reasons.size(), 4U);
    EXPECT_EQ(reasons.front().event, Event::Catch);
    EXPECT_EQ(reasons.back().event, Event::Graft);
    EXPECT_EQ(reasons.back().kind, Reason::Kind::Entered);
}

TEST(MoveBatch, OnceGraftedOnlyWhatIsPlannedAheadMoves) {
    SeasonMaker maker("2027-05-20");
    maker.yard("East").builder("Box", "East").box("1", "East", "7", "2027-04-01");
    maker.stock("1/-", "2027-05-20").batch("1", "2027-05-15", 12, 20, "Box");
    maker.outcome("1", OutcomeKind::Graft, "2027-05-15", 20);
    const auto bare = maker.snapshot();
    EXPECT_FALSE(moveBatch(bare, maker.batchId("1"), day("2027-05-17")).ok());
    maker.place("1", "1/-", "2027-05-25", false);
    const auto snapshot = maker.snapshot();
    const auto moved = moveBatch(snapshot, maker.batchId("1"), day("2027-05-17"));
    ASSERT_TRUE(moved.ok());
    const auto next = applied(snapshot, moved.value());
    ASSERT_TRUE(next.ok());
    EXPECT_EQ(next.value().find(maker.batchId("1"))->day, day("2027-05-15"));
    EXPECT_EQ((*next.value().all<Placement>().begin())->day, day("2027-05-27"));
}

}  // namespace
}  // namespace tenthday
