// The aims of a plan in their order, and what its values say.
#include <algorithm>
#include <cmath>

#include "planning/plan_model.h"

namespace tenthday {
namespace {

/// A whole number that rounding must not push beyond the next one.
constexpr double kSlack = 1e-6;

}  // namespace

LinearProgram PlanModel::forAim(PlanAim aim) const {
    auto program = program_;
    switch (aim) {
        case PlanAim::Short:
            for (std::size_t k = 0; k < short_.size(); ++k)
                program.column(short_[k]).cost = problem_.demands[k].weight;
            break;
        case PlanAim::GraftDays:
            for (const auto& [day, column] : days_) program.column(column).cost = 1;
            break;
        case PlanAim::Grafts:
            for (std::size_t i = 0; i < options_.size(); ++i)
                for (const auto& lines : options_[i].start)
                    for (const auto column : lines)
                        program.column(column).cost =
                            1 + 0.1 * problem_.options[i].day / std::max(problem_.horizon, 1);
            break;
    }
    return program;
}

void PlanModel::hold(PlanAim aim, double most) {
    const auto costs = forAim(aim);
    LinearProgram::Row row{-kUnbounded, most + kSlack, {}};
    for (std::size_t i = 0; i < costs.columns().size(); ++i)
        if (costs.columns()[i].cost != 0) row.terms.push_back({i, costs.columns()[i].cost});
    if (!row.terms.empty()) program_.addRow(std::move(row));
}

double PlanModel::mostQueens(std::int32_t day, const PlanProblem::Demand& demand) const {
    double most = 0;
    for (const auto& option : problem_.options) {
        if (option.day != day || option.ready > demand.due) continue;
        double ripe = 0;
        for (const auto& use : option.steps.front()) ripe = std::max(ripe, use.ripe);
        double nucs = 0;
        for (const auto yard : option.yards)
            nucs += problem_.yards[yard].isBound
                        ? problem_.yards[yard].nucs[static_cast<std::size_t>(option.cellsDay)]
                        : kUnbounded;
        most += std::min(mostGrafts(option) * ripe, nucs) * option.queensPerCell;
    }
    return most;
}

void PlanModel::addDayCounts(double weighed) {
    double wanted = 0;
    for (std::size_t k = 0; k < problem_.demands.size(); ++k) {
        const auto& demand = problem_.demands[k];
        if (demand.wants != PlanProblem::Wants::Queens) continue;
        wanted += demand.wanted;
        if (demand.isMet) continue;
        // No order lacks more than all that is short, by its weight.
        double settled = wanted + margins_[k] - std::floor(weighed / demand.weight + kSlack);
        for (const auto& source : problem_.sources)
            if (source.day <= demand.due) settled -= source.count;
        std::vector<double> gives;
        LinearProgram::Row row;
        for (const auto& [day, column] : days_) {
            const double most = mostQueens(day, demand);
            if (most <= 0) continue;
            gives.push_back(most);
            row.terms.push_back({column, 1});
        }
        std::sort(gives.rbegin(), gives.rend());
        std::size_t least = 0;
        for (double sum = 0; least < gives.size() && sum < settled - 1e-4; ++least)
            sum += gives[least];
        if (least == 0) continue;
        row.lower = static_cast<double>(least);
        program_.addRow(std::move(row));
    }
}

std::int32_t PlanModel::shortOf(const std::vector<double>& values, std::size_t demand) const {
    return static_cast<std::int32_t>(std::lround(values[short_[demand]]));
}

std::vector<PlanModel::Load> PlanModel::loadsOf(const std::vector<double>& values) const {
    constexpr double kNothing = 1e-6;
    std::vector<Load> loads;
    for (std::size_t i = 0; i < options_.size(); ++i) {
        const auto& option = problem_.options[i];
        const auto& columns = options_[i];
        Load load;
        load.option = i;
        for (std::size_t p = 0; p < columns.start.size(); ++p)
            for (std::size_t l = 0; l < option.lines.size(); ++l)
                if (const double grafts = values[columns.start[p][l]]; grafts > kNothing)
                    load.first.push_back({option.steps.front()[p].pool, option.lines[l], grafts});
        if (load.first.empty()) continue;
        for (std::size_t s = 0; s < columns.later.size(); ++s) {
            auto& step = load.later.emplace_back();
            for (std::size_t p = 0; p < columns.later[s].size(); ++p)
                if (const double grafts = values[columns.later[s][p]]; grafts > kNothing)
                    step[option.steps[s + 1][p].pool] += grafts;
        }
        for (const auto& step : columns.taken) {
            auto& taken = load.taken.emplace_back();
            for (const auto column : step)
                taken.push_back(static_cast<std::int32_t>(std::lround(values[column])));
        }
        load.nucCells.assign(problem_.yards.size(), 0);
        for (std::size_t y = 0; y < option.yards.size(); ++y)
            load.nucCells[option.yards[y]] += values[columns.byYard[y]];
        load.toOrders.assign(problem_.lines, std::vector<double>(problem_.demands.size()));
        for (std::size_t l = 0; l < option.lines.size(); ++l)
            for (const auto& [k, column] : columns.given[l])
                load.toOrders[option.lines[l]][k] += values[column];
        loads.push_back(std::move(load));
    }
    return loads;
}

}  // namespace tenthday
