#include "planning/plan_check.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "planning/whole_plan.h"

namespace tenthday {
namespace {

constexpr double kSlack = 1e-4;

std::string on(std::int32_t day) { return " on day " + std::to_string(day); }

class Check {
public:
    Check(const PlanProblem& problem, const WholePlan& plan) : problem_(problem), plan_(plan) {}

    std::vector<std::string> run() {
        for (const auto& batch : plan_) {
            bars(batch);
            cells(batch);
        }
        builders();
        days();
        hours();
        nucs();
        return std::move(wrong_);
    }

private:
    [[nodiscard]] const PlanProblem::Option& optionOf(const WholeBatch& batch) const {
        return problem_.options[batch.option];
    }
    [[nodiscard]] const PlanProblem::PoolUse* useOf(const WholeBatch& batch, std::size_t step,
                                                    std::size_t pool) const {
        for (const auto& use : optionOf(batch).steps[step])
            if (use.pool == pool) return &use;
        return nullptr;
    }

    void bars(const WholeBatch& batch) {
        const auto& option = optionOf(batch);
        if (batch.bars.empty()) wrong_.push_back("a batch without a bar" + on(option.day));
        for (const auto& bar : batch.bars) {
            if (bar.grafts < 1) wrong_.push_back("a bar without grafts" + on(option.day));
            if (std::find(option.lines.begin(), option.lines.end(), bar.line) == option.lines.end())
                wrong_.push_back("no breeder queen of the line" + on(option.day));
            if (bar.pools.size() != option.steps.size() || bar.slots.size() != bar.pools.size()) {
                wrong_.push_back("a step without a builder" + on(option.day));
                continue;
            }
            for (std::size_t step = 0; step < bar.pools.size(); ++step)
                if (useOf(batch, step, bar.pools[step]) == nullptr)
                    wrong_.push_back("a builder that does not serve" + on(option.day));
        }
    }

    void cells(const WholeBatch& batch) {
        const auto& option = optionOf(batch);
        double inNucs = 0;
        for (std::size_t yard = 0; yard < batch.nucCells.size(); ++yard) {
            const double cells = batch.nucCells[yard];
            if (cells < -kSlack) wrong_.push_back("cells below nothing" + on(option.cellsDay));
            const bool serves =
                std::find(option.yards.begin(), option.yards.end(), yard) != option.yards.end();
            if (cells > kSlack && !serves)
                wrong_.push_back("a yard without drones" + on(option.cellsDay));
            inNucs += cells;
        }
        const auto elsewhere = soldCells(problem_, batch) + cagedCells(problem_, batch);
        // Whole cells of a batch are its ripe ones rounded.
        if (inNucs + elsewhere > std::round(ripeOf(problem_, batch)) + 0.5 + kSlack)
            wrong_.push_back("more cells than get ripe" + on(option.cellsDay));
        for (const auto& line : batch.toOrders)
            for (std::size_t k = 0; k < line.size(); ++k)
                if (line[k] > kSlack && !servesCells(option, problem_.demands[k]))
                    wrong_.push_back("cells for an order that is not due" + on(option.cellsDay));
    }

    /// Each builder by itself: what it holds, and from when to when.
    void builders() {
        struct Stay {
            std::int32_t from;
            std::int32_t until;
        };
        std::map<std::pair<std::size_t, std::int32_t>, std::vector<Stay>> stays;
        for (const auto& batch : plan_) {
            std::map<std::tuple<std::size_t, std::size_t, std::int32_t>, std::int32_t> held;
            for (const auto& bar : batch.bars)
                for (std::size_t step = 0; step < bar.pools.size(); ++step)
                    held[{step, bar.pools[step], bar.slots[step]}] += bar.grafts;
            for (const auto& [place, grafts] : held) {
                const auto& [step, pool, slot] = place;
                const auto* use = useOf(batch, step, pool);
                if (use == nullptr) continue;
                if (grafts > use->room) wrong_.push_back("an overfull builder" + on(use->from));
                if (use->from <= use->until) stays[{pool, slot}].push_back({use->from, use->until});
            }
        }
        std::map<std::pair<std::size_t, std::int32_t>, std::int32_t> busy;  // pool, day
        for (auto& [builder, all] : stays) {
            std::sort(all.begin(), all.end(),
                      [](const Stay& a, const Stay& b) { return a.from < b.from; });
            for (std::size_t i = 1; i < all.size(); ++i)
                if (all[i].from <= all[i - 1].until)
                    wrong_.push_back("a builder with two batches" + on(all[i].from));
            for (const auto& stay : all)
                for (auto day = stay.from; day <= stay.until; ++day) ++busy[{builder.first, day}];
        }
        for (const auto& [at, count] : busy)
            if (count > problem_.pools[at.first].standing[static_cast<std::size_t>(at.second)])
                wrong_.push_back("more builders than there are" + on(at.second));
    }

