// Which days a dragged batch is drawn to, and that the search for them can be ended at any time.
#include "chart/magnet.h"

#include <gtest/gtest.h>

#include <QTest>

#include "drafting/day_trials.h"
#include "exchange/example.h"
#include "support/days.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

constexpr int kPatience = 20'000;  // ms

class MagnetOfTheExample : public ::testing::Test {
protected:
    MagnetOfTheExample() {
        for (const auto& one : outlook->batches)
            if (!one->timeline.grafted) planned.push_back(one->batch->id);
    }
    /// The days on which a batch clashes with nothing, tried one by one.
    [[nodiscard]] std::vector<Day> byTrials(Id<Batch> batch) const {
        const auto draft = draftOf(outlook->snapshot, batch);
        DayTrials trials(*outlook, draft, {});
        std::vector<Day> clear;
        for (int by = -Magnet::kReach; by <= Magnet::kReach; ++by) {
            const Day on = draft.day + Days{by};
            if (on >= outlook->snapshot.today() && trials.clashesWithNothing(on))
                clear.push_back(on);
        }
        return clear;
    }
    static bool waitFor(const Magnet& magnet) {
        return QTest::qWaitFor([&] { return !magnet.isLooking(); }, kPatience);
    }

    static OutlookPtr example() {
        auto snapshot = applied(Snapshot{}, exampleContent()).value();
        snapshot.setToday(day("2027-06-03"));
        return freshOutlook(snapshot);
    }

    OutlookPtr outlook = example();
    std::vector<Id<Batch>> planned;
};

TEST_F(MagnetOfTheExample, FindsEachDayThatClashesWithNothing) {
    ASSERT_FALSE(planned.empty());
    for (const auto batch : planned) {
        Magnet magnet;
        magnet.begin(outlook, batch);
        ASSERT_TRUE(waitFor(magnet));
        EXPECT_EQ(magnet.clearDays(), byTrials(batch));
    }
}

TEST_F(MagnetOfTheExample, FramesThatNeverRestDoNotKeepItFromThem) {
    Magnet magnet;
    magnet.begin(outlook, planned.front());
    magnet.frameBegins();
    ASSERT_TRUE(waitFor(magnet));
    EXPECT_EQ(magnet.clearDays(), byTrials(planned.front()));
}

TEST_F(MagnetOfTheExample, WhatIsEndedIsNotHeardOfAgain) {
    ASSERT_GT(planned.size(), 1U);
    Magnet magnet;
    magnet.begin(outlook, planned.front());
    magnet.end();
    EXPECT_FALSE(magnet.isLooking());
    EXPECT_TRUE(magnet.clearDays().empty());
    magnet.begin(outlook, planned.back());
    ASSERT_TRUE(waitFor(magnet));
    EXPECT_EQ(magnet.clearDays(), byTrials(planned.back()));
    {
        Magnet gone;
        gone.begin(outlook, planned.front());
        QTest::qWait(10);
    }
    QTest::qWait(50);  // its search finds nobody to tell
}

}  // namespace
}  // namespace tenthday::test
