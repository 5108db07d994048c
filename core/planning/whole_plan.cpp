#include "planning/whole_plan.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tenthday {
namespace {

constexpr double kSlack = 1e-6;

/// Whole numbers with this sum, near the parts, none above its most: largest remainder.
std::vector<std::int32_t> wholeParts(const std::vector<double>& parts,
                                     const std::vector<std::int32_t>& most, std::int32_t sum) {
    std::vector<std::int32_t> whole(parts.size());
    for (std::size_t i = 0; i < parts.size(); ++i)
        whole[i] = std::min(most[i], static_cast<std::int32_t>(std::floor(parts[i] + kSlack)));
    auto left = sum - std::accumulate(whole.begin(), whole.end(), 0);
    while (left != 0) {
        std::optional<std::size_t> best;
        const auto lacks = [&](std::size_t i) {
            return (parts[i] - whole[i]) * (left > 0 ? 1 : -1);
        };
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const bool can = left > 0 ? whole[i] < most[i] : whole[i] > 0;
            if (can && (!best || lacks(i) > lacks(*best) + kSlack)) best = i;
        }
        if (!best) break;
        whole[*best] += left > 0 ? 1 : -1;
        left += left > 0 ? -1 : 1;
    }
    return whole;
}

/// A stretch of a batch's grafts that is alike in one regard.
struct Stretch {
    std::size_t what = 0;    ///< line or pool
    std::int32_t which = 0;  ///< builder of the pool, as counted within the batch
    std::int32_t grafts = 0;
};

/// The builders of one step with their grafts, as even as their pools allow.
std::vector<Stretch> buildersOf(const PlanProblem::Option& option, std::size_t step,
                                const PlanModel::Load& load, std::int32_t total) {
    std::vector<double> parts;
    std::vector<std::int32_t> most;
    for (std::size_t p = 0; p < option.steps[step].size(); ++p) {
        const auto& use = option.steps[step][p];
        double grafts = 0;
        if (step == 0) {
            for (const auto& bar : load.first)
                if (bar.pool == use.pool) grafts += bar.grafts;
        } else if (const auto found = load.later[step - 1].find(use.pool);
                   found != load.later[step - 1].end()) {
            grafts = found->second;
        }
        parts.push_back(grafts);
        most.push_back(use.room * load.taken[step][p]);
    }
    const auto whole = wholeParts(parts, most, total);
    std::vector<Stretch> stretches;
    for (std::size_t p = 0; p < whole.size(); ++p) {
        const auto& use = option.steps[step][p];
        // No more builders than are needed for what is really there.
        const auto builders = (whole[p] + use.room - 1) / std::max(use.room, 1);
        for (std::int32_t b = 0; b < builders; ++b)
            stretches.push_back({use.pool, b, (whole[p] + builders - 1 - b) / builders});
    }
    return stretches;
}

std::int32_t roomOf(const PlanProblem::Option& option, const PlanModel::Load& load,
                    std::size_t step) {
    std::int32_t room = 0;
    for (std::size_t p = 0; p < option.steps[step].size(); ++p)
        room += option.steps[step][p].room * load.taken[step][p];
    return room;
}

/// The next stretch with anything left.
std::size_t skipEmpty(const std::vector<Stretch>& stretches, std::size_t at) {
    while (at < stretches.size() && stretches[at].grafts == 0) ++at;
    return at;
}

/// Bars: stretches that are alike in line and in the builder of each step.
std::vector<WholeBatch::Bar> barsOf(std::vector<std::vector<Stretch>> layers) {
    std::vector<WholeBatch::Bar> bars;
    std::vector<std::size_t> at(layers.size());
    while (true) {
        auto least = std::numeric_limits<std::int32_t>::max();
        for (std::size_t i = 0; i < layers.size(); ++i) {
            at[i] = skipEmpty(layers[i], at[i]);
            if (at[i] == layers[i].size()) return bars;
            least = std::min(least, layers[i][at[i]].grafts);
        }
        WholeBatch::Bar bar;
        bar.line = layers.front()[at.front()].what;
        bar.grafts = least;
        for (std::size_t i = 1; i < layers.size(); ++i) {
            bar.pools.push_back(layers[i][at[i]].what);
            bar.slots.push_back(layers[i][at[i]].which);
        }
        bars.push_back(std::move(bar));
        for (std::size_t i = 0; i < layers.size(); ++i) layers[i][at[i]].grafts -= least;
    }
}

