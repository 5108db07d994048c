/// Rates fitted to own outcomes: against the conjugate beta distribution (Boost.Math) where batches
/// do not differ, and against drawn batches of known rates where they do.
#include "losses/rate_fit.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/beta.hpp>
#include <random>
#include <vector>

#include "losses/rate_grid.h"
#include "support/beta_draws.h"

namespace tenthday {
namespace {

using Outcomes = std::vector<OwnOutcome>;
using Beta = boost::math::beta_distribution<>;

/// Batches are alike, a beta prior with these two numbers.
RatePrior alike(double a, double b) {
    const double rate = a / (a + b);
    return {rate, std::sqrt(rate * (1 - rate) / (a + b + 1)), 0, 0};
}
void expectBeta(const RangedShare& share, double a, double b, double tolerance) {
    EXPECT_NEAR(share.value, a / (a + b), tolerance);
    EXPECT_NEAR(share.low, quantile(Beta(a, b), .1), tolerance);
    EXPECT_NEAR(share.high, quantile(Beta(a, b), .9), tolerance);
}

/// To a hundredth of a percent: as fine as the grid.
TEST(RateFit, IsTheConjugateBetaWhereBatchesAreAlike) {
    const Outcomes outcomes{{{40, 31}, ""}, {{45, 30}, ""}, {{15, 15}, ""}};
    const auto fit = fitRate(alike(6, 2), outcomes);
    expectBeta(fit.priorRate, 6, 2, 1e-4);
    expectBeta(fit.rate, 6 + 76, 2 + 24, 1e-4);
    ASSERT_TRUE(fit.ownRate);
    EXPECT_DOUBLE_EQ(fit.ownRate->value, .76);
    EXPECT_NEAR(fit.ownRate->low, quantile(Beta(77, 25), .1), 1e-4);
    EXPECT_NEAR(fit.ownRate->high, quantile(Beta(77, 25), .9), 1e-4);
    EXPECT_EQ(fit.use().sd, 0);
    EXPECT_EQ(fit.batches, 3);
    EXPECT_EQ(fit.record, (StageCount{100, 76}));
}

TEST(RateFit, GridNarrowsToALongRecord) {
    const Outcomes outcomes(300, {{100, 95}, ""});
    const auto fit = fitRate(alike(6, 2), outcomes);
    expectBeta(fit.rate, 6 + 28500, 2 + 1500, 1e-6);
}

TEST(RateFit, AllOrNoneStaysInsideARange) {
    const Outcomes all{{{20, 20}, ""}};
    const auto fit = fitRate(alike(6, 2), all);
    expectBeta(fit.rate, 26, 2, 1e-4);
    EXPECT_EQ(fit.ownRate->value, 1);
    EXPECT_EQ(fit.ownRate->high, 1) << "the record's own share lies in its range";
    EXPECT_NEAR(fit.ownRate->low, quantile(Beta(21, 1), .1), 1e-4);
    const Outcomes none{{{20, 0}, ""}};
    EXPECT_EQ(fitRate(alike(6, 2), none).ownRate->low, 0);
}

TEST(RateFit, WithoutOutcomesIsThePriorItself) {
    const Facts facts;
    for (const auto stage : kAllLossStages) {
        const auto fit = fitRate(priorOf(facts, stage), {});
        EXPECT_EQ(fit.use(), chainRates(facts)[stage]) << token(rateFact(stage));
        EXPECT_EQ(fit.rate, fit.priorRate);
        EXPECT_FALSE(fit.ownRate);
        EXPECT_LT(fit.priorRate.low, fit.priorRate.value);
        EXPECT_GT(fit.priorRate.high, fit.priorRate.value);
        const auto& range = facts.entry(rateFact(stage));
        EXPECT_GT(fit.priorRate.low, range.low - .05) << "80 % lie within the range in print";
        EXPECT_LT(fit.priorRate.high, range.high + .05);
        EXPECT_LT(fit.priorSpread.low, fit.priorSpread.value);
        EXPECT_GT(fit.priorSpread.low, facts.entry(spreadFact(stage)).low * .9);
        EXPECT_LT(fit.priorSpread.high, facts.entry(spreadFact(stage)).high * 1.1);
    }
}

TEST(RatePriorOfFacts, TakesTheRangeAsFourStandardDeviations) {
    const auto emerged = priorOf(Facts(), LossStage::Emerged);
    EXPECT_EQ(emerged.rate, .88);
    EXPECT_NEAR(emerged.rateSd, (.95 - .80) / 4, 1e-12);
    EXPECT_EQ(emerged.spread, .06);
    EXPECT_NEAR(emerged.spreadLogSd, std::log(.12 / .02) / 4, 1e-12);
    // The range of acceptance (.1 to .95) is narrowed: a = 6, b = 2.
    const auto accepted = priorOf(Facts(), LossStage::Accepted);
    EXPECT_NEAR(accepted.rateSd, std::sqrt(.75 * .25 / 9), 1e-12);
}

TEST(RatePriorOfFacts, TakesTheUsersOwnValueEvenAtTheEnds) {
    for (const double own : {0.0, .3, 1.0}) {
        Facts facts;
        ASSERT_TRUE(facts.set(Fact::Sealed, own).ok());
        ASSERT_TRUE(facts.set(Fact::SealedSd, own == 1 ? 0 : .4).ok());
        const auto prior = priorOf(facts, LossStage::Sealed);
        EXPECT_NEAR(prior.rate, own, .0011);
        EXPECT_GT(prior.rateSd, 0);
        const Outcomes outcomes{{{30, 25}, ""}};
        const auto fit = fitRate(prior, outcomes);
        EXPECT_GT(fit.rate.value, 0);
        EXPECT_LT(fit.rate.value, 1);
        EXPECT_LE(fit.rate.low, fit.rate.value);
        EXPECT_GE(fit.rate.high, fit.rate.value);
    }
}

/// Batches drawn of a known rate and spread: the result finds both.
TEST(RateFit, FindsTheRateAndSpreadOfDrawnBatches) {
    std::mt19937_64 random(20270513);
    const StageRate real{.6, .2};
    Outcomes outcomes;
    for (int i = 0; i < 300; ++i)
        outcomes.push_back({{40, test::drawPassed(random, 40, real)}, ""});
    const auto fit = fitRate(priorOf(Facts(), LossStage::Accepted), outcomes);
    // Standard error of the mean of 300 batches: about sqrt(.2^2 + .6 .4 / 40) / sqrt(300) = .0124.
    EXPECT_NEAR(fit.rate.value, .6, 4 * .0124);
    EXPECT_NEAR(fit.spread.value, .2, .03);
    EXPECT_NEAR(fit.rate.high - fit.rate.low, 2 * 1.2816 * .0124, .006);
}

TEST(RateFit, HowOftenTheRangeHoldsTheRealRate) {
    std::mt19937_64 random(20270514);
    const auto prior = priorOf(Facts(), LossStage::Emerged);
    const double size = prior.rate * (1 - prior.rate) / (prior.rateSd * prior.rateSd) - 1;
    constexpr int kOperations = 200;
    int held = 0;
    for (int i = 0; i < kOperations; ++i) {
        const double a = std::gamma_distribution<>(prior.rate * size)(random);
        const double b = std::gamma_distribution<>((1 - prior.rate) * size)(random);
        const double spread =
            prior.spread * std::exp(prior.spreadLogSd * std::normal_distribution<>()(random));
        Outcomes outcomes;
        for (int batch = 0; batch < 8; ++batch)
            outcomes.push_back({{30, test::drawPassed(random, 30, {a / (a + b), spread})}, ""});
        const auto fit = fitRate(prior, outcomes);
        held += a / (a + b) >= fit.rate.low && a / (a + b) <= fit.rate.high;
    }
    // 80 %, within four standard errors of a share of 200.
    EXPECT_NEAR(static_cast<double>(held) / kOperations, .8, 4 * std::sqrt(.8 * .2 / kOperations));
}

TEST(RateFit, LiesBetweenPriorAndRecordAndNearerToALongOne) {
    const auto prior = priorOf(Facts(), LossStage::Mated);
    double before = prior.rate;
    for (const std::size_t batches : {1, 3, 10, 40}) {
        const Outcomes outcomes(batches, {{30, 15}, ""});
        const auto fit = fitRate(prior, outcomes);
        EXPECT_LT(fit.rate.value, before) << batches;
        EXPECT_GT(fit.rate.value, .5) << batches;
        before = fit.rate.value;
    }
    EXPECT_LT(before, .52);
}

TEST(RateFit, ABatchLeftOutIsKeptButDoesNotCount) {
    const auto prior = priorOf(Facts(), LossStage::Accepted);
    Outcomes outcomes{{{40, 30}, ""}, {{40, 32}, ""}, {{40, 2}, "wild queen in the builder"}};
    const auto without = fitRate(prior, outcomes);
    EXPECT_EQ(without.batches, 2);
    EXPECT_EQ(without.leftOut, 1);
    EXPECT_EQ(without.record, (StageCount{80, 62}));
    const auto two = fitRate(prior, std::span(outcomes).first(2));
    EXPECT_EQ(without.rate, two.rate);
    EXPECT_EQ(without.ownRate, two.ownRate);
    outcomes[2].leftOut.clear();
    const auto with = fitRate(prior, outcomes);
    EXPECT_LT(with.rate.value, without.rate.value - .03);
    EXPECT_GT(with.spread.value, without.spread.value) << "one odd batch widens the spread";
}

TEST(RateFit, ImpossibleOutcomesDoNotCount) {
    const auto prior = priorOf(Facts(), LossStage::Accepted);
    const Outcomes outcomes{{{0, 0}, ""}, {{10, 11}, ""}, {{10, -1}, ""}};
    const auto fit = fitRate(prior, outcomes);
    EXPECT_EQ(fit.batches, 0);
    EXPECT_FALSE(fit.ownRate);
    EXPECT_EQ(fit.use(), (StageRate{.75, .12}));
}

/// The likelihood differs from the beta-binomial chance by a constant only.
TEST(FittedRate, IsThatOfTheFineGrid) {
    const auto prior = priorOf(Facts(), LossStage::Accepted);
    std::mt19937_64 random(7);
    std::vector<OwnOutcome> outcomes;
    for (int batch = 0; batch < 60; ++batch) {
        const int passed = std::uniform_int_distribution<>(8, 36)(random);
        outcomes.push_back({{40, passed}, {}});
        const auto fine = fitRate(prior, outcomes).use();
        const auto quick = fittedRate(prior, outcomes);
        EXPECT_NEAR(quick.mean, fine.mean, .002) << batch;
        EXPECT_NEAR(quick.sd, fine.sd, .002) << batch;
    }
    EXPECT_EQ(fittedRate(prior, {}), fitRate(prior, {}).use());
    EXPECT_EQ(batchesThatCount(outcomes), 60);
}

TEST(OutcomeTally, IsTheBetaBinomialLikelihood) {
    const std::vector<StageCount> outcomes{{40, 31}, {45, 45}, {15, 0}, {400, 290}, {40, 31}};
    const auto logChance = [&](const StageRate& rate) {
        double sum = 0;
        for (const auto& outcome : outcomes)
            sum += std::log(passed(CountSpread(outcome.tried), rate).of(outcome.passed));
        return sum;
    };
    const OutcomeTally tally(outcomes);
    const StageRate first{.7, .2};
    const double constant = logChance(first) - tally.logChance(first);
    for (const auto& rate : {StageRate{.5, .25}, StageRate{.6, .3}, StageRate{.8, .22}})
        EXPECT_NEAR(logChance(rate) - tally.logChance(rate), constant, 1e-8) << rate.mean;
}

}  // namespace
}  // namespace tenthday
