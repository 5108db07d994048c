#include "losses/season_counts.h"

#include <map>
#include <numeric>

namespace tenthday {
namespace {

/// The spreads of one batch, made once for each weather it meets.
class BatchSpreads {
public:
    BatchSpreads(const SeasonBatch& batch, ChainPoint point)
        : batch_(&batch),
          point_(point),
          start_(outdoors() ? matedInFairWeather(batch.standing, batch.rates)
                            : reached(batch.standing, batch.rates, point)) {}

    /// What the batch meets in a season, as far as the point hangs on it.
    [[nodiscard]] double shareIn(std::size_t season) const {
        return outdoors() && !batch_->seasonShare.empty() ? batch_->seasonShare[season] : 1;
    }
    const CountSpread& under(double share) {
        if (!outdoors()) return start_;
        const auto [it, isNew] = made_.try_emplace(share);
        if (isNew)
            it->second = reachedUnder(start_, batch_->standing, batch_->rates, point_, share);
        return it->second;
    }

private:
    [[nodiscard]] bool outdoors() const { return point_ >= ChainPoint::Laying; }

    const SeasonBatch* batch_;
    ChainPoint point_;
    CountSpread start_;
    std::map<double, CountSpread> made_;
};

CountSpread sumUnder(std::vector<BatchSpreads>& batches, const std::vector<double>& weather) {
    CountSpread sum;
    for (std::size_t i = 0; i < batches.size(); ++i) sum = sum + batches[i].under(weather[i]);
    return sum;
}

}  // namespace

SeasonCounts::SeasonCounts(std::span<const SeasonBatch> batches, std::span<const double> weights,
                           ChainPoint point) {
    const std::vector<double> one{1};
    if (weights.empty()) weights = one;
    const double sum = std::accumulate(weights.begin(), weights.end(), 0.0);
    std::vector<BatchSpreads> spreads;
    spreads.reserve(batches.size());
    for (const auto& batch : batches) spreads.emplace_back(batch, point);
    std::map<std::vector<double>, std::size_t> known;
    for (std::size_t season = 0; season < weights.size(); ++season) {
        std::vector<double> weather;
        for (const auto& batch : spreads) weather.push_back(batch.shareIn(season));
        const auto [it, isNew] = known.try_emplace(weather, counts_.size());
        if (isNew) {
            counts_.push_back(sumUnder(spreads, weather));
            weights_.push_back(0);
        }
        which_.push_back(it->second);
        seasonWeights_.push_back(weights[season] / sum);
        weights_[it->second] += seasonWeights_.back();
    }
}

double SeasonCounts::atLeast(std::int32_t count) const {
    double chance = 0;
    for (std::size_t i = 0; i < counts_.size(); ++i)
        chance += weights_[i] * counts_[i].atLeast(count);
    return chance;
}

}  // namespace tenthday
