/// Each fault of a plan is found, one by one, in a plan that holds.
#include "planning/plan_check.h"

#include <gtest/gtest.h>

#include "planning/plan_solve.h"
#include "planning/whole_plan.h"
#include "support/plan_seasons.h"

namespace tenthday::test {
namespace {

class PlanCheck : public ::testing::Test {
protected:
    PlanCheck() {
        const PlanControl control;
        PlanBudget budget(control);
        const std::vector<double> none(problem.demands.size());
        plan = wholePlan(problem, solvePlan(problem, none, solve, budget).loads);
    }
    [[nodiscard]] bool finds(const std::string& what) const {
        for (const auto& wrong : whatIsWrong(problem, plan))
            if (wrong.find(what) != std::string::npos) return true;
        return false;
    }

    PlanProblem problem = madeUpSeason(1, {24, 2, 3, 2, 40, 2, 0.8});
    WholePlan plan;
};

TEST_F(PlanCheck, APlanThatHoldsHasNothingWrong) {
    ASSERT_FALSE(plan.empty());
    EXPECT_TRUE(whatIsWrong(problem, plan).empty());
}

TEST_F(PlanCheck, ABuilderHoldsNoMoreThanItsRoom) {
    plan.front().bars.front().grafts += 100;
    EXPECT_TRUE(finds("an overfull builder"));
}

TEST_F(PlanCheck, ABuilderHasOneBatchAtATime) {
    auto again = plan.front();
    for (auto& cells : again.nucCells) cells = 0;
    plan.push_back(again);
    EXPECT_TRUE(finds("a builder with two batches"));
}

TEST_F(PlanCheck, NoMoreBuildersThanThereAre) {
    const auto& bar = plan.front().bars.front();
    auto& standing = problem.pools[bar.pools.front()].standing;
    std::fill(standing.begin(), standing.end(), 0);
    EXPECT_TRUE(finds("more builders than there are"));
}

TEST_F(PlanCheck, NoMoreCellsThanNucs) {
    auto& nucs = problem.yards.front().nucs;
    std::fill(nucs.begin(), nucs.end(), 1);
    EXPECT_TRUE(finds("more cells than nucs"));
}

TEST_F(PlanCheck, NoMoreCellsThanGetRipe) {
    plan.front().nucCells.front() += 30;
    EXPECT_TRUE(finds("more cells than get ripe"));
}

TEST_F(PlanCheck, NoMoreGraftsADayThanWanted) {
    problem.mostGraftsADay = 1;
    EXPECT_TRUE(finds("more grafts than wanted"));
}

TEST_F(PlanCheck, NoMoreWorkThanHoursOnAnyOfItsDays) {
    const auto& option = problem.options[plan.front().option];
    for (const auto day : {option.day, option.cellsDay, option.ready}) {
        problem.hours = PlanProblem::Hours{{20, 0.5}, {40, 1.3}, {30, 4}, {}};
        problem.hours->left.assign(static_cast<std::size_t>(problem.horizon), 10000);
        EXPECT_FALSE(finds("more work than hours"));
        const double minutes = minutesOn(problem, plan, day);
        EXPECT_GT(minutes, 20) << "day " << day;
        problem.hours->left[static_cast<std::size_t>(day)] = static_cast<std::int32_t>(minutes) - 1;
        EXPECT_TRUE(finds("more work than hours on day " + std::to_string(day)));
    }
}

TEST_F(PlanCheck, NoLineWithoutABreederQueen) {
    problem.options[plan.front().option].lines.clear();
    EXPECT_TRUE(finds("no breeder queen of the line"));
}

TEST_F(PlanCheck, NoYardWithoutDrones) {
    problem.options[plan.front().option].yards.clear();
    EXPECT_TRUE(finds("a yard without drones"));
}

}  // namespace
}  // namespace tenthday::test
