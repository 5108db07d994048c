/// One stage against the binomial and beta functions of another library (Boost.Math), against the
/// closed moments of the beta-binomial (standard statistics) and against simulation.
#include "losses/stage.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/special_functions/binomial.hpp>
#include <numeric>
#include <random>

#include "support/beta_draws.h"

namespace tenthday {
namespace {

double massOf(const CountSpread& count) {
    return std::accumulate(count.chances().begin(), count.chances().end(), 0.0);
}

struct BinomialCase {
    int cells;
    double rate;
};
class StageOfEqualBatches : public ::testing::TestWithParam<BinomialCase> {};

TEST_P(StageOfEqualBatches, IsBinomial) {
    const auto [cells, rate] = GetParam();
    const boost::math::binomial_distribution<> law(cells, rate);
    const auto count = passed(CountSpread(cells), {rate, 0});
    for (int k = 0; k <= cells; ++k) EXPECT_NEAR(count.of(k), pdf(law, k), 1e-12) << k;
    for (int k = 1; k <= cells; ++k)
        EXPECT_NEAR(count.atLeast(k), cdf(complement(law, k - 1)), 1e-11) << k;
}
INSTANTIATE_TEST_SUITE_P(Sizes, StageOfEqualBatches,
                         ::testing::Values(BinomialCase{1, .75}, BinomialCase{40, .75},
                                           BinomialCase{40, .02}, BinomialCase{1000, .95},
                                           BinomialCase{1000, .1}, BinomialCase{9999, .6}),
                         [](const auto& test) {
                             return "Of" + std::to_string(test.param.cells) + "At" +
                                    std::to_string(std::lround(test.param.rate * 100));
                         });

TEST(Stage, CompoundOfTwoEqualOnesIsBinomialOfTheProduct) {
    const auto count = passed(passed(CountSpread(700), {.75, 0}), {.6, 0});
    const boost::math::binomial_distribution<> law(700, .45);
    for (int k = 0; k <= 700; ++k) EXPECT_NEAR(count.of(k), pdf(law, k), 1e-11) << k;
}

/// The chance of k of n by the beta function itself.
double betaBinomial(int n, int k, double mean, double sd) {
    const double size = mean * (1 - mean) / (sd * sd) - 1;
    const double a = mean * size;
    const double b = (1 - mean) * size;
    return boost::math::binomial_coefficient<double>(n, k) * boost::math::beta(a + k, b + n - k) /
           boost::math::beta(a, b);
}

TEST(Stage, WhereBatchesDifferIsBetaBinomial) {
    for (const auto& rate : {StageRate{.75, .12}, StageRate{.95, .03}, StageRate{.5, .4}})
        for (const int n : {1, 15, 45, 200})
            for (int k = 0; k <= n; ++k)
                EXPECT_NEAR(passed(CountSpread(n), rate).of(k),
                            betaBinomial(n, k, rate.mean, rate.sd), 1e-12)
                    << k << " of " << n;
}

TEST(Stage, HasTheClosedMoments) {
    for (const int n : {1, 12, 100, 1000, 4000}) {
        const StageRate rate{.8, .08};
        const auto count = passed(CountSpread(n), rate);
        const double rho = .08 * .08 / (.8 * .2);
        EXPECT_NEAR(count.mean(), n * .8, 1e-9 * n);
        EXPECT_NEAR(count.sd(), std::sqrt(n * .8 * .2 * (1 + (n - 1) * rho)), 1e-8 * n);
    }
}

/// Two stages, by the laws of total expectation and total variance.
TEST(Stage, AfterAnotherHasTheCompoundMoments) {
    const StageRate first{.75, .12};
    const StageRate second{.88, .06};
    const auto before = passed(CountSpread(600), first);
    const auto count = passed(before, second);
    const double rho = correlation(second);
    const double meanSquare = before.sd() * before.sd() + before.mean() * before.mean();
    const double within = .88 * .12 * (before.mean() * (1 - rho) + meanSquare * rho);
    EXPECT_NEAR(count.mean(), 600 * .75 * .88, 1e-8);
    EXPECT_NEAR(count.sd() * count.sd(), within + .88 * .88 * before.sd() * before.sd(), 1e-5);
}

TEST(Stage, AgreesWithDrawsOfBatches) {
    constexpr int kDraws = 200000;
    const StageRate rate{.75, .12};
    std::mt19937_64 random(20270510);
    std::vector<int> drawn(46);
    for (int i = 0; i < kDraws; ++i) ++drawn[test::drawPassed(random, 45, rate)];
    const auto count = passed(CountSpread(45), rate);
    int more = 0;
    for (int k = 45; k > 0; --k) {
        more += drawn[k];
        const double chance = count.atLeast(k);
        // Five standard errors of a share of so many draws, and one draw.
        const double tolerance = 5 * std::sqrt(chance * (1 - chance) / kDraws) + 1.0 / kDraws;
        EXPECT_NEAR(static_cast<double>(more) / kDraws, chance, tolerance) << k;
    }
}

TEST(Stage, LosesNothingAndKeepsAllAtTheEnds) {
    const auto before = passed(CountSpread(50), {.7, .1});
    EXPECT_EQ(passed(before, {1, 0}), before);
    EXPECT_EQ(passed(before, {1, .2}), before);
    EXPECT_EQ(passed(before, {0, .2}), CountSpread(0));
    EXPECT_EQ(passed(CountSpread(0), {.7, .1}), CountSpread(0));
}

/// Any number, any rate, any spread, even those that no share can have.
TEST(Stage, ConservesMassAndMean) {
    std::mt19937_64 random(1);
    std::uniform_real_distribution<> share(0, 1);
    for (int round = 0; round < 200; ++round) {
        const int n = static_cast<int>(share(random) * (round % 10 == 0 ? 3000 : 150));
        const StageRate first{share(random), share(random) * .5};
        const StageRate second{share(random), share(random) * .05};
        const auto before = passed(CountSpread(n), first);
        const auto count = passed(before, second);
        EXPECT_NEAR(massOf(count), 1, 1e-10) << n << ' ' << first.mean << ' ' << first.sd;
        EXPECT_NEAR(count.mean(), n * first.mean * second.mean, 1e-9 * (n + 1));
        for (const double chance : count.chances()) EXPECT_GE(chance, 0);
        EXPECT_LE(count.last(), n);
    }
}

TEST(Stage, MoreCellsOrABetterRateNeverLowerAChance) {
    std::mt19937_64 random(2);
    std::uniform_real_distribution<> share(0, 1);
    for (int round = 0; round < 200; ++round) {
        const int n = 1 + static_cast<int>(share(random) * 120);
        const StageRate rate{share(random), share(random) * .2};
        const auto count = passed(CountSpread(n), rate);
        const auto ofMore = passed(CountSpread(n + 1), rate);
        const auto thinned = passed(count, {share(random), 0});
        for (int k = 0; k <= n + 1; ++k) {
            EXPECT_GE(ofMore.atLeast(k), count.atLeast(k) - 1e-11) << n << ' ' << rate.mean;
            EXPECT_GE(count.atLeast(k), thinned.atLeast(k) - 1e-11) << n << ' ' << rate.mean;
        }
    }
}

TEST(Stage, SpreadsNoShareCanHaveAreCut) {
    EXPECT_NEAR(correlation({.5, .25}), .25, 1e-12);
    EXPECT_EQ(correlation({.99, .5}), kMostCorrelation);
    EXPECT_EQ(correlation({.99, 0}), 0);
    EXPECT_EQ(correlation({1, .1}), 0);
}

/// What one part of a batch shows and what is then thought of the rest make up the whole.
TEST(Stage, PartSeenAndRestMakeUpTheBatch) {
    const StageRate rate{.75, .12};
    const auto firstBar = passed(CountSpread(15), rate);
    std::vector<double> weights;
    std::vector<CountSpread> wholes;
    for (int k = 0; k <= 15; ++k) {
        weights.push_back(firstBar.of(k));
        wholes.push_back(passed(CountSpread(25), given(rate, {15, k})).shifted(k));
    }
    const auto put = mixture(weights, wholes);
    const auto whole = passed(CountSpread(40), rate);
    for (int k = 0; k <= 40; ++k) EXPECT_NEAR(put.of(k), whole.of(k), 1e-11) << k;
}

TEST(Stage, WhatIsSeenCannotSpeakWhereBatchesAreAlikeOrItIsImpossible) {
    const StageRate alike{.75, 0};
    EXPECT_EQ(given(alike, {15, 3}), alike);
    const StageRate rate{.75, .12};
    EXPECT_EQ(given(rate, {15, 16}), rate);
    EXPECT_EQ(given(rate, {0, 0}), rate);
    EXPECT_LT(given(rate, {15, 3}).mean, .75);
    EXPECT_LT(given(rate, {15, 11}).sd, .12);
}

}  // namespace
}  // namespace tenthday
