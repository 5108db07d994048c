/// Batches that share a season.
#include "losses/season_counts.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <numeric>
#include <random>

#include "support/beta_draws.h"

namespace tenthday {
namespace {

using boost::math::binomial_distribution;

/// Ripe cells in nucs, of which a share mates; nothing else is lost, and batches do not differ.
SeasonBatch cells(int count, double mated, std::vector<double> seasonShare = {}) {
    SeasonBatch batch;
    batch.standing[ChainPoint::Emerged] = count;
    batch.rates[LossStage::Mated] = {mated, 0};
    batch.seasonShare = std::move(seasonShare);
    return batch;
}
double tail(int n, double p, int k) {
    return cdf(complement(binomial_distribution<>(n, p), k - 1));
}

// 36 cells, 24 wanted, 75 % mated on the mean of seasons (design, derived).
TEST(SeasonCounts, AnOrderIsLessSureWhereItsBatchesShareABadSeason) {
    const std::vector<SeasonBatch> alone{cells(36, .75)};
    const SeasonCounts independent(alone, {}, ChainPoint::Laying);
    EXPECT_NEAR(independent.atLeast(24), .91, .005);
    EXPECT_NEAR(independent.atLeast(24), tail(36, .75, 24), 1e-11);

    // One season in five gives 35 %, the others 85 %: the same 75 % on the mean.
    const std::vector<SeasonBatch> split{cells(12, 1, {.35, .85}), cells(24, 1, {.35, .85})};
    const std::vector<double> weights{1, 4};
    const SeasonCounts shared(split, weights, ChainPoint::Laying);
    EXPECT_NEAR(shared.overall().mean(), 27, 1e-10);
    EXPECT_NEAR(shared.atLeast(24), .80, .005);
    EXPECT_NEAR(shared.atLeast(24), .2 * tail(36, .35, 24) + .8 * tail(36, .85, 24), 1e-11);
}

TEST(SeasonCounts, GivenTheSeasonBatchesAdd) {
    const auto rates = chainRates(Facts());
    const SeasonBatch a{standing(30), rates, {.2, .9, .9}};
    const SeasonBatch b{standing(45), rates, {1, .4, .4}};
    const std::vector<SeasonBatch> both{a, b};
    const std::vector<double> weights{1, 1, 2};
    const SeasonCounts counts(both, weights, ChainPoint::Good);
    ASSERT_EQ(counts.seasons(), 3u);
    EXPECT_NEAR(counts.weight(0) + counts.weight(1) + counts.weight(2), 1, 1e-15);
    for (std::size_t season = 0; season < 3; ++season)
        EXPECT_EQ(counts.in(season),
                  reached(a.standing, rates, ChainPoint::Good, a.seasonShare[season]) +
                      reached(b.standing, rates, ChainPoint::Good, b.seasonShare[season]));
    const auto overall = counts.overall();
    EXPECT_NEAR(std::accumulate(overall.chances().begin(), overall.chances().end(), 0.0), 1, 1e-11);
    for (int k = 1; k <= 75; ++k) {
        EXPECT_NEAR(counts.atLeast(k), overall.atLeast(k), 1e-11);
        EXPECT_NEAR(counts.atLeast(k),
                    .25 * counts.in(0).atLeast(k) + .75 * counts.in(1).atLeast(k), 1e-11);
    }
}

TEST(SeasonCounts, CellsAndVirginsKnowNoWeather) {
    const std::vector<SeasonBatch> batches{{standing(30), chainRates(Facts()), {0, 1}}};
    const std::vector<double> weights{1, 1};
    for (const auto point : {ChainPoint::Sealed, ChainPoint::Emerged}) {
        const SeasonCounts counts(batches, weights, point);
        EXPECT_EQ(counts.in(0), counts.in(1));
        EXPECT_EQ(counts.in(0), reached(batches[0].standing, batches[0].rates, point));
    }
}

TEST(SeasonCounts, NothingPlannedGivesNothing) {
    const SeasonCounts counts({}, {}, ChainPoint::Good);
    EXPECT_EQ(counts.overall(), CountSpread(0));
    EXPECT_EQ(counts.atLeast(0), 1);
    EXPECT_EQ(counts.atLeast(1), 0);
}

/// Seasons by lot, batches by lot in each.
TEST(SeasonCounts, AgreeWithDrawsOfSeasons) {
    constexpr int kDraws = 50000;
    const auto rates = chainRates(Facts());
    const std::vector<double> weights{.2, .3, .5};
    const std::vector<SeasonBatch> batches{{standing(30), rates, {.1, .8, 1}},
                                           {standing(30), rates, {.9, .3, 1}}};
    std::mt19937_64 random(20270512);
    std::discrete_distribution<std::size_t> seasons(weights.begin(), weights.end());
    std::vector<int> drawn(61);
    for (int i = 0; i < kDraws; ++i) {
        const auto season = seasons(random);
        int sum = 0;
        for (const auto& batch : batches) {
            int count = 30;
            for (const auto stage : kAllLossStages) {
                count = test::drawPassed(random, count, rates[stage]);
                if (stage == LossStage::Mated)
                    count = test::drawPassed(random, count, {batch.seasonShare[season], 0});
            }
            sum += count;
        }
        ++drawn[sum];
    }
    const SeasonCounts counts(batches, weights, ChainPoint::Good);
    int more = 0;
    for (int k = 60; k > 0; --k) {
        more += drawn[k];
        const double chance = counts.atLeast(k);
        const double tolerance = 5 * std::sqrt(chance * (1 - chance) / kDraws) + 1.0 / kDraws;
        EXPECT_NEAR(static_cast<double>(more) / kDraws, chance, tolerance) << k;
    }
}

TEST(SeasonCounts, MoreCellsInABatchNeverLowerAChance) {
    std::mt19937_64 random(4);
    std::uniform_real_distribution<> share(0, 1);
    std::uniform_int_distribution<> grafts(0, 40);
    const auto rates = chainRates(Facts());
    for (int round = 0; round < 25; ++round) {
        std::vector<SeasonBatch> batches;
        for (int i = 0; i < 3; ++i)
            batches.push_back(
                {standing(grafts(random)), rates, {share(random), share(random), share(random)}});
        const std::vector<double> weights{share(random), share(random), share(random)};
        const SeasonCounts fewer(batches, weights, ChainPoint::Good);
        ++batches[1].standing[ChainPoint::Grafted];
        const SeasonCounts more(batches, weights, ChainPoint::Good);
        for (int k = 1; k <= 120; ++k) EXPECT_GE(more.atLeast(k), fewer.atLeast(k) - 1e-11) << k;
    }
}

}  // namespace
}  // namespace tenthday