    void days() {
        std::map<std::int32_t, std::int32_t> grafts;
        for (const auto& batch : plan_) grafts[optionOf(batch).day] += graftsOf(batch);
        if (!problem_.mostGraftsADay) return;
        for (const auto& [day, count] : grafts)
            if (count > *problem_.mostGraftsADay)
                wrong_.push_back("more grafts than wanted" + on(day));
    }

    void hours() {
        if (!problem_.hours) return;
        for (std::int32_t day = 0; day < problem_.horizon; ++day) {
            const double minutes = minutesOn(problem_, plan_, day);
            const auto left = problem_.hours->left[static_cast<std::size_t>(day)];
            if (minutes > kSlack && minutes > std::max(left, 0) + kSlack)
                wrong_.push_back("more work than hours" + on(day));
        }
    }

    void nucs() {
        for (std::size_t yard = 0; yard < problem_.yards.size(); ++yard) {
            if (!problem_.yards[yard].isBound) continue;
            for (std::int32_t day = 0; day < problem_.horizon; ++day) {
                double held = 0;
                for (const auto& batch : plan_)
                    if (optionOf(batch).cellsDay <= day && day <= optionOf(batch).lastHeld)
                        held += batch.nucCells[yard];
                if (held > problem_.yards[yard].nucs[static_cast<std::size_t>(day)] + kSlack)
                    wrong_.push_back("more cells than nucs" + on(day));
            }
        }
    }

    const PlanProblem& problem_;
    const WholePlan& plan_;
    std::vector<std::string> wrong_;
};

/// What is there of one line from a day on.
struct Stock {
    std::size_t line;
    bool proven;
    std::int32_t day;
    double count;
};

std::vector<Stock> stockOf(const PlanProblem& problem, const WholePlan& plan) {
    std::vector<Stock> stock;
    for (const auto& source : problem.sources)
        stock.push_back({source.line, source.proven, source.day, source.count});
    for (const auto& batch : plan) {
        const auto& option = problem.options[batch.option];
        const double ripe = ripeOf(problem, batch);
        const double inNucs = placedOf(batch);
        for (std::size_t line = 0; line < problem.lines && ripe > 0; ++line) {
            const double cells = std::min(nucCellsOf(problem, batch, line), inNucs);
            stock.push_back(
                {line, problem.provenQueens, option.ready, cells * option.queensPerCell});
        }
    }
    std::stable_sort(stock.begin(), stock.end(),
                     [](const Stock& a, const Stock& b) { return a.day < b.day; });
    return stock;
}

}  // namespace

std::vector<std::string> whatIsWrong(const PlanProblem& problem, const WholePlan& plan) {
    return Check(problem, plan).run();
}

std::vector<double> lackingBy(const PlanProblem& problem, const WholePlan& plan) {
    std::vector<double> lacking(problem.demands.size());
    auto stock = stockOf(problem, plan);
    for (const bool special : {true, false})
        for (std::size_t k = 0; k < lacking.size(); ++k) {
            const auto& demand = problem.demands[k];
            if (demand.wants != PlanProblem::Wants::Queens) continue;
            if ((demand.line || demand.proven) != special) continue;
            double left = demand.wanted;
            for (auto at = stock.rbegin(); at != stock.rend(); ++at) {  // the last that do, first
                auto& part = *at;
                if (part.day > demand.due || !fits(demand, part.line, part.proven)) continue;
                const double taken = std::min(part.count, left);
                part.count -= taken;
                left -= taken;
            }
            lacking[k] = left;
        }
    for (std::size_t k = 0; k < lacking.size(); ++k) {
        const auto& demand = problem.demands[k];
        if (demand.wants == PlanProblem::Wants::Queens) continue;
        lacking[k] = demand.wanted;
        for (const auto& batch : plan)
            for (const auto& line : batch.toOrders) lacking[k] -= line[k];
        lacking[k] = std::max(lacking[k], 0.0);
    }
    return lacking;
}

}  // namespace tenthday
