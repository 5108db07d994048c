#include "chart/yard_stacks.h"

#include <gtest/gtest.h>

#include "records/verbs.h"
#include "support/days.h"
#include "support/large_season.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

/// Every day of every yard, as kept and as reckoned afresh.
void expectAsAfresh(YardStacks& stacks, const Outlook& outlook) {
    for (const auto& yard : outlook.nucs.yards) {
        const YardStack fresh(outlook, yard);
        for (Day on = outlook.season.first; on <= outlook.season.last; on += Days{1})
            ASSERT_EQ(stacks.on(yard, on), fresh.on(on)) << yard.yard->label << toText(on);
        const auto places = fresh.places();
        ASSERT_EQ(stacks.places(yard).size(), places.size());
        for (std::size_t i = 0; i < places.size(); ++i)
            ASSERT_EQ(stacks.places(yard)[i].from, places[i].from) << yard.yard->label;
    }
}

int daysOfAll(const Outlook& outlook) {
    int days = 0;
    for (const auto& yard : outlook.nucs.yards) days += static_cast<int>(yard.days.size());
    return days;
}

TEST(YardStacks, WhatDidNotChangeIsKept) {
    const auto outlook = sampleOutlook();
    YardStacks stacks;
    stacks.show(outlook);
    expectAsAfresh(stacks, *outlook);
    const int all = daysOfAll(*outlook);
    EXPECT_EQ(stacks.reckoned(), all);
    stacks.show(outlook);
    expectAsAfresh(stacks, *outlook);
    EXPECT_EQ(stacks.reckoned(), all) << "the same season again";
}

TEST(YardStacks, WhatIsReckonedBeforeItIsAskedForIsTheSame) {
    OutlookMemo memo;
    const auto season = outlookOf(largeSeason({24, 120, 2}), memo);
    YardStacks stacks;
    stacks.show(season);
    std::vector<const YardOutlook*> yards;
    for (const auto& yard : season->nucs.yards) yards.push_back(&yard);
    const DayWindow some{season->season.first - Days{3}, season->season.first + Days{40}};
    stacks.reckon(yards, some);
    EXPECT_EQ(stacks.reckoned(), 41 * static_cast<int>(yards.size()));
    stacks.reckon(yards, {season->season.first, season->season.last + Days{3}});
    EXPECT_EQ(stacks.reckoned(), daysOfAll(*season));
    expectAsAfresh(stacks, *season);
    EXPECT_EQ(stacks.reckoned(), daysOfAll(*season)) << "all was there";
}

TEST(YardStacks, WhatABatchMovesIsReckonedAgain) {
    OutlookMemo memo;
    auto before = outlookOf(largeSeason({24, 120, 2}), memo);
    ASSERT_GT(before->nucs.yards.size(), 2U);
    const int all = daysOfAll(*before);
    YardStacks stacks;
    stacks.show(before);
    expectAsAfresh(stacks, *before);
    int moved = 0;
    for (int n = 20; n < 24; ++n) {
        const auto batch = before->snapshot.find(largeSeasonBatch(n));
        const auto changes = moveBatch(before->snapshot, batch->id, batch->day + Days{2});
        ASSERT_TRUE(changes) << changes.error().text;
        const auto next = applied(before->snapshot, changes.value());
        ASSERT_TRUE(next) << next.error().text;
        const auto after = outlookOf(next.value(), memo);
        stacks.show(after);
        expectAsAfresh(stacks, *after);
        before = after;
        ++moved;
    }
    EXPECT_GT(stacks.reckoned(), all) << "a yard that changed is reckoned again";
    EXPECT_LT(stacks.reckoned(), all * (1 + moved)) << "one that did not is kept";
}

TEST(YardStacks, DaysBeforeAChangeAreKept) {
    OutlookMemo memo;
    const auto before = outlookOf(largeSeason({24, 120, 2}), memo);
    YardStacks stacks;
    stacks.show(before);
    expectAsAfresh(stacks, *before);
    const int all = stacks.reckoned();
    const auto batch = before->snapshot.find(largeSeasonBatch(23));
    const auto changes = moveBatch(before->snapshot, batch->id, batch->day + Days{2});
    ASSERT_TRUE(changes) << changes.error().text;
    const auto after = outlookOf(applied(before->snapshot, changes.value()).value(), memo);
    stacks.show(after);
    expectAsAfresh(stacks, *after);
    const auto first = before->find(batch->id)->timeline.hold.transferDay;
    const auto days = (before->season.last - first).count() + 1;
    EXPECT_GT(stacks.reckoned(), all);
    EXPECT_LE(stacks.reckoned() - all, days * static_cast<int>(before->nucs.yards.size()));
}

// What is kept of the yards that did not change must not look into the season before: the run under
// address checks tells.
TEST(YardStacks, ASeasonMayGoOnceTheNextIsShown) {
    YardStacks stacks;
    auto first = sampleOutlook();
    stacks.show(first);
    const auto day = first->season.first + Days{40};
    for (const auto& yard : first->nucs.yards) EXPECT_FALSE(stacks.on(yard, day).empty());
    auto copy = std::make_shared<Outlook>(*first);
    ASSERT_GT(copy->nucs.yards.size(), 1U);
    for (auto& block : copy->nucs.yards.front().blocks) block.days.last -= Days{1};
    first.reset();
    stacks.show(copy);
    expectAsAfresh(stacks, *copy);
}

}  // namespace
}  // namespace tenthday::test
