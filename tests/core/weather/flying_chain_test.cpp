#include "weather/flying_chain.h"

#include <gtest/gtest.h>

#include <array>

#include "core/weather/chain_runs.h"
#include "support/days.h"
#include "weather/record_only.h"

namespace tenthday {
namespace {

using test::day;

const Day kFirst = day("2027-05-01");

std::vector<FlyingChainDay> always(double chance, std::size_t days) {
    return std::vector<FlyingChainDay>(days, {chance, {}});
}

class ConstantChance : public ::testing::TestWithParam<std::array<double, 2>> {};

/// Closed forms for p the same every day. A wait goes on by q = p (1 - r) a day.
TEST_P(ConstantChance, HasItsClosedForm) {
    const auto [p, r] = GetParam();
    const double q = p * (1 - r);
    const FlyingChain chain(kFirst, always(p, 40), r);
    const auto from = chain.waitFrom(kFirst + Days{10}, 20);
    const auto after = chain.waitAfterFlying(kFirst + Days{10}, 20);
    ASSERT_EQ(from.size(), 21U);
    ASSERT_EQ(after.size(), 21U);
    EXPECT_EQ(from[0], 1);
    EXPECT_EQ(after[0], 1);
    for (int k = 0; k < 40; ++k) EXPECT_NEAR(*chain.chance(kFirst + Days{k}), p, 1e-12) << k;
    for (int k = 1; k <= 20; ++k) {
        EXPECT_NEAR(from[static_cast<std::size_t>(k)], (1 - p) * std::pow(1 - q, k - 1), 1e-12);
        EXPECT_NEAR(after[static_cast<std::size_t>(k)],
                    (1 - p - r * (1 - p)) * std::pow(1 - q, k - 1), 1e-12);
    }
}

INSTANTIATE_TEST_SUITE_P(Chances, ConstantChance,
                         ::testing::Values(std::array{0.5, 0.4}, std::array{0.1, 0.8},
                                           std::array{0.9, 0.2}, std::array{0.3, 0.0},
                                           std::array{0.0, 0.4}, std::array{1.0, 0.4}));

/// After a known day the chance comes back to p by r a day.
TEST(FlyingChain, AKnownDayWearsOff) {
    for (const bool flew : {false, true}) {
        auto days = always(0.3, 20);
        days[5].known = flew;
        const FlyingChain chain(kFirst, days, 0.4);
        EXPECT_EQ(chain.known(kFirst + Days{5}), flew);
        EXPECT_EQ(chain.chance(kFirst + Days{5}), flew ? 1 : 0);
        EXPECT_FALSE(chain.known(kFirst + Days{6}));
        for (int k = 0; k < 15; ++k)
            EXPECT_NEAR(*chain.chance(kFirst + Days{5 + k}),
                        0.3 + std::pow(0.4, k) * ((flew ? 1 : 0) - 0.3), 1e-12);
        EXPECT_NEAR(*chain.chance(kFirst + Days{4}), 0.3, 1e-12) << "nothing of days before";
    }
}

TEST(FlyingChain, KnownDaysEndOrProlongTheWait) {
    auto days = always(0.5, 20);
    for (const int k : {2, 3, 4}) days[static_cast<std::size_t>(k)].known = k == 4;
    const FlyingChain chain(kFirst, days, 0.4);
    EXPECT_EQ(chain.waitFrom(kFirst + Days{2}, 5), (std::vector<double>{1, 1, 1, 0, 0, 0}));
    const auto after = chain.waitAfterFlying(kFirst, 5);
    EXPECT_NEAR(after[1], 0.3, 1e-12);  // 1 - (0.5 + 0.4 * 0.5)
    EXPECT_EQ(after[2], after[1]);
    EXPECT_EQ(after[3], after[1]);
    EXPECT_EQ(after[4], 0);
    // From the day after the known one the chance is 0.7, not 0.5.
    EXPECT_NEAR(chain.waitFrom(kFirst + Days{5}, 5)[1], 0.3, 1e-12);
}

/// A steady rise is followed r / (1 - r) days later.
TEST(FlyingChain, TrailsARise) {
    std::vector<FlyingChainDay> days;
    for (int k = 0; k < 60; ++k) days.push_back({0.2 + 0.01 * k, {}});
    const FlyingChain chain(kFirst, days, 0.4);
    EXPECT_EQ(chain.chance(kFirst), 0.2);
    EXPECT_NEAR(*chain.chance(kFirst + Days{59}), *days[59].chance - 0.01 * 0.4 / 0.6, 1e-12);
}

TEST(FlyingChain, EndsAtAGapAndBeginsAnewBehindIt) {
    auto days = always(0.5, 12);
    days[4] = {};
    days[5] = {std::nullopt, true};  // known, though no chance stands for it
    days[8] = {};
    const FlyingChain chain(kFirst, days, 0.4);
    const auto window = [](int from, int to) {
        return DayWindow{kFirst + Days{from}, kFirst + Days{to}};
    };
    EXPECT_TRUE(chain.covers(window(0, 3)));
    EXPECT_FALSE(chain.covers(window(3, 5)));
    EXPECT_TRUE(chain.covers(window(5, 7)));
    EXPECT_FALSE(chain.covers(window(9, 12))) << "behind the window";
    EXPECT_FALSE(chain.covers(window(-1, 1)));
    EXPECT_FALSE(chain.chance(kFirst + Days{4}));
    EXPECT_FALSE(chain.chance(kFirst + Days{12}));
    EXPECT_NEAR(*chain.chance(kFirst + Days{6}), 0.7, 1e-12);
    EXPECT_EQ(chain.chance(kFirst + Days{9}), 0.5) << "begins anew";
    EXPECT_EQ(chain.waitFrom(kFirst + Days{1}, 9).size(), 4U);
    EXPECT_EQ(chain.waitAfterFlying(kFirst + Days{1}, 9).size(), 3U);
    EXPECT_EQ(chain.waitFrom(kFirst + Days{10}, 9).size(), 3U);
    EXPECT_EQ(chain.waitFrom(kFirst + Days{4}, 9), std::vector<double>{1});
}

constexpr int kRuns = 20'000;
constexpr std::size_t kDue = 10;  ///< the wait begins so many days into the chain
constexpr std::size_t kMost = 15;

/// The waits of many runs: [k] runs that had no flying day in the first k days.
struct Counted {
    std::array<int, kMost + 1> first{}, next{};
    int flew = 0;  ///< runs in which kDue was a flying day
};

void count(std::array<int, kMost + 1>& waits, const std::vector<bool>& flies, std::size_t from) {
    for (std::size_t k = 0; k <= kMost; ++k) {
        ++waits[k];
        if (flies[from + k]) return;
    }
}

TEST(FlyingChain, WaitsAgreeWithDrawnWeather) {
    test::Draws draw(20270501);
    for (int climate = 0; climate < 20; ++climate) {
        const auto some = test::someChain(draw, 40);
        Counted counted;
        for (int run = 0; run < kRuns; ++run) {
            const auto flies = test::weatherOf(some, draw);
            count(counted.first, flies, kDue);
            if (!flies[kDue]) continue;
            ++counted.flew;
            count(counted.next, flies, kDue + 1);
        }
        const auto chain = some.chain();
        const auto from = chain.waitFrom(some.first + Days{kDue}, kMost);
        const auto after = chain.waitAfterFlying(some.first + Days{kDue}, kMost);
        const double flew = *chain.chance(some.first + Days{kDue});
        EXPECT_NEAR(counted.flew / double{kRuns}, flew, test::tolerance(flew, kRuns));
        for (std::size_t k = 0; k <= kMost; ++k) {
            EXPECT_NEAR(counted.first[k] / double{kRuns}, from[k], test::tolerance(from[k], kRuns));
            if (counted.flew == 0) continue;
            EXPECT_NEAR(counted.next[k] / double(counted.flew), after[k],
                        test::tolerance(after[k], counted.flew))
                << climate << ' ' << k;
        }
    }
}

TEST(FlyingChain, OfRecordedDaysAloneTakesUnknownDaysOfAStayForFlyingDays) {
    const std::vector<FlyingChainDay> days{{{}, true}, {{}, false}, {}, {{}, false}, {}};
    const FlyingChain chain(kFirst, days, 0);
    EXPECT_TRUE(isRecordOnly(chain));
    const std::vector<DayWindow> stays{{kFirst + Days{1}, kFirst + Days{3}}};
    const auto away = chain.onlyIn(stays);
    EXPECT_EQ(away.known(kFirst), false) << "before the stay";
    EXPECT_EQ(away.known(kFirst + Days{1}), false) << "recorded";
    EXPECT_EQ(away.known(kFirst + Days{2}), true) << "nothing is known of it";
    EXPECT_EQ(away.known(kFirst + Days{4}), false) << "after the stay";
    auto usual = days;
    usual[4].chance = 0.5;
    const FlyingChain other(kFirst, usual, 0);
    EXPECT_FALSE(isRecordOnly(other));
    EXPECT_EQ(other.onlyIn(stays).chance(kFirst + Days{2}), std::nullopt);
}

}  // namespace
}  // namespace tenthday