WholeBatch wholeBatch(const PlanProblem& problem, const PlanModel::Load& load) {
    const auto& option = problem.options[load.option];
    double grafts = 0;
    std::vector<double> byLine(problem.lines);
    for (const auto& bar : load.first) {
        grafts += bar.grafts;
        byLine[bar.line] += bar.grafts;
    }
    auto total = static_cast<std::int32_t>(std::ceil(grafts - 1e-4));
    for (std::size_t step = 0; step < option.steps.size(); ++step)
        total = std::min(total, roomOf(option, load, step));
    if (problem.mostGraftsADay) total = std::min(total, *problem.mostGraftsADay);
    const auto lines = wholeParts(byLine, std::vector<std::int32_t>(byLine.size(), total), total);
    std::vector<std::vector<Stretch>> layers(1);
    for (std::size_t l = 0; l < lines.size(); ++l) layers[0].push_back({l, 0, lines[l]});
    for (std::size_t step = 0; step < option.steps.size(); ++step)
        layers.push_back(buildersOf(option, step, load, total));
    WholeBatch batch;
    batch.option = load.option;
    batch.bars = barsOf(std::move(layers));
    batch.nucCells = load.nucCells;
    batch.toOrders = load.toOrders;
    return batch;
}

const PlanProblem::PoolUse* useOf(const PlanProblem::Option& option, std::size_t step,
                                  std::size_t pool) {
    for (const auto& use : option.steps[step])
        if (use.pool == pool) return &use;
    return nullptr;
}

/// Gives each stay a builder of its pool that is free: the first, by first day.
class Builders {
public:
    Builders(const PlanProblem& problem, WholePlan& plan) : problem_(problem), plan_(plan) {}

    void give() {
        for (std::size_t b = 0; b < plan_.size(); ++b) collect(b);
        std::stable_sort(stays_.begin(), stays_.end(), [](const Stay& a, const Stay& other) {
            return a.use->from < other.use->from;
        });
        std::vector<std::vector<std::int32_t>> freeFrom(problem_.pools.size());
        for (const auto& stay : stays_) {
            auto& pool = freeFrom[stay.use->pool];
            std::size_t slot = 0;
            while (slot < pool.size() && pool[slot] > stay.use->from) ++slot;
            if (slot == pool.size()) pool.push_back(0);
            pool[slot] = stay.use->until + 1;
            for (auto& [bar, step] : stay.bars)
                bar->slots[step] = -1 - static_cast<std::int32_t>(slot);  // given: marked
        }
        for (auto& batch : plan_)
            for (auto& bar : batch.bars)
                for (auto& slot : bar.slots)
                    if (slot < 0) slot = -1 - slot;
    }

private:
    struct Stay {
        const PlanProblem::PoolUse* use;
        std::int32_t which;
        std::size_t batch;
        std::vector<std::pair<WholeBatch::Bar*, std::size_t>> bars;
    };

    void collect(std::size_t at) {
        auto& batch = plan_[at];
        for (auto& bar : batch.bars)
            for (std::size_t step = 0; step < bar.pools.size(); ++step) {
                const auto* use = useOf(problem_.options[batch.option], step, bar.pools[step]);
                if (use->from > use->until) continue;
                const auto same = std::find_if(stays_.begin(), stays_.end(), [&](const Stay& stay) {
                    return stay.batch == at && stay.use == use && stay.which == bar.slots[step];
                });
                if (same == stays_.end())
                    stays_.push_back({use, bar.slots[step], at, {{&bar, step}}});
                else
                    same->bars.emplace_back(&bar, step);
            }
    }

    const PlanProblem& problem_;
    WholePlan& plan_;
    std::vector<Stay> stays_;
};

/// One graft less, of the largest bar.
void dropGraft(WholeBatch& batch) {
    const auto largest =
        std::max_element(batch.bars.begin(), batch.bars.end(),
                         [](const auto& a, const auto& b) { return a.grafts < b.grafts; });
    if (--largest->grafts == 0) batch.bars.erase(largest);
}

