#include "losses/batch_losses.h"

#include <cmath>
#include <optional>

namespace tenthday {
namespace {

std::optional<std::int32_t> whole(const std::optional<double>& count) {
    if (!count) return std::nullopt;
    return static_cast<std::int32_t>(std::lround(*count));
}

/// What was counted on the way, in the order of the chain.
struct Counted {
    std::optional<std::int32_t> came;    ///< to this point
    std::optional<std::int32_t> goesOn;  ///< from here: fewer where some left or were lost
};

std::array<Counted, 4> countedAlong(std::int32_t grafts, const SeenCounts& seen, Given given) {
    const auto grafted = whole(seen.grafted).value_or(grafts);
    std::array<Counted, 4> points{{{grafted, grafted},
                                   {whole(seen.accepted), whole(seen.accepted)},
                                   {whole(seen.sealed), whole(seen.sealed)},
                                   {whole(seen.emerged), whole(seen.emerged)}}};
    auto& ripe = points[static_cast<std::size_t>(ripePoint(given))];
    if (seen.ripe) ripe.goesOn = whole(seen.ripe);
    return points;
}

/// So many pass a stage, of a batch with outcomes of its own.
CountSpread passedBy(const CountSpread& count, const BatchStanding& batch, const ChainRates& rates,
                     LossStage stage) {
    const bool holdsWeather = stage == LossStage::Mated;
    return passed(count, holdsWeather ? rates[stage] : given(rates[stage], batch.seen[stage]));
}

/// The way to a point no weather has part in.
CountSpread reachedIndoors(const BatchStanding& batch, const ChainRates& rates, ChainPoint point) {
    CountSpread count(batch[ChainPoint::Grafted]);
    for (const auto stage : {LossStage::Accepted, LossStage::Sealed, LossStage::Emerged})
        if (after(stage) <= point)
            count = passedBy(count, batch, rates, stage).shifted(batch[after(stage)]);
    return count;
}

std::int32_t standingBeyond(const BatchStanding& batch, ChainPoint point) {
    std::int32_t count = 0;
    for (auto i = static_cast<std::size_t>(point) + 1; i < kChainPoints; ++i) count += batch.at[i];
    return count;
}

}  // namespace

BatchStanding& BatchStanding::operator+=(const BatchStanding& other) {
    for (std::size_t i = 0; i < kChainPoints; ++i) at[i] += other.at[i];
    for (const auto stage : kAllLossStages) {
        seen[stage].tried += other.seen[stage].tried;
        seen[stage].passed += other.seen[stage].passed;
    }
    return *this;
}

BatchStanding standing(std::int32_t grafts, const SeenCounts& seen, Given given) {
    const auto points = countedAlong(grafts, seen, given);
    BatchStanding batch;
    std::size_t last = 0;
    for (std::size_t i = 0; i < points.size(); ++i)
        if (points[i].goesOn) last = i;
    batch.at[last] = *points[last].goesOn;
    for (std::size_t i = 0; i + 1 < points.size(); ++i)
        if (points[i].goesOn && points[i + 1].came)
            batch.seen.values[i] = {*points[i].goesOn, *points[i + 1].came};
    return batch;
}

CountSpread matedInFairWeather(const BatchStanding& batch, const ChainRates& rates) {
    return passedBy(reachedIndoors(batch, rates, ChainPoint::Emerged), batch, rates,
                    LossStage::Mated);
}

CountSpread reachedUnder(const CountSpread& matedInFair, const BatchStanding& batch,
                         const ChainRates& rates, ChainPoint point, double seasonShare) {
    auto count = passed(matedInFair, {seasonShare, 0}).shifted(batch[ChainPoint::Laying]);
    if (point == ChainPoint::Good)
        count =
            passedBy(count, batch, rates, LossStage::JudgedGood).shifted(batch[ChainPoint::Good]);
    return count.shifted(standingBeyond(batch, point));
}

CountSpread reached(const BatchStanding& batch, const ChainRates& rates, ChainPoint point,
                    double seasonShare) {
    if (point >= ChainPoint::Laying)
        return reachedUnder(matedInFairWeather(batch, rates), batch, rates, point, seasonShare);
    return reachedIndoors(batch, rates, point).shifted(standingBeyond(batch, point));
}

}  // namespace tenthday
