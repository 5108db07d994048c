/// Made-up seasons planned aim by aim: against a second solver, against all plans there are, and
/// against what more of something must do.
#include "planning/plan_solve.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>

#include "planning/plan_check.h"
#include "planning/whole_plan.h"
#include "support/plan_seasons.h"
#include "support/second_solver.h"

namespace tenthday::test {
namespace {

PlanSolution solved(const PlanProblem& problem, const Solver& solver = solve) {
    const PlanControl control;
    PlanBudget budget(control);
    const std::vector<double> none(problem.demands.size());
    return solvePlan(problem, none, solver, budget);
}

PlanProblem season(std::uint32_t number) {
    const auto n = static_cast<std::int32_t>(number);
    SeasonSize size;
    size.days = 24;
    size.every = 2;
    size.orders = 2 + n % 4;
    size.nucs = 30 + n % 3 * 10;
    size.lines = 1 + n % 2;
    size.plenty = 0.5 + 0.15 * (n % 8);
    auto problem = madeUpSeason(number, size);
    problem.notOnOneBatch = n % 5 == 4;
    if (n % 7 == 3) problem.mostGraftsADay = 25;
    return problem;
}
constexpr std::uint32_t kSeasons = 60;

// An order for queens of a line that nobody has, while others are plenty: it alone stays short.
TEST(SolvePlan, WhatNoQueenFitsStaysShortAlone) {
    auto problem = season(1);
    PlanProblem::Demand rare;
    rare.line = problem.lines++;
    rare.wanted = 10;
    rare.sure = 0.9;
    rare.due = problem.horizon - 1;
    problem.demands.push_back(rare);
    problem.sources.push_back({0, true, 500, 0, 500});
    PlanAsked asked;
    asked.margins.assign(problem.demands.size(), 0);
    asked.own.assign(problem.demands.size(), 0);
    asked.own.back() = 1.7;
    const PlanControl control;
    PlanBudget budget(control);
    const auto plan = solvePlan(problem, asked, solve, budget);
    EXPECT_TRUE(plan.isShortProven);
    ASSERT_EQ(plan.shortOf.size(), problem.demands.size());
    EXPECT_EQ(plan.shortOf.back(), 12) << "10 and what makes them sure, in whole queens";
    for (std::size_t k = 0; k + 1 < plan.shortOf.size(); ++k) {
        const auto& demand = problem.demands[k];
        const bool takesAny = demand.wants == PlanProblem::Wants::Queens && !demand.line;
        EXPECT_TRUE(!takesAny || plan.shortOf[k] == 0) << k;
    }
}

TEST(SolvePlan, SixtySeasonsAsASecondSolverHasThem) {
    int shorts = 0;
    for (std::uint32_t number = 0; number < kSeasons; ++number) {
        const auto problem = season(number);
        const auto one = solved(problem);
        const auto two = solved(problem, solveByGlpk);
        ASSERT_TRUE(one.isProven && two.isProven) << "season " << number;
        EXPECT_EQ(one.weighed, two.weighed) << "short, season " << number;
        EXPECT_EQ(one.graftDays, two.graftDays) << "graft days, season " << number;
        // Each is within 1 % of its own bound, and so of the other's cost.
        EXPECT_LE(one.grafts, two.grafts * 1.0101 + 1e-6) << "season " << number;
        EXPECT_LE(two.grafts, one.grafts * 1.0101 + 1e-6) << "season " << number;
        EXPECT_GE(one.bound, one.grafts * 0.99 - 1e-6) << "season " << number;
        shorts += one.weighed > 0;
    }
    EXPECT_GE(shorts, 12) << "too few of them can't be met";
    EXPECT_LE(shorts, 48) << "too few of them can be met";
}

TEST(SolvePlan, WholePlansOfAllOfThemHoldAndGiveWhatWasSaid) {
    for (std::uint32_t number = 0; number < kSeasons; ++number) {
        const auto problem = season(number);
        const auto solution = solved(problem);
        const auto plan = wholePlan(problem, solution.loads);
        const auto wrong = whatIsWrong(problem, plan);
        EXPECT_TRUE(wrong.empty()) << "season " << number << ": " << wrong.front();
        std::int32_t grafts = 0;
        for (const auto& batch : plan) grafts += graftsOf(batch);
        double asked = 0;
        for (const auto& load : solution.loads)
            for (const auto& bar : load.first) asked += bar.grafts;
        EXPECT_NEAR(grafts, asked, static_cast<double>(plan.size()) * 2) << "season " << number;
    }
}

TEST(SolvePlan, TheSameSeasonHasTheSamePlan) {
    const auto problem = season(9);
    EXPECT_EQ(wholePlan(problem, solved(problem).loads), wholePlan(problem, solved(problem).loads));
}

TEST(SolvePlan, MoreNucsOrLaterDueDaysAreNeverWorse) {
    for (std::uint32_t number = 0; number < kSeasons; number += 3) {
        const auto problem = season(number);
        const auto before = solved(problem);
        auto more = problem;
        for (auto& nucs : more.yards.front().nucs) nucs += 10;
        auto later = problem;
        for (auto& demand : later.demands) {
            demand.due += 3;
            // A window opens wider.
            if (!demand.goDays.empty())
                for (int i = 0; i < 3; ++i) demand.goDays.push_back(demand.goDays.back() + 1);
        }
        for (const auto& better : {solved(more), solved(later)}) {
            EXPECT_LE(better.weighed, before.weighed) << "season " << number;
            if (better.weighed < before.weighed) continue;
            EXPECT_LE(better.graftDays, before.graftDays) << "season " << number;
        }
    }
}

constexpr std::int32_t kTinyRoom = 4;
constexpr std::int32_t kTinyHold = 3;

/// One builder, five days, every graft a queen: all is whole, so all plans can be gone through.
PlanProblem tiny(std::uint32_t number) {
    PlanProblem problem;
    problem.horizon = 30;
    problem.pools.push_back({std::vector<std::int32_t>(30, 1)});
    const auto nucs = static_cast<std::int32_t>(3 + number % 4);
    problem.yards.push_back({std::vector<std::int32_t>(30, nucs), true});
    for (std::int32_t day = 0; day < 5; ++day) {
        PlanProblem::Option option;
        option.day = day;
        option.steps = {{{0, day, day + 1, kTinyRoom, 1.0}}};
        option.cellsDay = day + 2;
        option.outDay = day + 3;
        option.ready = option.lastHeld = day + 2 + kTinyHold;
        option.queensPerCell = 1;
        option.virginsPerCell = 1;
        option.yards = {0};
        option.lines = {0};
        problem.options.push_back(option);
    }
    for (std::uint32_t i = 0; i < 2; ++i) {
        PlanProblem::Demand demand;
        demand.wanted = static_cast<std::int32_t>(1 + (number * 5 + i * 3) % 7);
        demand.due = static_cast<std::int32_t>(5 + (number + 2 * i) % 4 + i);
        problem.demands.push_back(demand);
    }
    std::stable_sort(problem.demands.begin(), problem.demands.end(),
                     [](const auto& a, const auto& b) { return a.due < b.due; });
    return problem;
}

struct Best {
    int lacking = 1000;
    int days = 1000;
    double grafts = 1e9;
};

/// Of one plan, none where it cannot be.
std::optional<Best> worth(const PlanProblem& problem, const std::array<int, 5>& grafts) {
    Best plan{0, 0, 0};
    for (int day = 0; day < 5; ++day) {
        if (grafts[static_cast<std::size_t>(day)] == 0) continue;
        if (day > 0 && grafts[static_cast<std::size_t>(day) - 1] > 0) return std::nullopt;
        ++plan.days;
        plan.grafts += grafts[static_cast<std::size_t>(day)] * (1 + 0.1 * day / problem.horizon);
    }
    for (int day = 0; day < 30; ++day) {
        int held = 0;
        for (int graft = 0; graft < 5; ++graft)
            if (graft + 2 <= day && day <= graft + 2 + kTinyHold)
                held += grafts[static_cast<std::size_t>(graft)];
        if (held > problem.yards[0].nucs[static_cast<std::size_t>(day)]) return std::nullopt;
    }
    // An order keeps its place: what it lacks on its day stays owed, before those due later.
    int owed = 0;
    for (const auto& demand : problem.demands) {
        owed += demand.wanted;
        int there = 0;
        for (int graft = 0; graft < 5; ++graft)
            if (graft + 2 + kTinyHold <= demand.due)
                there += grafts[static_cast<std::size_t>(graft)];
        plan.lacking += std::max(owed - there, 0);
    }
    return plan;
}

Best bestOfAll(const PlanProblem& problem) {
    Best best;
    std::array<int, 5> grafts{};
    const int all = 5 * 5 * 5 * 5 * 5;
    for (int code = 0; code < all; ++code) {
        int left = code;
        for (auto& count : grafts) count = left % 5, left /= 5;
        const auto plan = worth(problem, grafts);
        if (!plan) continue;
        const auto key = [](const Best& b) { return std::tuple(b.lacking, b.days, b.grafts); };
        if (key(*plan) < key(best)) best = *plan;
    }
    return best;
}

TEST(SolvePlan, TinySeasonsAgainstAllPlansThereAre) {
    for (std::uint32_t number = 0; number < 12; ++number) {
        const auto problem = tiny(number);
        const auto best = bestOfAll(problem);
        const auto solution = solved(problem);
        ASSERT_TRUE(solution.isProven) << "season " << number;
        EXPECT_EQ(solution.weighed, best.lacking) << "season " << number;
        EXPECT_EQ(solution.graftDays, best.days) << "season " << number;
        EXPECT_NEAR(solution.grafts, best.grafts, 0.0101 * best.grafts + 1e-6)
            << "season " << number;
    }
}

TEST(SolvePlan, NoOrderLiesOnOneBatchAloneWhereThatIsAsked) {
    auto problem = tiny(0);
    problem.demands = {problem.demands.front()};
    problem.demands.front().wanted = 3;
    problem.demands.front().due = 20;
    EXPECT_EQ(solved(problem).graftDays, 1);
    problem.notOnOneBatch = true;
    const auto spread = solved(problem);
    EXPECT_EQ(spread.weighed, 0);
    EXPECT_EQ(spread.graftDays, 2) << "two of three at most come of one batch";
}

TEST(SolvePlan, HoursADayAreKept) {
    int fewer = 0;
    for (std::uint32_t number = 0; number < kSeasons; number += 6) {
        auto problem = season(number);
        const auto before = solved(problem);
        problem.hours = PlanProblem::Hours{{20, 0.5}, {40, 1.3}, {30, 4}, {}};
        problem.hours->left.assign(static_cast<std::size_t>(problem.horizon), 120);
        for (std::size_t day = 0; day < problem.hours->left.size(); day += 7)
            problem.hours->left[day] = -30;  // too long already
        const auto after = solved(problem);
        const auto plan = wholePlan(problem, after.loads);
        const auto wrong = whatIsWrong(problem, plan);
        EXPECT_TRUE(wrong.empty()) << "season " << number << ": " << wrong.front();
        EXPECT_GE(after.weighed, before.weighed) << "season " << number;
        fewer += after.weighed > before.weighed;
        for (const auto& batch : plan) {
            const auto& option = problem.options[batch.option];
            for (const auto day : {option.day, option.cellsDay, option.ready})
                EXPECT_NE(day % 7, 0) << "season " << number;
        }
    }
    EXPECT_GT(fewer, 0) << "two hours a day must bind somewhere";
}

TEST(SolvePlan, WhatStaysShortInPartsStaysShort) {
    int told = 0;
    int shorts = 0;
    for (std::uint32_t number = 0; number < kSeasons; number += 4) {
        const auto problem = season(number);
        PlanAsked asked;
        asked.margins.assign(problem.demands.size(), 0);
        asked.onlyWhole = true;
        const PlanControl control;
        PlanBudget budget(control);
        const bool isShort = solvePlan(problem, asked, solve, budget).weighed > 0;
        const bool stays = staysShort(problem, asked, solve);
        EXPECT_TRUE(isShort || !stays) << "season " << number;
        told += stays;
        shorts += isShort;
    }
    EXPECT_GT(told, shorts / 2) << "most of them are told so";
    EXPECT_LT(shorts, 15) << "not all are short";
}

TEST(SolvePlan, WhenCancelledItSaysSo) {
    const std::atomic<bool> cancel{true};
    PlanControl control;
    control.cancel = &cancel;
    PlanBudget budget(control);
    const auto problem = season(1);
    const auto solution =
        solvePlan(problem, std::vector<double>(problem.demands.size()), solve, budget);
    EXPECT_TRUE(solution.isStopped);
    EXPECT_FALSE(solution.isProven);
}

}  // namespace
}  // namespace tenthday::test
