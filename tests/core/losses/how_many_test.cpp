/// How many grafts, both ways round, for the split at hand.
#include "losses/how_many.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <numeric>
#include <random>

namespace tenthday {
namespace {

/// Three good seasons and one in which hardly a virgin flies.
const std::vector<double> kFourSeasons{1, 1, 1, 1};
const std::vector<double> kOneBad{.9, 1, .8, .05};

Split evenSplit(std::size_t batches, const std::vector<double>& seasonShare = {}) {
    Split split;
    for (std::size_t i = 0; i < batches; ++i)
        split.batches.push_back({1, chainRates(Facts()), seasonShare});
    if (!seasonShare.empty()) split.seasonWeights = kFourSeasons;
    return split;
}
std::int32_t sumOf(const std::vector<std::int32_t>& grafts) {
    return std::accumulate(grafts.begin(), grafts.end(), 0);
}

TEST(HowManyGrafts, OfEqualBatchesOneStageIsTheBinomialAnswer) {
    Split split;
    split.batches.push_back({1, {}, {}});
    split.batches[0].rates[LossStage::Accepted] = {.75, 0};
    const auto needed = graftsNeeded(split, 24, .9);
    ASSERT_TRUE(needed.total);
    const auto tail = [](int n) {
        return cdf(complement(boost::math::binomial_distribution<>(n, .75), 23));
    };
    EXPECT_GE(tail(*needed.total), .9);
    EXPECT_LT(tail(*needed.total - 1), .9);
    EXPECT_NEAR(needed.chance, tail(*needed.total), 1e-11);
    EXPECT_EQ(needed.ceiling, 1);
}

TEST(HowManyGrafts, BothWaysAgree) {
    for (const std::size_t batches : {1, 3, 5}) {
        for (const double chance : {.5, .7}) {
            const auto split = evenSplit(batches, kOneBad);
            const auto needed = graftsNeeded(split, 40, chance);
            ASSERT_TRUE(needed.total) << batches;
            EXPECT_EQ(sumOf(needed.grafts), *needed.total);
            EXPECT_EQ(needed.grafts, graftsOf(split, *needed.total));
            EXPECT_GE(needed.chance, chance);
            EXPECT_NEAR(chanceOf(split, needed.grafts, 40), needed.chance, 1e-12);
            EXPECT_NEAR(countsOf(split, needed.grafts).atLeast(40), needed.chance, 1e-11);
            EXPECT_LT(chanceOf(split, graftsOf(split, *needed.total - 1), 40), chance);
        }
    }
}

TEST(HowManyGrafts, MoreBatchesNeedFewerGraftsAsTheirLuckEvensOut) {
    const auto one = graftsNeeded(evenSplit(1), 40, .9);
    const auto two = graftsNeeded(evenSplit(2), 40, .9);
    const auto five = graftsNeeded(evenSplit(5), 40, .9);
    ASSERT_TRUE(one.total && two.total && five.total);
    EXPECT_GT(*one.total, *two.total);
    EXPECT_GT(*two.total, *five.total);
    const auto oneMore = graftsNeeded(withOneMore(evenSplit(1), {}), 40, .9);
    EXPECT_EQ(oneMore.total, two.total);
}

TEST(HowManyGrafts, SaysThatWeatherCapsTheChance) {
    auto split = evenSplit(2, {1, 1, 1, 0});
    const auto needed = graftsNeeded(split, 10, .9);
    EXPECT_FALSE(needed.total);
    EXPECT_NEAR(needed.ceiling, .75, 1e-12);
    EXPECT_NEAR(needed.chance, .75, 1e-4) << "what the most grafts can do";
    EXPECT_EQ(sumOf(needed.grafts), kMostGrafts);
    EXPECT_TRUE(graftsNeeded(split, 10, .7).total);

    // A batch in other weather lifts the cap.
    const auto lifted = graftsNeeded(withOneMore(split, {0, 1, 1, 1}), 10, .9);
    EXPECT_EQ(lifted.ceiling, 1);
    EXPECT_TRUE(lifted.total);
}

TEST(HowManyGrafts, SaysThatTheMostGraftsDoNotDo) {
    const auto needed = graftsNeeded(evenSplit(2), 40, .9, 60);
    EXPECT_FALSE(needed.total);
    EXPECT_EQ(needed.ceiling, 1) << "it is not the weather";
    EXPECT_LT(needed.chance, .9);
    EXPECT_NEAR(needed.chance, chanceOf(evenSplit(2), needed.grafts, 40), 1e-12);
}

TEST(HowManyGrafts, WhatIsUnderwayCounts) {
    auto split = evenSplit(2);
    const auto bare = graftsNeeded(split, 40, .9);
    SeasonBatch sure;
    sure.standing[ChainPoint::Good] = 25;
    split.underway.push_back(sure);
    const auto helped = graftsNeeded(split, 40, .9);
    ASSERT_TRUE(bare.total && helped.total);
    EXPECT_EQ(helped.total, graftsNeeded(evenSplit(2), 15, .9).total);
    split.underway[0].standing[ChainPoint::Good] = 40;
    EXPECT_EQ(graftsNeeded(split, 40, .9).total, 0);
}

TEST(HowManyGrafts, UnderwayInTheSameBadSeasonCapsToo) {
    auto split = evenSplit(1, {1, 1, 1, 0});
    SeasonBatch underway;
    underway.standing[ChainPoint::Emerged] = 60;
    underway.rates = chainRates(Facts());
    underway.seasonShare = {1, 1, 1, 0};
    split.underway.push_back(underway);
    EXPECT_NEAR(graftsNeeded(split, 10, .9).ceiling, .75, 1e-12);
    split.underway[0].seasonShare = {0, 1, 1, 1};
    EXPECT_GT(graftsNeeded(split, 10, .9).ceiling, .99);
}

TEST(HowManyGrafts, NoneWantedOrNoBatchToGraft) {
    EXPECT_EQ(graftsNeeded(evenSplit(2), 0, .9).total, 0);
    const auto nothing = graftsNeeded(Split{}, 10, .9);
    EXPECT_FALSE(nothing.total);
    EXPECT_EQ(nothing.ceiling, 0);
    EXPECT_EQ(nothing.chance, 0);
}

TEST(HowManyGrafts, CellsAreWantedToo) {
    auto split = evenSplit(2, {0, 0, 0, 0});
    split.point = ChainPoint::Sealed;
    EXPECT_TRUE(graftsNeeded(split, 40, .95).total) << "no weather before mating";
    EXPECT_EQ(graftsNeeded(split, 40, .95).ceiling, 1);
}

TEST(GraftsOfASplit, AreWholeInProportionAndNeverFewerOfMore) {
    std::mt19937_64 random(5);
    std::uniform_real_distribution<> share(.1, 3);
    for (int round = 0; round < 30; ++round) {
        auto split = evenSplit(4);
        double sum = 0;
        for (auto& batch : split.batches) sum += batch.share = share(random);
        auto before = graftsOf(split, 0);
        for (std::int32_t total = 1; total <= 150; ++total) {
            const auto grafts = graftsOf(split, total);
            EXPECT_EQ(sumOf(grafts), total);
            for (std::size_t i = 0; i < grafts.size(); ++i) {
                EXPECT_GE(grafts[i], before[i]) << total;
                EXPECT_NEAR(grafts[i], total * split.batches[i].share / sum, 2) << total;
            }
            before = grafts;
        }
    }
    EXPECT_EQ(graftsOf(evenSplit(3), 45), (std::vector<std::int32_t>{15, 15, 15}));
}

TEST(HowManyGrafts, OneMoreGraftNeverLowersTheChance) {
    const auto split = evenSplit(3, kOneBad);
    double before = 0;
    for (std::int32_t total = 0; total <= 120; ++total) {
        const double chance = chanceOf(split, graftsOf(split, total), 20);
        EXPECT_GE(chance, before - 1e-11) << total;
        before = chance;
    }
    EXPECT_GT(before, .7);
}

}  // namespace
}  // namespace tenthday
