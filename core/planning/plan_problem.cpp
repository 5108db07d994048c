#include "planning/plan_problem.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tenthday {

bool servesCells(const PlanProblem::Option& option, const PlanProblem::Demand& demand) {
    if (!option.givesRipe) return false;
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

bool hangsOnWeather(const PlanProblem& problem) {
    const auto gives = [](double best, double mean) { return best > mean + 1e-6; };
    return std::any_of(
               problem.options.begin(), problem.options.end(),
               [&](const auto& each) { return gives(each.bestPerCell, each.queensPerCell); }) ||
           std::any_of(problem.sources.begin(), problem.sources.end(),
                       [&](const auto& each) { return gives(each.best, each.count); });
}

PlanProblem inBestSeason(const PlanProblem& problem) {
    auto best = problem;
    for (auto& option : best.options)
        option.queensPerCell = std::max(option.queensPerCell, option.bestPerCell);
    for (auto& source : best.sources) source.count = std::max(source.count, source.best);
    return best;
}

std::int32_t graftsOf(const WholeBatch& batch) {
    std::int32_t sum = 0;
    for (const auto& bar : batch.bars) sum += bar.grafts;
    return sum;
}

double ripeOf(const PlanProblem& problem, const WholeBatch& batch) {
    double ripe = 0;
    for (std::size_t line = 0; line < problem.lines; ++line) ripe += ripeOf(problem, batch, line);
    return ripe;
}

double placedOf(const WholeBatch& batch) {
    return std::accumulate(batch.nucCells.begin(), batch.nucCells.end(), 0.0);
}

double minutesOn(const PlanProblem& problem, const WholePlan& plan, std::int32_t day) {
    if (!problem.hours) return 0;
    double minutes = 0;
    const auto add = [&](std::int32_t on, const PlanProblem::Work& work, double pieces) {
        if (on == day) minutes += work.once + work.each * pieces;
    };
    for (const auto& batch : plan) {
        const auto& option = problem.options[batch.option];
        add(option.day, problem.hours->graft, graftsOf(batch));
        add(option.cellsDay, problem.hours->cells, std::round(ripeOf(problem, batch)));
        add(option.ready, problem.hours->caught, placedOf(batch));
    }
    return minutes;
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

double nucCellsOf(const PlanProblem& problem, const WholeBatch& batch, std::size_t line) {
    const auto& option = problem.options[batch.option];
    double cells = ripeOf(problem, batch, line);
    for (std::size_t k = 0; k < problem.demands.size(); ++k)
        cells -= problem.demands[k].wants == PlanProblem::Wants::Virgins
                     ? batch.toOrders[line][k] / option.virginsPerCell
                     : batch.toOrders[line][k];
    return std::max(cells, 0.0);
}

}  // namespace tenthday
