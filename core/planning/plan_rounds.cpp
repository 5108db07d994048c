#include "planning/plan_rounds.h"

#include <algorithm>
#include <functional>

#include "planning/plan_check.h"
#include "planning/plan_hours.h"
#include "planning/plan_margins.h"
#include "planning/whole_plan.h"

namespace tenthday {
namespace {

using Wants = PlanProblem::Wants;

/// Of each kind: with cuts, and with raised margins.
constexpr std::int32_t kMostRounds = 20;

const OrderOutlook* standingOf(const std::vector<OrderOutlook>& orders, Id<Order> id) {
    for (const auto& order : orders)
        if (order.order->id == id) return &order;
    return nullptr;
}

/// Batches of a plan whose queens an order can have.
std::size_t batchesFor(const PlanProblem& problem, const WholePlan& plan, std::size_t demand) {
    return static_cast<std::size_t>(
        std::count_if(plan.begin(), plan.end(), [&](const WholeBatch& batch) {
            return problem.options[batch.option].ready <= problem.demands[demand].due;
        }));
}

PlanCut cutFor(const PlanProblem& problem, const WholePlan& plan, std::size_t demand) {
    PlanCut cut{demand, {}};
    for (const auto& batch : plan) {
        if (problem.options[batch.option].ready > problem.demands[demand].due) continue;
        auto& cells = cut.cells[batch.option];
        for (std::size_t line = 0; line < problem.lines; ++line)
            cells.push_back(nucCellsOf(problem, batch, line));
    }
    return cut;
}

/// Whatever a cut forbids, another forbids too.
bool says(const PlanCut& cut, const PlanCut& other) {
    if (cut.demand != other.demand) return false;
    return std::all_of(other.cells.begin(), other.cells.end(), [&](const auto& used) {
        const auto here = cut.cells.find(used.first);
        return here != cut.cells.end() &&
               std::equal(used.second.begin(), used.second.end(), here->second.begin(),
                          here->second.end(), std::less_equal<>());
    });
}

/// What is expected beyond what a demand and all before it want.
double beyond(const PlanProblem& problem, const WholePlan& plan, std::size_t at) {
    const auto& demand = problem.demands[at];
    double sum = 0;
    for (std::size_t k = 0; k <= at; ++k)
        if (problem.demands[k].wants == Wants::Queens) sum -= problem.demands[k].wanted;
    for (const auto& source : problem.sources)
        if (source.day <= demand.due) sum += source.count;
    for (const auto& batch : plan) {
        const auto& option = problem.options[batch.option];
        if (option.ready > demand.due) continue;
        for (std::size_t line = 0; line < problem.lines; ++line)
            sum += nucCellsOf(problem, batch, line) * option.queensPerCell;
    }
    return sum;
}

/// How far a plan is from what is asked; the less the better.
struct Worth {
    std::int64_t tooLong = 0;  ///< minutes
    std::int64_t lacking = 0;  ///< by weight
    double doubt = 0;          ///< chance that lacks
    friend auto operator<=>(const Worth&, const Worth&) = default;
};

class Rounds {
public:
    Rounds(const Snapshot& snapshot, const PlanSite& site, const Solver& solver, PlanBudget& budget,
           bool onlyWhole)
        : snapshot_(snapshot),
          site_(site),
          problem_(site.problem),
          solver_(solver),
          budget_(budget) {
        asked_.margins = leastMargins(problem_);
        asked_.own = leastOwnMargins(problem_);
        asked_.onlyWhole = onlyWhole;
    }

    Result<PlanRounds> run() {
        if (asked_.onlyWhole && isHopeless()) return PlanRounds{};
        bool cutting = true;
        for (std::int32_t round = 1, ofKind = 1; ofKind <= kMostRounds; ++round, ++ofKind) {
            auto next = planned(round);
            if (!next) return next.error();
            now_ = std::move(next.value());
            // Later rounds ask for more, and so for no fewer days.
            if (now_.solution.weighed == 0) asked_.leastDays = now_.solution.leastDays;
            // Stopped in a later round: the best plan before is the better answer.
            if (round > 1 && now_.solution.isStopped) {
                best_.solution.isStopped = true;
                break;
            }
            if (cutting && !hangsOnWeather(problem_)) keepFloor(now_.solution);
            keepBest(round);
            if (now_.solution.isStopped) break;
            if (shortenDays()) continue;
            if (now_.isMet) break;
            if (asked_.onlyWhole && now_.solution.weighed > 0) break;
            if (cutting && now_.solution.isProven && ofKind < kMostRounds && cut()) continue;
            if (cutting) {
                cutting = false;
                ofKind = 0;
                floorCuts_ = std::move(asked_.cuts);
                asked_.cuts.clear();  // margins ask for more than they do
                asked_.own.clear();
            }
            if (!raise()) break;
        }
        if (cutting) floorCuts_ = std::move(asked_.cuts);
        best_.rounds = now_.rounds;
        if (!asked_.onlyWhole && hangsOnWeather(problem_)) seekFloor();
        best_.floor = floor_;
        return std::move(best_);
    }

private:
    Result<PlanRounds> planned(std::int32_t round) {
        PlanRounds next;
        next.rounds = round;
        next.solution = solvePlan(problem_, asked_, solver_, budget_, round);
        plan_ = wholePlan(problem_, next.solution.loads);
        if (const auto wrong = whatIsWrong(problem_, plan_); !wrong.empty())
            return Error{"the plan found does not hold: " + wrong.front()};
        next.batches = proposalsOf(snapshot_, site_, plan_);
        budget_.tell(PlanPhase::Sureness, round);
        auto season = seasonWith(snapshot_, next.batches, memo_);
        if (!season) return season.error();
        next.season = std::move(season.value());
        if (site_.mostMinutesADay)
            next.season.longDays =
                longDays(*next.season.outlook, next.batches, *site_.mostMinutesADay);
        next.isMet = unmetOf(next).empty();
        return next;
    }

