#include "chart/yard_stack.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <map>

#include "support/days.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

class SampleYards : public ::testing::Test {
protected:
    OutlookPtr outlook = sampleOutlook();
};

TEST_F(SampleYards, RunsFillTheYardWithoutGapOrOverlap) {
    for (const auto& yard : outlook->nucs.yards) {
        const YardStack stack(*outlook, yard);
        for (std::size_t i = 0; i < yard.days.size(); ++i) {
            float top = 0;
            for (const auto& run : stack.on(outlook->season.first + Days{static_cast<int>(i)})) {
                ASSERT_NEAR(run.from, top, 1e-3);
                ASSERT_GT(run.to, run.from);
                top = run.to;
            }
            ASSERT_NEAR(top, yard.days[i].sides, 1e-2);
        }
    }
}

TEST_F(SampleYards, WhiteIsExactlyTheReadyNumber) {
    for (const auto& yard : outlook->nucs.yards) {
        const YardStack stack(*outlook, yard);
        for (std::size_t i = 0; i < yard.days.size(); ++i) {
            float ready = 0;
            for (const auto& run : stack.on(outlook->season.first + Days{static_cast<int>(i)}))
                if (run.band == Band::Ready) ready += run.to - run.from;
            ASSERT_NEAR(ready, yard.days[i].numbers.ready, 1e-2);
        }
    }
}

TEST_F(SampleYards, ABatchStaysInItsPlaces) {
    // 17 lies above 15 in Alder, and stays there when 15's nucs are free again.
    const auto& alder = outlook->nucs.yards[1];
    const YardStack stack(*outlook, alder);
    for (const auto& on : {day("2027-06-08"), day("2027-06-20")})
        for (const auto& run : stack.on(on)) {
            if (run.batch == sampleBatch("17")) {
                EXPECT_GE(run.from, 24.99F);
            }
        }
}

TEST_F(SampleYards, AQueenOfASeasonBeforeBelongsToNoBatch) {
    auto changed = std::make_shared<Outlook>(*outlook);
    auto& yard = changed->nucs.yards[0];
    const Day on = day("2027-07-06");
    auto& stack = yard.days[static_cast<std::size_t>((on - changed->season.first).count())].stack;
    const auto most = std::max_element(stack.begin(), stack.end());
    ASSERT_GT(*most, 0);
    --*most;
    ++stack[static_cast<std::size_t>(NucState::JudgedGood)];
    for (auto& side : changed->nucs.sides)
        if (side.yardOn(on) == yard.yard->id) {
            side.wintered.push_back({nullptr, changed->season.first, kLastDay});
            break;
        }
    float hers = 0;
    for (const auto& run : YardStack(*changed, yard).on(on))
        if (run.band == Band::JudgedGood && !run.batch) hers += run.to - run.from;
    EXPECT_NEAR(hers, 1, 1e-2);
}

TEST_F(SampleYards, ReadyNucsWithoutAQueenTurnWhite) {
    auto changed = std::make_shared<Outlook>(*outlook);
    auto& yard = changed->nucs.yards[0];
    const Day on = day("2027-07-06");  // 18's failures are known
    auto& numbers = yard.days[static_cast<std::size_t>((on - changed->season.first).count())];
    const auto noQueen = numbers.stack[static_cast<std::size_t>(NucState::NoQueen)];
    ASSERT_GT(noQueen, 2);
    numbers.numbers.ready += 2;
    float white = 0;
    float hatched = 0;
    for (const auto& run : YardStack(*changed, yard).on(on)) {
        if (run.band == Band::Ready) white += run.to - run.from;
        if (run.band == Band::NoQueen) hatched += run.to - run.from;
    }
    EXPECT_NEAR(white, numbers.numbers.ready, 1e-2);
    EXPECT_NEAR(hatched, noQueen - 2, 1e-2);
}

/// Heights of a batch's laying queens that are no whole nucs.
int brokenEdges(const Outlook& outlook, Id<Batch> batch) {
    int broken = 0;
    for (const auto& yard : outlook.nucs.yards) {
        const YardStack stack(outlook, yard);
        for (Day on = outlook.season.first; on <= outlook.season.last; on += Days{1})
            for (const auto& run : stack.on(on)) {
                const double height = run.to - run.from;
                if (run.batch == batch && run.band == Band::Laying &&
                    std::abs(height - std::round(height)) > 0.01)
                    ++broken;
            }
    }
    return broken;
}

TEST_F(SampleYards, FirstEggsStandAtTheirChanceUntilSomebodyLooks) {
    const auto batch = sampleBatch("18");
    EXPECT_GE(brokenEdges(*outlook, batch), 2);
    auto seen = std::make_shared<Outlook>(*outlook);
    SideOutlook side;
    side.rounds.emplace_back();
    side.rounds.back().batch = batch;
    side.rounds.back().seen = NucState::Laying;
    seen->nucs.sides.push_back(side);
    EXPECT_EQ(brokenEdges(*seen, batch), 0);
}

TEST_F(SampleYards, OutsideTheSeasonNothingStands) {
    const YardStack stack(*outlook, outlook->nucs.yards[0]);
    EXPECT_TRUE(stack.on(outlook->season.first - Days{1}).empty());
    EXPECT_TRUE(stack.on(outlook->season.last + Days{1}).empty());
}

}  // namespace
}  // namespace tenthday::test
