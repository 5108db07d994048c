#include "losses/rate_grid.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace tenthday {
namespace {

constexpr double kSpreadReach = 3;  // standard deviations either way
constexpr double kUnlikely = 1e-12;
/// Below it batches differ by less than a hundredth of a percent: as good as not at all.
constexpr double kLeastCorrelation = 1e-8;

/// Sum of log(share + i widening) for i from..to-1.
double logRising(double share, double widening, std::int32_t from, std::int32_t to) {
    constexpr std::int32_t kShort = 24;  // a product of so many stays within a double
    if (widening <= 0) return (to - from) * std::log(share);
    if (to - from > kShort)
        return (to - from) * std::log(widening) + std::lgamma(share / widening + to) -
               std::lgamma(share / widening + from);
    double product = 1;
    for (auto i = from; i < to; ++i) product *= share + i * widening;
    return std::log(product);
}

WeightedGrid evenGrid(double low, double high, std::size_t cells) {
    WeightedGrid grid;
    const double width = (high - low) / static_cast<double>(cells);
    for (std::size_t i = 0; i <= cells; ++i)
        grid.edges.push_back(low + width * static_cast<double>(i));
    for (std::size_t i = 0; i < cells; ++i)
        grid.values.push_back((grid.edges[i] + grid.edges[i + 1]) / 2);
    grid.weights.assign(cells, 0);
    return grid;
}

void scaleToOne(std::vector<double>& weights) {
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    for (auto& weight : weights) weight /= sum;
}

/// Fills the weights of `rates` and gives those of the spreads.
std::vector<double> weigh(WeightedGrid& rates, const BetaShape& prior, const WeightedGrid& spread,
                          const OutcomeTally& outcomes) {
    std::vector<double> logs;
    for (const double rate : rates.values) {
        const double logPrior = (prior.a - 1) * std::log(rate) + (prior.b - 1) * std::log1p(-rate);
        for (std::size_t j = 0; j < spread.values.size(); ++j)
            logs.push_back(logPrior + std::log(spread.weights[j]) +
                           outcomes.logChance({rate, spread.values[j]}));
    }
    const double highest = *std::max_element(logs.begin(), logs.end());
    std::vector<double> spreads(spread.values.size());
    rates.weights.assign(rates.values.size(), 0);
    for (std::size_t i = 0, at = 0; i < rates.values.size(); ++i) {
        for (std::size_t j = 0; j < spreads.size(); ++j, ++at) {
            const double weight = std::exp(logs[at] - highest);
            rates.weights[i] += weight;
            spreads[j] += weight;
        }
    }
    scaleToOne(rates.weights);
    scaleToOne(spreads);
    return spreads;
}

/// A finer grid over what is likely, and one cell more on either side.
WeightedGrid narrowed(const WeightedGrid& grid, std::size_t cells) {
    const double least = *std::max_element(grid.weights.begin(), grid.weights.end()) * kUnlikely;
    std::size_t from = 0;
    std::size_t to = grid.values.size();
    while (grid.weights[from] < least) ++from;
    while (grid.weights[to - 1] < least) --to;
    return evenGrid(grid.edges[from > 0 ? from - 1 : 0],
                    grid.edges[std::min(to + 1, grid.values.size())], cells);
}

}  // namespace

OutcomeTally::Runs OutcomeTally::runsOf(std::vector<std::int32_t> counts) {
    std::sort(counts.begin(), counts.end());
    Runs runs;
    std::int32_t from = 0;
    for (std::size_t i = 0; i < counts.size(); ++i) {
        if (counts[i] == from) continue;
        runs.push_back({from, counts[i], static_cast<int>(counts.size() - i)});
        from = counts[i];
    }
    return runs;
}

OutcomeTally::OutcomeTally(std::span<const StageCount> outcomes) {
    std::vector<std::int32_t> passed;
    std::vector<std::int32_t> failed;
    std::vector<std::int32_t> tried;
    for (const auto& outcome : outcomes) {
        passed.push_back(outcome.passed);
        failed.push_back(outcome.tried - outcome.passed);
        tried.push_back(outcome.tried);
    }
    passed_ = runsOf(std::move(passed));
    failed_ = runsOf(std::move(failed));
    tried_ = runsOf(std::move(tried));
}

double OutcomeTally::logProduct(const Runs& runs, double share, double widening) {
    double sum = 0;
    for (const auto& run : runs) sum += run.batches * logRising(share, widening, run.from, run.to);
    return sum;
}

double OutcomeTally::logChance(const StageRate& rate) const {
    double rho = correlation(rate);
    if (rho < kLeastCorrelation) rho = 0;
    const double widening = rho / (1 - rho);
    return logProduct(passed_, rate.mean, widening) + logProduct(failed_, 1 - rate.mean, widening) -
           logProduct(tried_, 1, widening);
}

double WeightedGrid::mean() const {
    return std::inner_product(values.begin(), values.end(), weights.begin(), 0.0);
}

double WeightedGrid::quantile(double q) const {
    double below = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (below + weights[i] >= q)
            return edges[i] + (edges[i + 1] - edges[i]) * (q - below) / weights[i];
        below += weights[i];
    }
    return edges.back();
}

WeightedGrid logNormalGrid(double mean, double logSd, const GridCells& cells) {
    if (mean <= 0 || logSd <= 0) return {{mean, mean}, {mean}, {1}};
    auto grid = evenGrid(-kSpreadReach, kSpreadReach, cells.spreads);
    for (std::size_t i = 0; i < cells.spreads; ++i)
        grid.weights[i] = std::exp(-grid.values[i] * grid.values[i] / 2);
    scaleToOne(grid.weights);
    for (auto& value : grid.values) value = std::exp(logSd * value);
    for (auto& edge : grid.edges) edge = std::exp(logSd * edge);
    const double scale = mean / grid.mean();
    for (auto& value : grid.values) value *= scale;
    for (auto& edge : grid.edges) edge *= scale;
    return grid;
}

RateBelief beliefAfter(const BetaShape& rate, const WeightedGrid& spread,
                       const OutcomeTally& outcomes, const GridCells& cells) {
    RateBelief belief{evenGrid(0, 1, cells.coarse), spread};
    (void)weigh(belief.rate, rate, spread, outcomes);
    belief.rate = narrowed(belief.rate, cells.coarse);
    (void)weigh(belief.rate, rate, spread, outcomes);
    belief.rate = narrowed(belief.rate, cells.rates);
    belief.spread.weights = weigh(belief.rate, rate, spread, outcomes);
    return belief;
}

}  // namespace tenthday
