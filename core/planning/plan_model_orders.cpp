// What orders ask of a plan: sums by day, which queens go where, cells and virgins.
#include <algorithm>
#include <cmath>

#include "planning/plan_model.h"

namespace tenthday {
namespace {

using Term = LinearProgram::Term;

/// All that a demand can lack: of queens all that was wanted before it, too.
/// @param margin  what is to be there beyond it
double mostShort(const PlanProblem& problem, double margin, std::size_t at) {
    if (problem.demands[at].isMet) return 0;
    double most = problem.demands[at].wanted;
    if (problem.demands[at].wants == PlanProblem::Wants::Queens)
        for (std::size_t k = 0; k < at; ++k)
            if (problem.demands[k].wants == PlanProblem::Wants::Queens)
                most += problem.demands[k].wanted;
    return most + std::ceil(std::max(margin, 0.0));
}

/// Not any queen does for it.
bool asksForFitting(const PlanProblem::Demand& demand) {
    return demand.wants == PlanProblem::Wants::Queens && !demand.isMet &&
           (demand.line || demand.proven);
}

}  // namespace

/// What is there by the day is enough for a demand and for all that come before it, those short
/// among them; so is what fits it for those that it fits.
void PlanModel::addDemands(const std::vector<double>& own) {
    own_.assign(problem_.demands.size(), 0);
    for (std::size_t k = 0; k < problem_.demands.size(); ++k) {
        if (asksForFitting(problem_.demands[k])) own_[k] = own.empty() ? ownMargin(k) : own[k];
        const double most = std::max(margins_[k], own_[k]);
        short_.push_back(program_.addColumn({0, mostShort(problem_, most, k), 0, true}));
    }
    for (std::size_t k = 0; k < problem_.demands.size(); ++k) {
        const auto& demand = problem_.demands[k];
        if (demand.isMet) continue;
        if (demand.wants != PlanProblem::Wants::Queens) {
            addCellDemand(k, margins_[k]);
            continue;
        }
        addSum(k, true, margins_[k]);
        if (asksForFitting(demand)) addSum(k, false, own_[k]);
    }
    addFlows();
}

double PlanModel::ownMargin(std::size_t at) const {
    const auto& demand = problem_.demands[at];
    double wanted = 0;
    double fitting = 0;
    for (std::size_t k = 0; k <= at; ++k) {
        const auto& other = problem_.demands[k];
        if (other.wants != PlanProblem::Wants::Queens) continue;
        wanted += other.wanted;
        if (includes(demand, other)) fitting += other.wanted;
    }
    // Numbers spread as their root: of fewer queens less beyond them is asked for.
    return wanted > 0 ? margins_[at] * std::sqrt(fitting / wanted) : margins_[at];
}

void PlanModel::addSum(std::size_t at, bool all, double margin) {
    const auto& demand = problem_.demands[at];
    const auto counts = [&](std::size_t line, bool proven) {
        return all || fits(demand, line, proven);
    };
    LinearProgram::Row row{0, kUnbounded, {{short_[at], 1}}};
    for (std::size_t k = 0; k <= at; ++k) {
        const auto& other = problem_.demands[k];
        if (other.wants == PlanProblem::Wants::Queens && (all || includes(demand, other)))
            row.lower += other.wanted;
    }
    row.lower += margin;
    for (const auto& source : problem_.sources)
        if (source.day <= demand.due && counts(source.line, source.proven))
            row.lower -= source.count;
    for (std::size_t i = 0; i < options_.size(); ++i) {
        const auto& option = problem_.options[i];
        if (option.ready > demand.due) continue;
        for (std::size_t l = 0; l < option.lines.size(); ++l)
            if (counts(option.lines[l], problem_.provenQueens))
                row.terms.push_back({options_[i].inNucs[l], option.queensPerCell});
    }
    if (row.lower > 0) program_.addRow(std::move(row));
}

/// The order is sure enough only where one of the batches gives more than it did, or there is a
/// batch on another day; else it is short.
void PlanModel::addCut(const PlanCut& cut) {
    const auto& demand = problem_.demands[cut.demand];
    LinearProgram::Row some{1, kUnbounded, {{short_[cut.demand], 1}}};
    std::map<std::int32_t, bool> used;  // graft days that could serve it
    for (std::size_t i = 0; i < options_.size(); ++i)
        if (problem_.options[i].ready <= demand.due)
            used[problem_.options[i].day] |= cut.cells.contains(i);
    for (std::size_t i = 0; i < options_.size(); ++i) {
        const auto& option = problem_.options[i];
        if (option.ready > demand.due || !used[option.day]) continue;
        const auto given = cut.cells.find(i);
        // One graft more, or one cell less for an order for cells.
        double more = 1;
        for (const auto& use : option.steps.front()) more = std::min(more, use.ripe);
        for (std::size_t l = 0; l < option.lines.size(); ++l) {
            const auto gives = program_.addColumn({0, 1, 0, true});
            const double had = given == cut.cells.end() ? 0 : given->second[option.lines[l]];
            program_.addRow(
                {0, kUnbounded, {{options_[i].inNucs[l], 1}, {gives, -(had + more / 2)}}});
            some.terms.push_back({gives, 1});
        }
    }
    for (const auto& [day, isUsed] : used)
        if (!isUsed) some.terms.push_back({days_.at(day), 1});
    program_.addRow(std::move(some));
}

/// Queens that are ready by the same due days go together; where no order may lie on one batch
/// alone, each graft day goes by itself.
std::size_t PlanModel::bucketOf(std::size_t at) const {
    const auto& option = problem_.options[at];
    if (problem_.notOnOneBatch) return dues_.size() + static_cast<std::size_t>(option.day);
    const auto due = std::lower_bound(dues_.begin(), dues_.end(), option.ready);
    return static_cast<std::size_t>(due - dues_.begin());
}

/// Which queens go to which order. Only with several lines, proven orders or none on one batch
/// alone does it add to the sums by day.
void PlanModel::addFlows() {
    using Key = std::tuple<std::size_t, std::size_t, bool>;  // bucket, line, proven
    struct Supply {
        std::vector<Term> terms;
        double given = 0;
        std::int32_t ready = 0;
        bool isNew = false;
    };
    const auto dueBucket = [&](std::int32_t day) {
        return static_cast<std::size_t>(std::lower_bound(dues_.begin(), dues_.end(), day) -
                                        dues_.begin());
    };
    std::map<Key, Supply> supplies;
    for (std::size_t i = 0; i < options_.size(); ++i) {
        const auto& option = problem_.options[i];
        for (std::size_t l = 0; l < option.lines.size(); ++l) {
            auto& supply = supplies[{bucketOf(i), option.lines[l], problem_.provenQueens}];
            supply.terms.push_back({options_[i].inNucs[l], -option.queensPerCell});
            supply.ready = std::max(supply.ready, option.ready);
            supply.isNew = true;
        }
    }
    for (const auto& source : problem_.sources) {
        const auto bucket = dueBucket(source.day);
        const auto key =
            problem_.notOnOneBatch ||
                    supplies.find({bucket, source.line, source.proven}) == supplies.end()
                ? Key{bucket + (problem_.notOnOneBatch ? 1000000 : 0), source.line, source.proven}
                : Key{bucket, source.line, source.proven};
        auto& supply = supplies[key];
        supply.given += source.count;
        supply.ready = std::max(supply.ready, source.day);
    }
    std::vector<std::vector<Term>> filled(problem_.demands.size());
    std::map<std::pair<std::size_t, std::size_t>, std::vector<Term>> ofDay;  // bucket, demand
    for (auto& [key, supply] : supplies) {
        LinearProgram::Row row{-kUnbounded, supply.given, supply.terms};
        for (std::size_t k = 0; k < problem_.demands.size(); ++k) {
            const auto& demand = problem_.demands[k];
            if (demand.wants != PlanProblem::Wants::Queens || supply.ready > demand.due ||
                !fits(demand, std::get<1>(key), std::get<2>(key)))
                continue;
            const auto column =
                program_.addColumn({0, static_cast<double>(demand.wanted), 0, false});
            row.terms.push_back({column, 1});
            filled[k].push_back({column, 1});
            if (supply.isNew) ofDay[{std::get<0>(key), k}].push_back({column, 1});
        }
        program_.addRow(std::move(row));
    }
    for (std::size_t k = 0; k < filled.size(); ++k) {
        const auto& demand = problem_.demands[k];
        if (demand.wants != PlanProblem::Wants::Queens || demand.isMet) continue;
        filled[k].push_back({short_[k], 1});
        const double wanted = demand.wanted + std::min({margins_[k], own_[k], 0.0});
        program_.addRow({wanted, kUnbounded, filled[k]});
    }
    if (!problem_.notOnOneBatch) return;
    for (auto& [key, terms] : ofDay)
        program_.addRow({-kUnbounded, mostOfOneBatch(problem_.demands[key.second]), terms});
}

/// Cells and virgins go on their days; in one piece all from one day.
void PlanModel::addCellDemand(std::size_t at, double margin) {
    const auto& demand = problem_.demands[at];
    std::map<std::int32_t, std::vector<Term>> byDay;
    for (std::size_t i = 0; i < options_.size(); ++i)
        for (const auto& given : options_[i].given)
            for (const auto& [k, column] : given)
                if (k == at)
                    byDay[demand.wants == PlanProblem::Wants::RipeCells
                              ? problem_.options[i].cellsDay
                              : 0]
                        .push_back({column, 1});
    LinearProgram::Row row{static_cast<double>(demand.wanted) + margin, kUnbounded, {}};
    row.terms.push_back({short_[at], 1});
    const bool choose = !demand.inParts && byDay.size() > 1;
    LinearProgram::Row one{-kUnbounded, 1, {}};
    for (auto& [day, terms] : byDay) {
        row.terms.insert(row.terms.end(), terms.begin(), terms.end());
        if (!choose) continue;
        one.terms.push_back({program_.addColumn({0, 1, 0, true}), 1});
        terms.push_back({one.terms.back().column, -(demand.wanted + std::max(margin, 0.0))});
        program_.addRow({-kUnbounded, 0, std::move(terms)});
    }
    if (choose) program_.addRow(std::move(one));
    program_.addRow(std::move(row));
}

}  // namespace tenthday
