#include "planning/plan_model.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace tenthday {
namespace {

using Term = LinearProgram::Term;

}  // namespace

PlanModel::PlanModel(const PlanProblem& problem, const std::vector<double>& margins,
                     const std::vector<PlanCut>& cuts, const std::vector<double>& own)
    : problem_(problem), margins_(margins) {
    for (const auto& demand : problem.demands)
        if (demand.wants == PlanProblem::Wants::Queens) dues_.push_back(demand.due);
    std::sort(dues_.begin(), dues_.end());
    dues_.erase(std::unique(dues_.begin(), dues_.end()), dues_.end());
    addDays();
    for (std::size_t i = 0; i < problem.options.size(); ++i) addOption(i);
    addPools();
    addHours();
    addNucs();
    addDemands(own);
    for (const auto& cut : cuts) addCut(cut);
}

void PlanModel::addDays() {
    for (const auto& option : problem_.options)
        if (!days_.contains(option.day)) days_[option.day] = program_.addColumn({0, 1, 0, true});
    std::vector<std::size_t> all;
    for (const auto& [day, column] : days_) all.push_back(column);
    addSpan(all);
}

void PlanModel::addSpan(std::span<const std::size_t> days) {
    if (days.size() < 2) return;
    const auto size = static_cast<std::int32_t>(days.size());
    const auto count = program_.addColumn({0, static_cast<double>(size), 0, true, size});
    LinearProgram::Row row{0, 0, {{count, -1}}};
    for (const auto day : days) row.terms.push_back({day, 1});
    program_.addRow(std::move(row));
    addSpan(days.first(days.size() / 2));
    addSpan(days.subspan(days.size() / 2));
}

std::int32_t PlanModel::standingFor(const PlanProblem::PoolUse& use) const {
    if (use.from > use.until) return 1;
    const auto& standing = problem_.pools[use.pool].standing;
    std::int32_t builders = standing[static_cast<std::size_t>(use.from)];
    for (auto d = use.from; d <= use.until; ++d)
        builders = std::min(builders, standing[static_cast<std::size_t>(d)]);
    return builders;
}

double PlanModel::mostGrafts(const PlanProblem::Option& option) const {
    double most = 0;
    for (std::size_t step = 0; step < option.steps.size(); ++step) {
        double room = 0;
        for (const auto& use : option.steps[step]) {
            room += static_cast<double>(use.room) * std::max(standingFor(use), 0);
        }
        most = step == 0 ? room : std::min(most, room);
    }
    return problem_.mostGraftsADay ? std::min<double>(most, *problem_.mostGraftsADay) : most;
}

void PlanModel::addOption(std::size_t at) {
    options_.emplace_back();
    addBuilders(at);
    addCells(at);
}

void PlanModel::addBuilders(std::size_t at) {
    const auto& option = problem_.options[at];
    auto& columns = options_[at];
    const auto day = days_.at(option.day);
    const double most = mostGrafts(option);
    std::vector<Term> all;  // grafts of the option
    for (std::size_t step = 0; step < option.steps.size(); ++step) {
        std::vector<Term> here;
        auto& taken = columns.taken.emplace_back();
        if (step > 0) columns.later.emplace_back();
        for (const auto& use : option.steps[step]) {
            std::vector<Term> room;
            if (step == 0) {
                auto& lines = columns.start.emplace_back();
                for (std::size_t l = 0; l < option.lines.size(); ++l) {
                    lines.push_back(program_.addColumn({0, most, 0, false}));
                    room.push_back({lines.back(), 1});
                }
            } else {
                columns.later.back().push_back(program_.addColumn({0, most, 0, false}));
                room.push_back({columns.later.back().back(), 1});
            }
            here.insert(here.end(), room.begin(), room.end());
            const std::int32_t builders = standingFor(use);
            taken.push_back(program_.addColumn({0, static_cast<double>(builders), 0, true}));
            room.push_back({taken.back(), -static_cast<double>(use.room)});
            program_.addRow({-kUnbounded, 0, std::move(room)});
            program_.addRow(
                {-kUnbounded, 0, {{taken.back(), 1}, {day, -static_cast<double>(builders)}}});
        }
        if (step == 0) {
            all = here;
            here.push_back({day, -most});
            program_.addRow({-kUnbounded, 0, std::move(here)});
        } else {
            for (const auto& term : all) here.push_back({term.column, -1});
            program_.addRow({0, 0, std::move(here)});
        }
    }
}

