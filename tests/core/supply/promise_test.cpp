/// What can be promised beside what is owed.
#include "supply/promise.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

Snapshot threeBatches() {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    maker.batch("1", "2027-05-10", 14, 40, "B1")
        .batch("2", "2027-05-20", 14, 40, "B2")
        .batch("3", "2027-06-10", 14, 40, "B1");
    return maker.snapshot();
}
std::vector<PromiseWeek> weeksOf(const Snapshot& snapshot, double level = kPromiseLevel) {
    const auto outlook = freshOutlook(snapshot);
    auto supply = supplyOf(*outlook);
    return promiseByWeek(supply, level);
}
const PromiseWeek& in(const std::vector<PromiseWeek>& weeks, int week) {
    return weeks.at(static_cast<std::size_t>(week));  // 2027 begins in week 2026-W53
}

TEST(Promise, HasEveryWeekOfTheSeason) {
    const auto weeks = weeksOf(threeBatches());
    ASSERT_EQ(weeks.size(), 53U);
    EXPECT_EQ(toText(weeks.front().week), "2026-W53");
    EXPECT_EQ(toText(in(weeks, 20).week), "2027-W20");
    EXPECT_EQ(toText(weeks.back().week), "2027-W52");
}

TEST(Promise, WithoutOrdersAllThatIsReadyCanBePromised) {
    const auto weeks = weeksOf(threeBatches());
    for (const auto& week : weeks) {
        EXPECT_EQ(week.owed, 0);
        if (daysOf(week.week).last < day("2027-05-01")) continue;
        EXPECT_EQ(week.canPromise, week.ready);
    }
    EXPECT_EQ(in(weeks, 22).ready, 0);
    EXPECT_GT(in(weeks, 26).ready, 15);
    EXPECT_GT(weeks.back().ready, in(weeks, 26).ready);
}

TEST(Promise, SurerIsFewer) {
    const auto sure = weeksOf(threeBatches(), .99);
    const auto bold = weeksOf(threeBatches(), .5);
    EXPECT_LT(sure.back().canPromise, bold.back().canPromise);
}

TEST(Promise, WhatIsOwedLaterIsKeptBack) {
    const auto free = weeksOf(threeBatches());
    const auto weeks = weeksOf(with(threeBatches(), orderFor(1, 20, "2027-07-06")));
    const int left = in(free, 27).ready - 20;
    EXPECT_EQ(in(weeks, 26).owed, 0);
    EXPECT_EQ(in(weeks, 27).owed, 20);
    EXPECT_LE(in(weeks, 26).canPromise, left);
    EXPECT_LE(in(weeks, 27).canPromise, left);
    EXPECT_EQ(weeks.back().canPromise, free.back().canPromise - 20);
}

TEST(Promise, WhileALaterOrderIsShortThereIsNone) {
    const auto weeks = weeksOf(with(threeBatches(), orderFor(1, 500, "2027-08-06")));
    for (const auto& week : weeks) EXPECT_EQ(week.canPromise, 0);
}

TEST(Promise, AWeekThatIsOverTakesNone) {
    auto snapshot = threeBatches();
    snapshot.setToday(day("2027-07-14"));
    const auto weeks = weeksOf(snapshot);
    EXPECT_EQ(in(weeks, 27).canPromise, 0);
    EXPECT_GT(in(weeks, 28).canPromise, 0);
}

TEST(Promise, APromiseTakenLeavesEveryOrderAsSureAsItMustBe) {
    const auto snapshot =
        with(threeBatches(), orderFor(1, 10, "2027-06-25"), orderFor(2, 8, "2027-07-12"));
    for (const auto& week : weeksOf(snapshot)) {
        if (week.canPromise == 0) continue;
        const auto end = toText(daysOf(week.week).last);
        const auto outlook = freshOutlook(with(snapshot, orderFor(3, week.canPromise, end)));
        for (const auto& order : supplyOf(*outlook).orders())
            EXPECT_EQ(order.state, OrderState::Met) << end << ' ' << order.order->label;
        const auto more = freshOutlook(with(snapshot, orderFor(3, week.canPromise + 1, end)));
        bool allMet = true;
        for (const auto& order : supplyOf(*more).orders())
            allMet = allMet && order.state == OrderState::Met;
        EXPECT_FALSE(allMet) << end;
    }
}

TEST(FirstPromise, IsTheFirstDayOfEnough) {
    const auto outlook = freshOutlook(with(threeBatches(), orderFor(1, 10, "2027-06-25")));
    auto supply = supplyOf(*outlook);
    const auto first = firstPromise(supply, 12, .9);
    ASSERT_TRUE(first.has_value());
    const auto chanceOn = [&](Day due) {
        const auto asked = freshOutlook(with(outlook->snapshot, orderFor(2, 12, toText(due))));
        double least = 1;
        for (const auto& order : supplyOf(*asked).orders()) least = std::min(least, order.chance);
        return least;
    };
    EXPECT_GE(chanceOn(*first), .9 - 1e-9);
    EXPECT_LT(chanceOn(*first - Days{1}), .9);
    EXPECT_FALSE(firstPromise(supply, 500, .9).has_value());
}

TEST(FirstPromise, EggsComeBeforeSealedBroodAndAge) {
    const auto outlook = freshOutlook(threeBatches());
    const auto days = firstPromiseByRule(supplyOf(*outlook), 10, .9);
    ASSERT_TRUE(days[0] && days[1] && days[2]);
    EXPECT_LT(*days[0], *days[1]);
    EXPECT_LE(*days[1], *days[2]);
}

}  // namespace
}  // namespace tenthday::test
