/// One batch along its chain: against the expected counts, published records and simulation.
#include "losses/batch_losses.h"

#include <gtest/gtest.h>

#include <random>

#include "support/beta_draws.h"

namespace tenthday {
namespace {

ChainRates alike(double accepted, double sealed, double emerged, double mated, double good) {
    return {{{{accepted, 0}, {sealed, 0}, {emerged, 0}, {mated, 0}, {good, 0}}}};
}
double goodOf(int grafts, const ChainRates& rates) {
    return reached(standing(grafts), rates, ChainPoint::Good).mean();
}

// facts.md section 11, derived: 100 grafts -> 48.7 queens; cautious 24.8.
TEST(BatchLosses, MeansOfTheTwoPublishedChains) {
    EXPECT_NEAR(goodOf(100, alike(.80, .95, .90, .75, .95)), 48.7, 0.05);
    EXPECT_NEAR(goodOf(100, alike(.60, .90, .85, .60, .90)), 24.8, 0.05);
}

// S91: about 31,000 grafts over 12 years, 34 to 45 % of the grafts gave a queen in a year; in the
// best part of the season 55.8 %, in the worst 25.8 % (these of isolated cells).
TEST(BatchLosses, PublishedYearsLieWhereTheDefaultsPutThem) {
    const auto rates = chainRates(Facts());
    const auto perGraft = [&](double share) {
        return reached(standing(100), rates, ChainPoint::Good, share).mean() / 100;
    };
    EXPECT_GT(perGraft(1), .45) << "fair weather all the time is better than any of the years";
    EXPECT_LT(perGraft(1), .50);
    for (const double share : {.75, .85, .95}) {
        EXPECT_GT(perGraft(share), .34) << share;
        EXPECT_LT(perGraft(share), .45) << share;
    }
    // A single batch runs wider than a year.
    const auto batch = reached(standing(100), rates, ChainPoint::Good, .85);
    EXPECT_LT(batch.quantile(.1), 34);
    EXPECT_GT(batch.quantile(.9), 45);
    // The cautious chain of section 11 stays below all years, the good one above.
    EXPECT_LT(goodOf(100, alike(.60, .90, .85, .60, .90)), 25.8);
    EXPECT_GT(goodOf(100, alike(.80, .95, .90, .75, .95)), 45);
}

struct SeenCase {
    const char* name;
    SeenCounts seen;
    Given given;
};
void PrintTo(const SeenCase& c, std::ostream* out) { *out << c.name; }
class ExpectedOfASpread : public ::testing::TestWithParam<SeenCase> {};

/// The chain of expected counts and the chain of spreads say the same.
TEST_P(ExpectedOfASpread, IsTheExpectedCount) {
    const auto& [name, seen, given] = GetParam();
    const Facts facts;
    const auto counts = expectedCounts(facts, 60, seen, given);
    const auto batch = standing(60, seen, given);
    const auto mean = [&](ChainPoint point) {
        return reached(batch, chainRates(facts), point).mean();
    };
    EXPECT_NEAR(mean(ChainPoint::Emerged), counts.emerged, 1e-9);
    EXPECT_NEAR(mean(ChainPoint::Laying), counts.laying, 1e-9);
    EXPECT_NEAR(mean(ChainPoint::Good), counts.good, 1e-9);
    if (!seen.emerged) {
        EXPECT_NEAR(mean(ripePoint(given)), counts.ripe, 1e-9);
    }
}

SeenCounts seenCounts(std::optional<double> accepted, std::optional<double> sealed,
                      std::optional<double> ripe, std::optional<double> emerged) {
    return {std::nullopt, accepted, sealed, ripe, emerged};
}
INSTANTIATE_TEST_SUITE_P(
    Counted, ExpectedOfASpread,
    ::testing::Values(SeenCase{"Nothing", {}, Given::Sealed},
                      SeenCase{"Graft", {50, {}, {}, {}, {}}, Given::Sealed},
                      SeenCase{"Take", seenCounts(41, {}, {}, {}), Given::Sealed},
                      SeenCase{"SealedCells", seenCounts(41, 39, {}, {}), Given::Sealed},
                      SeenCase{"RipeCells", seenCounts(41, 39, 36, {}), Given::Sealed},
                      SeenCase{"Virgins", seenCounts({}, {}, {}, 33), Given::Virgin},
                      SeenCase{"NothingOfOpen", {}, Given::Open},
                      SeenCase{"TakeOfOpen", seenCounts(41, {}, {}, {}), Given::Open},
                      SeenCase{"OpenGiven", seenCounts(41, {}, 38, {}), Given::Open}),
    [](const auto& test) { return test.param.name; });

TEST(BatchLosses, ATakeCountLeavesOnlyLaterStagesOpen) {
    const auto rates = chainRates(Facts());
    SeenCounts seen;
    seen.accepted = 31;
    const auto batch = standing(40, seen);
    EXPECT_EQ(reached(batch, rates, ChainPoint::Accepted), CountSpread(31));
    EXPECT_EQ(reached(batch, rates, ChainPoint::Sealed),
              passed(CountSpread(31), rates[LossStage::Sealed]));
    EXPECT_LT(reached(batch, rates, ChainPoint::Good).sd(),
              reached(standing(40), rates, ChainPoint::Good).sd());
}

TEST(BatchLosses, BarsShareTheirBatch) {
    const auto rates = chainRates(Facts());
    SeenCounts poor;
    poor.accepted = 4;
    SeenCounts rich;
    rich.accepted = 15;
    const auto oneBarSeen = [&](const SeenCounts& seen) {
        auto batch = standing(15, seen);
        batch += standing(20);
        return reached(batch, rates, ChainPoint::Accepted);
    };
    const double open = 20 * Facts()[Fact::Accepted];
    EXPECT_LT(oneBarSeen(poor).mean(), 4 + open - 1) << "a poor bar bodes ill for the next";
    EXPECT_GT(oneBarSeen(rich).mean(), 15 + open + 0.5);
    auto whole = standing(15);
    whole += standing(20);
    EXPECT_EQ(whole, standing(35)) << "bars nothing is seen of are one batch";
}

TEST(BatchLosses, QueensKnownCountAndThoseLostAreGone) {
    const auto rates = chainRates(Facts());
    BatchStanding batch;
    batch[ChainPoint::Good] = 9;
    batch[ChainPoint::Laying] = 4;
    batch[ChainPoint::Emerged] = 7;
    EXPECT_EQ(reached(batch, rates, ChainPoint::Sealed), CountSpread(20));
    EXPECT_EQ(reached(batch, rates, ChainPoint::Laying, 0), CountSpread(13)) << "no flying day";
    const auto laying = reached(batch, rates, ChainPoint::Laying);
    EXPECT_EQ(laying.first(), 13);
    EXPECT_EQ(laying.last(), 20);
    EXPECT_NEAR(reached(batch, rates, ChainPoint::Good).mean(), 9 + (4 + 7 * .8) * .92, 1e-9);
}

TEST(BatchLosses, MatingOutcomesDoNotSpeakForTheRest) {
    const auto rates = chainRates(Facts());
    BatchStanding batch;
    batch[ChainPoint::Emerged] = 20;
    const auto before = reached(batch, rates, ChainPoint::Laying);
    batch.seen[LossStage::Mated] = {10, 0};
    EXPECT_EQ(reached(batch, rates, ChainPoint::Laying), before);
}

TEST(BatchLosses, WeatherOnlyCountsFromMatingOn) {
    const auto rates = chainRates(Facts());
    const auto batch = standing(40);
    EXPECT_EQ(reached(batch, rates, ChainPoint::Emerged, .3),
              reached(batch, rates, ChainPoint::Emerged));
    EXPECT_NEAR(reached(batch, rates, ChainPoint::Good, .3).mean(),
                .3 * reached(batch, rates, ChainPoint::Good).mean(), 1e-9);
    EXPECT_EQ(reached(batch, rates, ChainPoint::Good, 0), CountSpread(0));
}

/// Better weather, more grafts: never a lower chance.
TEST(BatchLosses, MoreGraftsAndBetterWeatherNeverLowerAChance) {
    const auto rates = chainRates(Facts());
    std::mt19937_64 random(3);
    for (int round = 0; round < 60; ++round) {
        const int grafts = std::uniform_int_distribution<>(1, 90)(random);
        const double share = std::uniform_real_distribution<>(0, 1)(random);
        const auto count = reached(standing(grafts), rates, ChainPoint::Good, share);
        const auto more = reached(standing(grafts + 1), rates, ChainPoint::Good, share);
        const auto worse = reached(standing(grafts), rates, ChainPoint::Good, share * .9);
        for (int k = 1; k <= grafts; ++k) {
            EXPECT_GE(more.atLeast(k), count.atLeast(k) - 1e-11) << grafts << ' ' << k;
            EXPECT_LE(worse.atLeast(k), count.atLeast(k) + 1e-11) << grafts << ' ' << k;
        }
    }
}

TEST(BatchLosses, AgreeWithDrawsOfWholeChains) {
    constexpr int kDraws = 100000;
    const auto rates = chainRates(Facts());
    std::mt19937_64 random(20270511);
    std::vector<int> drawn(61);
    for (int i = 0; i < kDraws; ++i) {
        int count = 60;
        for (const auto stage : kAllLossStages) {
            count = test::drawPassed(random, count, rates[stage]);
            if (stage == LossStage::Mated) count = test::drawPassed(random, count, {.7, 0});
        }
        ++drawn[count];
    }
    const auto reckoned = reached(standing(60), rates, ChainPoint::Good, .7);
    int more = 0;
    for (int k = 60; k > 0; --k) {
        more += drawn[k];
        const double chance = reckoned.atLeast(k);
        const double tolerance = 5 * std::sqrt(chance * (1 - chance) / kDraws) + 1.0 / kDraws;
        EXPECT_NEAR(static_cast<double>(more) / kDraws, chance, tolerance) << k;
    }
}

}  // namespace
}  // namespace tenthday
