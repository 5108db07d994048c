#include "planning/plan_margins.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

using Wants = PlanProblem::Wants;

/// Good ones of a piece, at best: queens of a cell in a nuc, cells or virgins of a graft.
double bestShare(const PlanProblem& problem, const PlanProblem::Demand& demand) {
    double best = 0;
    for (const auto& option : problem.options) {
        if (demand.wants == Wants::Queens) {
            if (option.ready <= demand.due) best = std::max(best, option.queensPerCell);
            continue;
        }
        if (!servesCells(option, demand)) continue;
        for (const auto& use : option.steps.front())
            best = std::max(
                best, use.ripe * (demand.wants == Wants::Virgins ? option.virginsPerCell : 1.0));
    }
    return best;
}

/// Wanted by the demand and, of queens, by all that come before it.
/// @param own  only by those whose queens fit it
double wantedBy(const PlanProblem& problem, std::size_t at, bool own) {
    const auto& demand = problem.demands[at];
    if (demand.wants != Wants::Queens) return demand.wanted;
    double wanted = 0;
    for (std::size_t k = 0; k <= at; ++k) {
        const auto& other = problem.demands[k];
        if (other.wants == Wants::Queens && (!own || includes(demand, other)))
            wanted += other.wanted;
    }
    return wanted;
}

/// Of that what is there without new batches.
double thereFor(const PlanProblem& problem, const PlanProblem::Demand& demand, bool own) {
    if (demand.wants != Wants::Queens) return 0;
    double there = 0;
    for (const auto& source : problem.sources)
        if (source.day <= demand.due && (!own || fits(demand, source.line, source.proven)))
            there += source.count;
    return there;
}

double leastMargin(const PlanProblem& problem, std::size_t at, bool own) {
    const auto& demand = problem.demands[at];
    const double all = wantedBy(problem, at, own);
    const double wanted = all - thereFor(problem, demand, own);
    if (demand.isMet || demand.wanted < 1 || wanted < 1) return 0;
    if (demand.sure < kOften) return (demand.sure - 1) * all;
    const double share = bestShare(problem, demand);
    if (share <= 0 || share >= 1 || demand.sure >= 1) return 0;
    const auto pieces = fewestPieces(static_cast<std::int32_t>(wanted), share, demand.sure);
    // Fewer than that many pieces never do; a plan's are no whole ones yet. Of very few wanted it
    // can be less than these: one cell that is good more often than not does for one queen.
    return (pieces - 1) * share - wanted;
}

bool isSpecial(const PlanProblem::Demand& demand) {
    return demand.wants == Wants::Queens && (demand.line || demand.proven);
}

}  // namespace

std::int32_t fewestPieces(std::int32_t wanted, double share, double sure) {
    // The chance that the last good one wanted comes with the n-th piece, summed over n.
    auto chance = std::pow(static_cast<long double>(share), wanted);
    long double sum = chance;
    std::int32_t pieces = wanted;
    while (sum < sure) {
        chance *= (1 - share) * pieces / (pieces - wanted + 1);
        sum += chance;
        ++pieces;
        // Beyond all good luck the rest of the sum is rounding.
        if (chance < 1e-15L && pieces * share > wanted) break;
    }
    return pieces;
}

std::vector<double> leastMargins(const PlanProblem& problem) {
    std::vector<double> margins;
    for (std::size_t k = 0; k < problem.demands.size(); ++k)
        margins.push_back(leastMargin(problem, k, false));
    return margins;
}

std::vector<double> leastOwnMargins(const PlanProblem& problem) {
    std::vector<double> margins;
    for (std::size_t k = 0; k < problem.demands.size(); ++k)
        margins.push_back(isSpecial(problem.demands[k]) ? leastMargin(problem, k, true) : 0);
    return margins;
}

}  // namespace tenthday