void PlanModel::addCells(std::size_t at) {
    const auto& option = problem_.options[at];
    auto& columns = options_[at];
    std::vector<Term> toYards;
    for (std::size_t l = 0; l < option.lines.size(); ++l) {
        columns.inNucs.push_back(program_.addColumn({}));
        auto& given = columns.given.emplace_back();
        LinearProgram::Row cells{-kUnbounded, 0, {{columns.inNucs.back(), 1}}};
        for (std::size_t k = 0; k < problem_.demands.size(); ++k) {
            const auto& demand = problem_.demands[k];
            if (demand.wants == PlanProblem::Wants::Queens || !servesCells(option, demand) ||
                !fits(demand, option.lines[l], false))
                continue;
            given.emplace_back(k, program_.addColumn({}));
            const bool virgins = demand.wants == PlanProblem::Wants::Virgins;
            cells.terms.push_back({given.back().second, virgins ? 1 / option.virginsPerCell : 1.0});
        }
        for (std::size_t p = 0; p < columns.start.size(); ++p)
            cells.terms.push_back({columns.start[p][l], -option.steps.front()[p].ripe});
        program_.addRow(std::move(cells));
        toYards.push_back({columns.inNucs.back(), 1});
    }
    for (std::size_t y = 0; y < option.yards.size(); ++y) {
        columns.byYard.push_back(program_.addColumn({}));
        toYards.push_back({columns.byYard.back(), -1});
    }
    program_.addRow({0, 0, std::move(toYards)});
}

void PlanModel::addPools() {
    // A row is needed only where a stay begins: nobody comes on the other days.
    for (std::size_t pool = 0; pool < problem_.pools.size(); ++pool) {
        std::vector<std::pair<const PlanProblem::PoolUse*, std::size_t>> uses;
        for (std::size_t i = 0; i < options_.size(); ++i)
            for (std::size_t s = 0; s < options_[i].taken.size(); ++s)
                for (std::size_t p = 0; p < options_[i].taken[s].size(); ++p) {
                    const auto& use = problem_.options[i].steps[s][p];
                    if (use.pool == pool && use.from <= use.until)
                        uses.emplace_back(&use, options_[i].taken[s][p]);
                }
        std::set<std::int32_t> begins;
        for (const auto& [use, column] : uses) begins.insert(use->from);
        for (const auto& [use, column] : uses)  // or where fewer stand than the day before
            for (auto d = use->from + 1; d <= use->until; ++d) {
                const auto& standing = problem_.pools[pool].standing;
                if (standing[static_cast<std::size_t>(d)] <
                    standing[static_cast<std::size_t>(d) - 1])
                    begins.insert(d);
            }
        for (const auto day : begins) {
            LinearProgram::Row row;
            row.upper = problem_.pools[pool].standing[static_cast<std::size_t>(day)];
            for (const auto& [use, column] : uses)
                if (use->from <= day && day <= use->until) row.terms.push_back({column, 1});
            program_.addRow(std::move(row));
        }
    }
    if (!problem_.mostGraftsADay) return;
    for (const auto& [day, column] : days_) {
        LinearProgram::Row row{-kUnbounded, 0, {{column, -1.0 * *problem_.mostGraftsADay}}};
        for (std::size_t i = 0; i < options_.size(); ++i)
            if (problem_.options[i].day == day)
                for (const auto& lines : options_[i].start)
                    for (const auto start : lines) row.terms.push_back({start, 1});
        program_.addRow(std::move(row));
    }
}

void PlanModel::addNucs() {
    for (std::size_t yard = 0; yard < problem_.yards.size(); ++yard) {
        if (!problem_.yards[yard].isBound) continue;
        const auto& nucs = problem_.yards[yard].nucs;
        for (std::int32_t day = 0; day < problem_.horizon; ++day) {
            LinearProgram::Row row;
            row.upper = nucs[static_cast<std::size_t>(day)];
            bool begins = day > 0 && nucs[static_cast<std::size_t>(day)] <
                                         nucs[static_cast<std::size_t>(day) - 1];
            for (std::size_t i = 0; i < options_.size(); ++i) {
                const auto& option = problem_.options[i];
                if (day < option.cellsDay || day > option.lastHeld) continue;
                for (std::size_t y = 0; y < option.yards.size(); ++y)
                    if (option.yards[y] == yard) {
                        row.terms.push_back({options_[i].byYard[y], 1});
                        begins = begins || option.cellsDay == day;
                    }
            }
            if (begins && !row.terms.empty()) program_.addRow(std::move(row));
        }
    }
}

}  // namespace tenthday
