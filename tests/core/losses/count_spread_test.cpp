/// Whole counts against binomial sums of another library (Boost.Math).
#include "losses/count_spread.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <numeric>

namespace tenthday {
namespace {

using boost::math::binomial_distribution;

CountSpread binomial(int n, double p) {
    std::vector<double> chances;
    for (int k = 0; k <= n; ++k) chances.push_back(pdf(binomial_distribution<>(n, p), k));
    return {0, chances};
}
double massOf(const CountSpread& count) {
    return std::accumulate(count.chances().begin(), count.chances().end(), 0.0);
}

TEST(CountSpread, OfACertainCountHasNothingToGuess) {
    const CountSpread count(7);
    EXPECT_EQ(count.of(7), 1);
    EXPECT_EQ(count.of(6), 0);
    EXPECT_EQ(count.mean(), 7);
    EXPECT_EQ(count.sd(), 0);
    EXPECT_EQ(count.atLeast(7), 1);
    EXPECT_EQ(count.atLeast(8), 0);
    EXPECT_EQ(count.reachedWith(0.9), 7);
    EXPECT_EQ(count.quantile(0.1), 7);
    EXPECT_EQ(CountSpread(), CountSpread(0));
}

TEST(CountSpread, ChancesOfSoManyOrMoreAreTheBinomialTail) {
    const auto count = binomial(36, 0.75);
    const binomial_distribution<> law(36, 0.75);
    for (int k = 1; k <= 36; ++k)
        EXPECT_NEAR(count.atLeast(k), cdf(complement(law, k - 1)), 1e-12) << k;
    EXPECT_EQ(count.atLeast(-3), 1);
    EXPECT_NEAR(count.mean(), 27, 1e-11);
    EXPECT_NEAR(count.sd(), std::sqrt(36 * .75 * .25), 1e-11);
}

TEST(CountSpread, NumbersReachedWithAChanceAreTheGreatestSuch) {
    const auto count = binomial(40, 0.6);
    for (const double chance : {0.05, 0.5, 0.8, 0.9, 0.99}) {
        const auto reached = count.reachedWith(chance);
        EXPECT_GE(count.atLeast(reached), chance);
        EXPECT_LT(count.atLeast(reached + 1), chance);
        const auto middle = count.quantile(chance);
        EXPECT_GE(1 - count.atLeast(middle + 1), chance);
        EXPECT_LT(1 - count.atLeast(middle), chance);
    }
}

TEST(CountSpread, SumOfTwoIsTheirConvolution) {
    const auto sum = binomial(15, 0.3) + binomial(25, 0.3);
    const binomial_distribution<> law(40, 0.3);
    for (int k = 0; k <= 40; ++k) EXPECT_NEAR(sum.of(k), pdf(law, k), 1e-12) << k;
    EXPECT_EQ(binomial(15, 0.3) + CountSpread(4), binomial(15, 0.3).shifted(4));
    EXPECT_EQ(CountSpread(4) + binomial(15, 0.3), binomial(15, 0.3).shifted(4));
}

TEST(CountSpread, ChanceOfTwoTogetherIsThatOfTheirSum) {
    const auto a = binomial(15, 0.3).shifted(2);
    const auto b = binomial(25, 0.8);
    const auto sum = a + b;
    for (int k = -1; k <= 44; ++k) EXPECT_NEAR(atLeastTogether(a, b, k), sum.atLeast(k), 1e-12);
}

TEST(CountSpread, MixtureHoldsEachPartWithItsWeight) {
    const std::vector<CountSpread> parts{binomial(10, 0.2), CountSpread(30), binomial(20, 0.5)};
    const std::vector<double> weights{0.2, 0.3, 0.5};
    const auto mixed = mixture(weights, parts);
    EXPECT_NEAR(mixed.mean(), 0.2 * 2 + 0.3 * 30 + 0.5 * 10, 1e-11);
    EXPECT_NEAR(mixed.of(30), 0.3, 1e-12);
    EXPECT_NEAR(mixed.atLeast(9), 0.2 * parts[0].atLeast(9) + 0.3 + 0.5 * parts[2].atLeast(9),
                1e-12);
    EXPECT_NEAR(massOf(mixed), 1, 1e-12);
}

TEST(CountSpread, WhatIsTakenIsMissingAndNoMore) {
    const auto count = binomial(10, 0.4).shifted(3);
    for (int taken = 0; taken <= 15; ++taken) {
        const auto left = count.without(taken);
        EXPECT_NEAR(massOf(left), 1, 1e-12);
        for (int k = 1; k <= 13; ++k)
            EXPECT_NEAR(left.atLeast(k), count.atLeast(k + taken), 1e-12) << taken << ' ' << k;
    }
}

TEST(CountSpread, WhereThereIsRoomForFewerTheyAreAsMany) {
    const auto count = binomial(10, 0.4).shifted(3);
    for (int most = 0; most <= 15; ++most) {
        const auto kept = count.cappedAt(most);
        EXPECT_NEAR(massOf(kept), 1, 1e-12);
        EXPECT_LE(kept.last(), most);
        for (int k = 0; k <= most; ++k)
            EXPECT_NEAR(kept.atLeast(k), count.atLeast(k), 1e-12) << most << ' ' << k;
    }
}

TEST(CountSpread, TailsAreCutAndTheirMassIsKept) {
    std::vector<double> chances(101, 1e-16);
    chances[50] = 0.6;
    chances[51] = 1 - 0.6 - 99e-16;
    const CountSpread count(3, chances);
    EXPECT_EQ(count.first(), 53);
    EXPECT_EQ(count.last(), 54);
    EXPECT_NEAR(massOf(count), 1, 1e-15);
    EXPECT_GT(count.of(53), 0.6) << "the lower tail went to it";
}

}  // namespace
}  // namespace tenthday
