/// What no plan does without, against the binomial distribution written out.
#include "planning/plan_margins.h"

#include <gtest/gtest.h>

#include <cmath>

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
