/// The door to the solver: answers that hold, stops, starts.
#include "solver/solve.h"

#include <gtest/gtest.h>

#include "support/second_solver.h"

namespace tenthday::test {
namespace {

/// Take things of these worths and weights, none heavier together than `most`; worth is to be
/// greatest, so cost is its negative.
LinearProgram knapsack(const std::vector<double>& worths, const std::vector<double>& weights,
                       double most) {
    LinearProgram program;
    LinearProgram::Row row{-kUnbounded, most, {}};
    for (std::size_t i = 0; i < worths.size(); ++i)
        row.terms.push_back({program.addColumn({0, 1, -worths[i], true}), weights[i]});
    program.addRow(std::move(row));
    return program;
}

LinearProgram largeKnapsack() {
    std::vector<double> worths;
    std::vector<double> weights;
    for (int i = 0; i < 40; ++i) {
        worths.push_back(20 + (i * 37) % 23 + 0.1 * i);
        weights.push_back(15 + (i * 53) % 29);
    }
    return knapsack(worths, weights, 400);
}

TEST(Solve, FindsTheBestOfWholeNumbers) {
    // By hand: 10 + 7 of weight 5 + 4; the relaxed answer would take part of the third.
    const auto solved = solve(knapsack({10, 7, 6}, {5, 4, 3.5}, 9));
    ASSERT_EQ(solved.status, SolveStatus::Proven);
    EXPECT_DOUBLE_EQ(solved.cost, -17);
    EXPECT_EQ(solved.values, (std::vector<double>{1, 1, 0}));
}

TEST(Solve, TellsThatThereIsNoAnswer) {
    auto relaxed = knapsack({1, 1}, {1, 1}, 5);
    relaxed.addRow({3, kUnbounded, {{0, 1}, {1, 1}}});
    EXPECT_EQ(solve(relaxed).status, SolveStatus::Infeasible);
    auto whole = knapsack({1, 1}, {1, 1}, 5);  // 2 a + 2 b = 3 can be, but not by whole numbers
    whole.addRow({3, 3, {{0, 2}, {1, 2}}});
    EXPECT_EQ(solve(whole).status, SolveStatus::Infeasible);
    EXPECT_EQ(solveByGlpk(relaxed).status, SolveStatus::Infeasible) << "so says the second solver";
}

TEST(Solve, AgreesWithASecondSolverAndWithItself) {
    const auto program = largeKnapsack();
    const auto one = solve(program);
    const auto two = solveByGlpk(program);
    ASSERT_EQ(one.status, SolveStatus::Proven);
    ASSERT_EQ(two.status, SolveStatus::Proven);
    EXPECT_NEAR(one.cost, two.cost, 1e-6);
    EXPECT_TRUE(program.isMetBy(one.values));
    EXPECT_EQ(solve(program).values, one.values) << "the same again";
}

TEST(Solve, WhatIsSettledFirstChangesNoBestCost) {
    auto program = largeKnapsack();
    const auto plain = solve(program);
    LinearProgram::Row half{0, 0, {}};  // how many of the first half are taken
    for (std::size_t i = 0; i < 20; ++i) half.terms.push_back({i, 1});
    half.terms.push_back({program.addColumn({0, 20, 0, true, 1}), -1});
    program.addRow(std::move(half));
    const auto ranked = solve(program);
    ASSERT_EQ(ranked.status, SolveStatus::Proven);
    EXPECT_NEAR(ranked.cost, plain.cost, 1e-6);
}

TEST(Solve, StopsWhenItIsToldToAndKeepsTheStart) {
    const auto program = largeKnapsack();
    SolveOptions options;
    options.start.assign(40, 0);
    options.start[3] = 1;
    int asked = 0;
    options.goOn = [&](std::optional<double>, double) { return ++asked < 1; };
    const auto solved = solve(program, options);
    EXPECT_EQ(solved.status, SolveStatus::Stopped);
    ASSERT_FALSE(solved.values.empty());
    EXPECT_TRUE(program.isMetBy(solved.values));
    EXPECT_LE(solved.cost, program.costOf(options.start));
    EXPECT_EQ(asked, 1) << "not asked again";
}

TEST(LinearProgram, SaysWhetherValuesHold) {
    const auto program = knapsack({10, 7, 6}, {5, 4, 3.5}, 9);
    EXPECT_TRUE(program.isMetBy({1, 1, 0}));
    EXPECT_FALSE(program.isMetBy({1, 1, 1})) << "too heavy";
    EXPECT_FALSE(program.isMetBy({0.5, 0, 0})) << "not whole";
    EXPECT_FALSE(program.isMetBy({2, 0, 0})) << "above its bound";
    EXPECT_FALSE(program.isMetBy({1, 1})) << "too few";
}

}  // namespace
}  // namespace tenthday::test
