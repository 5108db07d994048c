#include "planning/plan_problem.h"

#include <algorithm>
#include <cmath>

namespace tenthday {

bool servesCells(const PlanProblem::Option& option, const PlanProblem::Demand& demand) {
    const auto last =
        demand.wants == PlanProblem::Wants::Virgins ? option.outDay + kVirginDays : option.cellsDay;
    const auto first =
        demand.wants == PlanProblem::Wants::Virgins ? option.outDay : option.cellsDay;
    return std::any_of(demand.goDays.begin(), demand.goDays.end(),
                       [&](auto day) { return first <= day && day <= last; });
}

bool fits(const PlanProblem::Demand& demand, std::size_t line, bool proven) {
    return (!demand.line || *demand.line == line) && (!demand.proven || proven);
}

bool includes(const PlanProblem::Demand& demand, const PlanProblem::Demand& other) {
    return (!demand.line || demand.line == other.line) && (!demand.proven || other.proven);
}

double mostOfOneBatch(const PlanProblem::Demand& demand) {
    return demand.wanted < 2 ? demand.wanted : std::ceil(demand.wanted / 2.0);
}

std::int32_t graftsOf(const WholeBatch& batch) {
    std::int32_t sum = 0;
    for (const auto& bar : batch.bars) sum += bar.grafts;
    return sum;
}

double ripeOf(const PlanProblem& problem, const WholeBatch& batch, std::size_t line) {
    double cells = 0;
    const auto& option = problem.options[batch.option];
    for (const auto& bar : batch.bars)
        if (bar.line == line)
            for (const auto& use : option.steps.front())
                if (use.pool == bar.pools.front()) cells += use.ripe * bar.grafts;
    return cells;
}

}  // namespace tenthday
