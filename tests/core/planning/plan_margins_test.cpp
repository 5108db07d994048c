/// What no plan does without, against the binomial distribution written out.
#include "planning/plan_margins.h"

#include <gtest/gtest.h>

#include <cmath>
#include <tuple>

#include "losses/how_many.h"

namespace tenthday::test {
namespace {

/// Chance of at least so many good ones, term by term.
double atLeast(int wanted, int pieces, double share) {
    double sum = 0;
    for (int n = wanted; n <= pieces; ++n)
        sum += std::exp(std::lgamma(pieces + 1.0) - std::lgamma(n + 1.0) -
                        std::lgamma(pieces - n + 1.0) + n * std::log(share) +
                        (pieces - n) * std::log(1 - share));
    return sum;
}

TEST(PlanMargins, FewestPiecesAreTheLeastThatDo) {
    for (const int wanted : {1, 5, 30, 400})
        for (const double share : {0.3, 0.64, 0.9})
            for (const double sure : {0.5, 0.9, 0.99}) {
                const auto pieces = fewestPieces(wanted, share, sure);
                EXPECT_GE(atLeast(wanted, pieces, share), sure - 1e-9)
                    << wanted << ' ' << share << ' ' << sure;
                EXPECT_LT(atLeast(wanted, pieces - 1, share), sure)
                    << wanted << ' ' << share << ' ' << sure;
            }
}

PlanProblem oneOrder(double sure) {
    PlanProblem problem;
    problem.horizon = 60;
    PlanProblem::Option option;
    option.ready = 40;
    option.queensPerCell = 0.6;
    problem.options.push_back(option);
    PlanProblem::Demand demand;
    demand.wanted = 30;
    demand.due = 50;
    demand.sure = sure;
    problem.demands.push_back(demand);
    return problem;
}

TEST(PlanMargins, TheSurerTheMoreAndLessWhereItMayFail) {
    EXPECT_GT(leastMargins(oneOrder(0.95))[0], leastMargins(oneOrder(0.8))[0]);
    EXPECT_GT(leastMargins(oneOrder(0.8))[0], 0);
    EXPECT_LT(leastMargins(oneOrder(0.3))[0], 0);
}

/// A season's plan as the exact chances see it.
struct Luck {
    std::size_t batches = 1;
    double spread = 1;            ///< between batches, by those of the facts
    std::vector<double> seasons;  ///< share of the virgins that weather lets mate; empty: all
};

/// Queens expected of the fewest grafts that are sure enough, in the best season.
std::optional<double> leastByChance(const Luck& luck, std::int32_t wanted, double sure) {
    Split split;
    auto rates = chainRates(Facts());
    double good = 1;
    for (const auto stage : kAllLossStages) {
        good *= rates[stage].mean;
        rates[stage].sd *= luck.spread;
    }
    for (std::size_t i = 0; i < luck.batches; ++i)
        split.batches.push_back({1, rates, luck.seasons});
    split.seasonWeights.assign(luck.seasons.size(), 1);
    const auto needed = graftsNeeded(split, wanted, sure);
    if (!needed.total) return std::nullopt;
    return *needed.total * good;
}

TEST(PlanMargins, NoPlanThatIsSureEnoughHasLess) {
    const auto rates = chainRates(Facts());
    auto problem = oneOrder(0.5);
    auto& option = problem.options.front();
    option.bestPerCell = rates[LossStage::Emerged].mean * rates[LossStage::Mated].mean *
                         rates[LossStage::JudgedGood].mean;
    const std::vector<double> fair;
    const std::vector<double> oneBad{1, 1, 1, 0.1};
    int bySomeSeasons = 0;
    for (const auto& [batches, spread, seasons] :
         {std::tuple(1, 1.0, fair), std::tuple(1, 3.0, fair), std::tuple(3, 0.0, fair),
          std::tuple(3, 1.0, oneBad)})
        for (const int wanted : {1, 5, 30, 100})
            for (const double sure : {0.3, 0.5, 0.6, 0.7, 0.9, 0.95}) {
                double share = seasons.empty() ? 1 : 0;  // of the mean season
                for (const auto season : seasons) share += season / 4;
                option.queensPerCell = option.bestPerCell * share;
                auto& demand = problem.demands.front();
                demand.wanted = wanted;
                demand.sure = sure;
                const Luck luck{static_cast<std::size_t>(batches), spread, seasons};
                const auto least = leastByChance(luck, wanted, sure);
                if (!least) continue;
                EXPECT_GE(*least, wanted + leastMargins(inBestSeason(problem))[0] - 1e-9)
                    << batches << " batches, spread " << spread << ", " << seasons.size()
                    << " seasons, " << wanted << " wanted at " << sure;
                bySomeSeasons += *least * share < wanted + leastMargins(problem)[0];
            }
    EXPECT_GT(bySomeSeasons, 0) << "in the mean season it is no bound: good seasons alone can do";
}

TEST(PlanMargins, OfTheBestSeasonIsEachThatGivesMore) {
    auto problem = oneOrder(0.9);
    problem.sources.push_back({0, true, 5, 20});
    EXPECT_FALSE(hangsOnWeather(problem));
    EXPECT_EQ(leastMargins(inBestSeason(problem)), leastMargins(problem));
    problem.options[0].bestPerCell = 0.7;
    problem.sources[0].best = 8;
    EXPECT_TRUE(hangsOnWeather(problem));
    EXPECT_EQ(inBestSeason(problem).options[0].queensPerCell, 0.7);
    EXPECT_EQ(inBestSeason(problem).sources[0].count, 8);
}

TEST(PlanMargins, OfALineWhatItsOwnQueensNeed) {
    auto problem = oneOrder(0.9);
    problem.lines = 2;
    auto own = problem.demands.front();
    own.line = 1;
    own.wanted = 10;
    problem.demands.push_back(own);
    auto alone = oneOrder(0.9);
    alone.demands.front().wanted = 10;
    EXPECT_EQ(leastOwnMargins(problem)[0], 0) << "any queen fits it";
    EXPECT_EQ(leastOwnMargins(problem)[1], leastMargins(alone)[0]);
    EXPECT_LT(leastOwnMargins(problem)[1], leastMargins(problem)[1]);
}

TEST(PlanMargins, WhatIsThereAlreadyNeedsNone) {
    auto problem = oneOrder(0.9);
    problem.sources.push_back({0, true, 31, 20});
    EXPECT_EQ(leastMargins(problem)[0], 0);
    problem.sources.clear();
    problem.demands[0].isMet = true;
    EXPECT_EQ(leastMargins(problem)[0], 0);
}

}  // namespace
}  // namespace tenthday::test