double nucCellsOn(const PlanProblem& problem, const WholePlan& plan, std::size_t yard,
                  std::int32_t day) {
    double cells = 0;
    for (const auto& batch : plan) {
        const auto& option = problem.options[batch.option];
        if (option.cellsDay <= day && day <= option.lastHeld) cells += batch.nucCells[yard];
    }
    return cells;
}

/// Whole cells by yard class, near what the solver said.
void roundNucCells(const PlanProblem& problem, WholeBatch& batch) {
    const auto total = std::max(wholeNucCells(problem, batch), 0);
    std::vector<std::int32_t> most(batch.nucCells.size());
    for (const auto yard : problem.options[batch.option].yards) most[yard] = total;
    const auto whole = wholeParts(batch.nucCells, most, total);
    batch.nucCells.assign(whole.begin(), whole.end());
}

/// Takes grafts back where whole cells lack nucs, of the batch that was rounded up most.
void fitNucs(const PlanProblem& problem, WholePlan& plan, std::vector<std::vector<double>> asked) {
    for (std::size_t yard = 0; yard < problem.yards.size(); ++yard) {
        if (!problem.yards[yard].isBound) continue;
        for (std::int32_t day = 0; day < problem.horizon; ++day)
            while (nucCellsOn(problem, plan, yard, day) >
                   problem.yards[yard].nucs[static_cast<std::size_t>(day)]) {
                std::optional<std::size_t> worst;
                const auto over = [&](std::size_t b) {
                    return plan[b].nucCells[yard] - asked[b][yard];
                };
                for (std::size_t b = 0; b < plan.size(); ++b) {
                    const auto& option = problem.options[plan[b].option];
                    if (option.cellsDay > day || day > option.lastHeld ||
                        plan[b].nucCells[yard] < 1)
                        continue;
                    if (!worst || over(b) > over(*worst) + kSlack) worst = b;
                }
                if (!worst) break;
                auto& batch = plan[*worst];
                const auto before = wholeNucCells(problem, batch);
                while (!batch.bars.empty() && wholeNucCells(problem, batch) >= before)
                    dropGraft(batch);
                batch.nucCells[yard] -= 1;
            }
    }
}

std::int32_t wholeGiven(const PlanProblem& problem, const WholeBatch& batch,
                        PlanProblem::Wants wants) {
    double cells = 0;
    const auto& option = problem.options[batch.option];
    for (const auto& line : batch.toOrders)
        for (std::size_t k = 0; k < line.size(); ++k)
            if (problem.demands[k].wants == wants)
                cells += wants == PlanProblem::Wants::Virgins ? line[k] / option.virginsPerCell
                                                              : line[k];
    return static_cast<std::int32_t>(std::ceil(cells - 1e-4));
}

}  // namespace

std::int32_t soldCells(const PlanProblem& problem, const WholeBatch& batch) {
    return wholeGiven(problem, batch, PlanProblem::Wants::RipeCells);
}

std::int32_t cagedCells(const PlanProblem& problem, const WholeBatch& batch) {
    return wholeGiven(problem, batch, PlanProblem::Wants::Virgins);
}

std::int32_t wholeNucCells(const PlanProblem& problem, const WholeBatch& batch) {
    return static_cast<std::int32_t>(std::lround(ripeOf(problem, batch))) -
           soldCells(problem, batch) - cagedCells(problem, batch);
}

WholePlan wholePlan(const PlanProblem& problem, const std::vector<PlanModel::Load>& loads) {
    WholePlan plan;
    std::vector<std::vector<double>> asked;
    for (const auto& load : loads) {
        auto batch = wholeBatch(problem, load);
        if (batch.bars.empty()) continue;
        roundNucCells(problem, batch);
        asked.push_back(load.nucCells);
        plan.push_back(std::move(batch));
    }
    fitNucs(problem, plan, std::move(asked));
    std::erase_if(plan, [](const WholeBatch& batch) { return batch.bars.empty(); });
    Builders(problem, plan).give();
    return plan;
}

}  // namespace tenthday
