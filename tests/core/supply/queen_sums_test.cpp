/// Queens of several batches under one season's weather.
#include "supply/queen_sums.h"

#include <gtest/gtest.h>

#include <boost/math/distributions/binomial.hpp>
#include <numeric>
#include <random>

#include "losses/batch_losses.h"
#include "support/stock_maker.h"

namespace tenthday::test {
namespace {

using boost::math::binomial_distribution;

double tail(int n, double p, int k) {
    return cdf(complement(binomial_distribution<>(n, p), k - 1));
}
CountSpread planned(int grafts) {
    return matedInFairWeather(standing(grafts), chainRates(Facts()));
}

// 36 cells, 24 wanted, 75 % on the mean of seasons (derived): batches that share a bad season are
// no surety for one another.
TEST(QueenSums, MixOverSeasonsThatBatchesShare) {
    const QueenStock stock{
        5,
        {queens(1, CountSpread(12), "2027-06-10", {.35F, .85F, .85F, .85F, .85F}),
         queens(2, CountSpread(24), "2027-06-12", {.35F, .85F, .85F, .85F, .85F})}};
    QueenSums sums(stock);
    const auto& both = sums.overall({}, day("2027-06-12"));
    EXPECT_NEAR(both.atLeast(24), .2 * tail(36, .35, 24) + .8 * tail(36, .85, 24), 1e-6);
    EXPECT_NEAR(both.mean(), 27, 1e-5);
    EXPECT_LT(both.atLeast(24), .81);
    EXPECT_NEAR(sums.overall({}, day("2027-06-11")).mean(), 9, 1e-5);
    EXPECT_EQ(sums.overall({}, day("2027-06-09")), CountSpread(0));
}

TEST(QueenSums, MomentsAreThoseOfTheSpread) {
    auto part = queens(1, planned(30), "2027-06-10", {1});
    part.judged = {.92, .04};
    part.known = {{day("2027-06-08"), 4, 0}, {day("2027-06-09"), 0, 3}};
    for (const double share : {0.0, .3, .8, 1.0}) {
        const auto spread = part.caught(share, day("2027-06-10"));
        const auto sum = PartMoments(part).at(share, part.knownOn(day("2027-06-10")));
        double third = 0;
        for (auto n = spread.first(); n <= spread.last(); ++n)
            third += std::pow(n - spread.mean(), 3) * spread.of(n);
        EXPECT_NEAR(sum.mean, spread.mean(), 1e-6);
        EXPECT_NEAR(sum.variance, spread.sd() * spread.sd(), 1e-6);
        EXPECT_NEAR(sum.third, third, 1e-5);
        EXPECT_NEAR(part.meanCaught(share, day("2027-06-10")), spread.mean(), 1e-6);
    }
}

TEST(QueenSums, ManyBatchesBySumOfCumulantsAgreeWithConvolution) {
    for (const int grafts : {8, 20, 45}) {
        auto part = queens(1, planned(grafts), "2027-06-10", {1});
        part.judged = {.92, .04};
        const auto moments = PartMoments(part).at(.9, part.knownOn(day("2027-06-10")));
        CountSpread exact(0);
        Cumulants sum;
        for (std::size_t i = 0; i <= QueenSums::kMostExact; ++i) {
            exact = exact + part.caught(.9, day("2027-06-10"));
            sum += moments;
        }
        const auto near = spreadOf(sum);
        for (int k = 0; k <= exact.last(); ++k)
            EXPECT_NEAR(near.atLeast(k), exact.atLeast(k), .002) << grafts << ' ' << k;
    }
}

QueenStock manyBatches(int batches) {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<float> share(0, 1);
    QueenStock stock{3, {}};
    for (int n = 0; n < batches; ++n) {
        auto part = queens(n + 1, planned(20), "2027-06-01", {});
        part.from = part.from + Days{4 * n};
        const float a = share(random);
        const float b = share(random);
        part.eggs =
            std::make_shared<const EggDays>(EggDays{part.from, 2, {a / 2, a, b / 2, b, .9F, 1}});
        stock.parts.push_back(std::move(part));
    }
    return stock;
}

TEST(QueenSums, DaysMayBeAskedInAnyOrder) {
    const auto stock = manyBatches(14);
    QueenSums rising(stock);
    QueenSums falling(stock);
    std::vector<Day> days;
    for (Day on = day("2027-05-30"); on < day("2027-08-10"); on += Days{3}) days.push_back(on);
    for (const Day on : days) (void)rising.overall({}, on);
    for (auto on = days.rbegin(); on != days.rend(); ++on)
        EXPECT_NEAR(falling.overall({}, *on).mean(), rising.overall({}, *on).mean(), 1e-9);
}

TEST(QueenSums, QueensOnlyBecomeMoreAsDaysGoOn) {
    const auto stock = manyBatches(14);
    QueenSums sums(stock);
    CountSpread before(0);
    for (Day on = day("2027-05-30"); on < day("2027-08-10"); on += Days{1}) {
        const auto& now = sums.overall({}, on);
        // 0.002: where the way of summing changes
        for (int k = 1; k < before.last(); k += 5)
            EXPECT_GE(now.atLeast(k), before.atLeast(k) - .002) << toText(on) << ' ' << k;
        before = now;
    }
    EXPECT_GT(before.mean(), 50);
}

TEST(QueenSums, ApartGivesTheWholeTogether) {
    auto stock = manyBatches(9);
    stock.parts[2].isProven = stock.parts[5].isProven = false;
    QueenSums sums(stock);
    const Day on = day("2027-06-20");
    const QueenWant proven{{}, true};
    double weight = 0;
    double mean = 0;
    for (const auto& season : sums.apart(proven, on)) {
        weight += season.weight;
        mean += season.weight * (season.fit.mean() + season.other.mean());
    }
    EXPECT_NEAR(weight, 1, 1e-12);
    EXPECT_NEAR(mean, sums.overall({}, on).mean(), 1e-6);
}

}  // namespace
}  // namespace tenthday::test