    /// Demands that are not as sure as they must be.
    [[nodiscard]] std::vector<std::size_t> unmetOf(const PlanRounds& rounds) const {
        std::vector<std::size_t> unmet;
        for (std::size_t k = 0; k < site_.orders.size(); ++k) {
            const auto* order = standingOf(rounds.season.orders, site_.orders[k]);
            if (order != nullptr && order->state != OrderState::Met) unmet.push_back(k);
        }
        return unmet;
    }
    [[nodiscard]] const OrderOutlook& standing(std::size_t demand) const {
        return *standingOf(now_.season.orders, site_.orders[demand]);
    }
    /// More of it is to be had, as far as the solver has been asked.
    [[nodiscard]] bool canHaveMore(std::size_t demand) const {
        const auto& lacks = now_.solution.shortOf;
        return demand < lacks.size() && lacks[demand] == 0;
    }

    /// Where hours a day are limited they are reckoned on the safe side, and days that were too
    /// long have less left: a plan by hand may fit more, so nothing is a floor.
    void keepFloor(const PlanSolution& solution) {
        if (!solution.isShortProven || solution.isStopped) return;
        floor_ = {true, 0, 0, 0};
        if (!site_.mostMinutesADay)
            floor_ = {true, solution.weighed, solution.leastDays, solution.bound};
    }

    /// What no plan does without in the best season.
    [[nodiscard]] static PlanAsked leastOf(const PlanProblem& best) {
        PlanAsked asked;
        asked.margins = leastMargins(best);
        asked.own = leastOwnMargins(best);
        return asked;
    }

    /// No season's weather makes it enough.
    [[nodiscard]] bool isHopeless() const {
        const auto best = inBestSeason(site_.problem);
        return staysShort(best, leastOf(best), solver_);
    }

    /// The problem of the mean season is not the least that is asked of a plan; that of the best
    /// one is. What cuts forbid is told by the exact chances and holds there too. The plan stands
    /// already: of this search nothing is told.
    void seekFloor() {
        if (best_.solution.isStopped) return;
        if (site_.mostMinutesADay) return keepFloor(best_.solution);
        const auto best = inBestSeason(site_.problem);
        auto asked = leastOf(best);
        asked.cuts = floorCuts_;
        const PlanControl quiet{{}, budget_.control().cancel, budget_.left()};
        PlanBudget budget(quiet);
        keepFloor(solvePlan(best, asked, solver_, budget, best_.rounds));
    }

    /// Of days that take too long with all their tasks so much less is left. False: none does.
    bool shortenDays() {
        if (!site_.mostMinutesADay) return false;
        bool shorter = false;
        for (const auto& day : now_.season.longDays) {
            auto& left = problem_.hours->left[static_cast<std::size_t>(site_.index(day.day))];
            if (left <= 0) continue;
            left -= day.minutes - *site_.mostMinutesADay;
            shorter = true;
        }
        return shorter;
    }

    void keepBest(std::int32_t round) {
        Worth worth;
        for (const auto& day : now_.season.longDays)
            worth.tooLong += day.minutes - *site_.mostMinutesADay;
        for (const auto k : unmetOf(now_)) {
            const auto& order = standing(k);
            worth.lacking += std::int64_t{problem_.demands[k].weight} * order.lacking;
            worth.doubt += problem_.demands[k].sure - order.chance;
        }
        if (round > 1 && !(worth < worth_)) return;
        worth_ = worth;
        best_ = now_;
    }

    /// False: cuts do not settle it.
    bool cut() {
        std::vector<PlanCut> cuts;
        for (const auto k : unmetOf(now_)) {
            if (!canHaveMore(k)) continue;
            if (problem_.demands[k].wants != Wants::Queens || batchesFor(problem_, plan_, k) > 1)
                return false;
            cuts.push_back(cutFor(problem_, plan_, k));
        }
        for (auto& cut : cuts) {
            std::erase_if(asked_.cuts, [&](const PlanCut& earlier) { return says(cut, earlier); });
            asked_.cuts.push_back(std::move(cut));
        }
        return !cuts.empty();
    }

    /// False: there is no more to be had of any that is not sure enough.
    bool raise() {
        bool raised = false;
        for (const auto k : unmetOf(now_)) {
            if (!canHaveMore(k)) continue;
            const auto& demand = problem_.demands[k];
            const double lacking = std::max(standing(k).lacking, 1);
            auto& margin = asked_.margins[k];
            margin += lacking;
            // What is there for others' sake binds nothing.
            if (demand.wants == Wants::Queens && !demand.line && !demand.proven)
                margin = std::max(margin, beyond(problem_, plan_, k) + lacking);
            raised = true;
        }
        return raised;
    }

    const Snapshot& snapshot_;
    const PlanSite& site_;
    PlanProblem problem_;  ///< the site's; days get shorter
    const Solver& solver_;
    PlanBudget& budget_;
    PlanAsked asked_;
    OutlookMemo memo_;
    WholePlan plan_;  ///< of now_
    PlanRounds now_;
    PlanRounds best_;
    PlanFloor floor_;
    std::vector<PlanCut> floorCuts_;
    Worth worth_;  ///< of best_
};

}  // namespace

Result<PlanRounds> planInRounds(const Snapshot& snapshot, const PlanSite& site,
                                const Solver& solver, PlanBudget& budget, bool onlyWhole) {
    return Rounds(snapshot, site, solver, budget, onlyWhole).run();
}

}  // namespace tenthday
