#include "losses/rate_fit.h"

#include <algorithm>
#include <cmath>
#include <vector>

#include "losses/rate_grid.h"

namespace tenthday {
namespace {

constexpr double kLow = 0.1;
constexpr double kHigh = 0.9;
constexpr double kLeastShape = 2;      // a and b of a prior
constexpr double kRangeInSds = 4;      // a fact's range in standard deviations
constexpr double kEdge = 0.001;        // a prior's mean keeps from 0 and 1
constexpr double kLeastSpread = 1e-4;  // for a logarithm, where a range begins at 0

double widthOf(const FactEntry& entry, double value) {
    return std::max(entry.high, value) - std::min(entry.low, value);
}

BetaShape betaOf(const RatePrior& prior) {
    const double size = prior.rate * (1 - prior.rate) / (prior.rateSd * prior.rateSd) - 1;
    return {prior.rate * size, (1 - prior.rate) * size};
}

RangedShare ranged(const WeightedGrid& grid) {
    return {grid.mean(), grid.quantile(kLow), grid.quantile(kHigh)};
}
RangedShare ranged(double value, const WeightedGrid& grid) {
    return {value, std::min(value, grid.quantile(kLow)), std::max(value, grid.quantile(kHigh))};
}

bool canBe(const StageCount& count) {
    return count.tried > 0 && count.passed >= 0 && count.passed <= count.tried;
}

}  // namespace

RatePrior priorOf(const Facts& facts, LossStage stage) {
    const auto rateKey = rateFact(stage);
    const auto spreadKey = spreadFact(stage);
    RatePrior prior;
    prior.rate = std::clamp(facts[rateKey], kEdge, 1 - kEdge);
    const double variance = prior.rate * (1 - prior.rate);
    const double narrowest = kLeastShape / std::min(prior.rate, 1 - prior.rate);  // a + b
    prior.rateSd = std::min(widthOf(facts.entry(rateKey), facts[rateKey]) / kRangeInSds,
                            std::sqrt(variance / (narrowest + 1)));
    prior.spread = facts[spreadKey];
    if (prior.spread <= 0) return prior;
    const auto& entry = facts.entry(spreadKey);
    const double low = std::max(std::min(entry.low, prior.spread), kLeastSpread);
    prior.spreadLogSd = std::log(std::max(entry.high, prior.spread) / low) / kRangeInSds;
    return prior;
}

namespace {

std::vector<StageCount> counting(std::span<const OwnOutcome> outcomes) {
    std::vector<StageCount> counted;
    for (const auto& outcome : outcomes)
        if (outcome.leftOut.empty() && canBe(outcome.count)) counted.push_back(outcome.count);
    return counted;
}

}  // namespace

std::int32_t batchesThatCount(std::span<const OwnOutcome> outcomes) {
    return static_cast<std::int32_t>(counting(outcomes).size());
}

StageRate fittedRate(const RatePrior& prior, std::span<const OwnOutcome> outcomes) {
    const auto counted = counting(outcomes);
    if (counted.empty()) return {prior.rate, prior.spread};
    const auto now =
        beliefAfter(betaOf(prior), logNormalGrid(prior.spread, prior.spreadLogSd, kForMeans),
                    OutcomeTally(counted), kForMeans);
    return {now.rate.mean(), now.spread.mean()};
}

RateFit fitRate(const RatePrior& prior, std::span<const OwnOutcome> outcomes) {
    RateFit fit;
    const auto counted = counting(outcomes);
    for (const auto& count : counted) {
        fit.record.tried += count.tried;
        fit.record.passed += count.passed;
    }
    fit.leftOut = static_cast<std::int32_t>(
        std::count_if(outcomes.begin(), outcomes.end(),
                      [](const auto& outcome) { return !outcome.leftOut.empty(); }));
    fit.batches = static_cast<std::int32_t>(counted.size());
    const auto shape = betaOf(prior);
    const auto spreads = logNormalGrid(prior.spread, prior.spreadLogSd);
    const auto before = beliefAfter(shape, spreads, OutcomeTally({}));
    fit.priorRate = ranged(prior.rate, before.rate);
    fit.priorSpread = ranged(prior.spread, spreads);
    fit.rate = fit.priorRate;
    fit.spread = fit.priorSpread;
    if (counted.empty()) return fit;
    const OutcomeTally tally(counted);
    const auto now = beliefAfter(shape, spreads, tally);
    fit.rate = ranged(now.rate);
    fit.spread = ranged(now.spread);
    fit.ownRate = ranged(static_cast<double>(fit.record.passed) / fit.record.tried,
                         beliefAfter({}, spreads, tally).rate);
    return fit;
}

}  // namespace tenthday
