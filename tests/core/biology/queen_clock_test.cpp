#include "biology/queen_clock.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace tenthday {
namespace {

/// The share by an hour, by adding up the normal over the uniform width in small steps.
double slowBy(double hour, double mean, double width, double sd) {
    constexpr int kSteps = 20000;
    double sum = 0;
    for (int i = 0; i < kSteps; ++i) {
        const double shift = ((i + 0.5) / kSteps - 0.5) * width;
        sum += 0.5 * std::erfc(-(hour - mean - shift) / sd / std::sqrt(2.0));
    }
    return sum / kSteps;
}

TEST(Spread, AgreesWithPlainIntegration) {
    const Spread spread(294, 12, 8);
    for (const double hour : {262.0, 270.0, 285.0, 294.0, 300.0, 330.0})
        EXPECT_NEAR(spread.by(hour), slowBy(hour, 294, 12, 8), 1e-8) << hour;
}

TEST(Spread, QuantileTurnsTheShareRound) {
    for (const double width : {0.0, 12.0, 184.0})
        for (const double sd : {0.5, 8.0, 48.0})
            for (const double q : {1e-6, 0.00025, 0.01, 0.05, 0.5, 0.95, 0.999}) {
                const Spread spread(300, width, sd);
                EXPECT_NEAR(spread.by(spread.at(q)) / q, 1, 1e-5) << width << ' ' << sd << ' ' << q;
            }
}

TEST(Spread, MixtureOfFlightAges) {
    const auto flying = Spread(294, 12, 8).plusOneOf({144, 168, 192}, {.3, .4, .3});
    EXPECT_NEAR(flying.at(0.5), 294 + 168, 1e-4);
    EXPECT_NEAR(flying.mean(), 294 + 168, 1e-9);
    EXPECT_NEAR(flying.by(flying.at(0.05)), 0.05, 1e-7);
}

TEST(Spread, WithoutWidthOrSpreadIsAFixedHour) {
    EXPECT_EQ(Spread(100).at(0.05), 100);
    EXPECT_EQ(Spread(100).by(99.9), 0);
    EXPECT_EQ(Spread(100).by(100), 1);
    EXPECT_DOUBLE_EQ(Spread(100, 10, 0).at(0.05), 95.5);
}

// S7 (Chuda-Mickiewicz & Samborski 2015): capped cells at 32 C gave queens 27 h later than 34.5 C.
TEST(Heat, AFullStayInTheColdCostsTheMeasuredHours) {
    const Facts facts;
    const QueenClock nest(facts, 18, 18);
    const QueenClock cold(facts, 18, 18, HeatSpan{0, 1e6, 32});
    EXPECT_NEAR(cold.emerged().at(0.5) - nest.emerged().at(0.5), 27, 1e-6);
    EXPECT_FALSE(cold.heatClamped());
}

TEST(Heat, APartStayCostsItsShareOfTheHours) {
    const Facts facts;
    const QueenClock nest(facts, 18, 18);
    const QueenClock part(facts, 18, 18, HeatSpan{120, 240, 32});
    // 120 h at the rate 184/211 do 104.6 h of development.
    EXPECT_NEAR(part.emerged().at(0.5) - nest.emerged().at(0.5), 120 - 120 * 184.0 / 211.0, 1e-6);
}

TEST(Heat, BetweenTheTwoTheRateIsLinear) {
    const Facts facts;
    EXPECT_NEAR(heatRate(facts, 33.25).rate, (1 + 184.0 / 211.0) / 2, 1e-12);
    EXPECT_TRUE(heatRate(facts, 30).clamped);
    EXPECT_EQ(heatRate(facts, 30).rate, heatRate(facts, 32).rate);
    EXPECT_EQ(heatRate(facts, 36).rate, 1);
}

TEST(FirstQueenOut, AgreesWithSeededSimulation) {
    const Facts facts;
    const QueenClock clock(facts, 12, 24);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> age(12, 24);
    std::normal_distribution<double> noise(0, 8);
    constexpr int kRuns = 20000;
    std::vector<double> firsts;
    for (int run = 0; run < kRuns; ++run) {
        double first = 1e9;
        for (int cell = 0; cell < 40; ++cell)
            first = std::min(first, 312 - age(random) + noise(random));
        firsts.push_back(first);
    }
    std::sort(firsts.begin(), firsts.end());
    for (const double q : {0.05, 0.5, 0.95})
        EXPECT_NEAR(clock.firstOutAt(40, q), firsts[static_cast<std::size_t>(q * kRuns)], 0.25)
            << q;
}

TEST(FirstQueenOut, MoreCellsNeverComeLater) {
    const QueenClock clock(Facts{}, 12, 24);
    double last = 1e9;
    for (const double n : {1.0, 10.0, 40.0, 1000.0, 9999.0}) {
        const double hour = clock.firstOutAt(n, 0.01);
        EXPECT_LT(hour, last);
        EXPECT_NEAR(clock.firstOutBy(n, hour), 0.01, 1e-6);
        last = hour;
    }
}

TEST(OneQuantileThroughAll, SealingSpreadsInProportion) {
    const QueenClock clock(Facts{}, 18, 18);
    EXPECT_NEAR(clock.sealed().at(0.5), 110, 1e-9);
    EXPECT_NEAR(clock.sealed().sd() / clock.emerged().sd(), 200.0 / 384.0, 1e-9);
}

}  // namespace
}  // namespace tenthday
