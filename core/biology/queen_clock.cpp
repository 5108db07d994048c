#include "biology/queen_clock.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

/// An hour of emergence and how much later it comes for each hour of slower development.
struct Delayed {
    double hour;
    double slope;
};

/// What a stay at another rate makes of an emergence at `nestHour` of a cell sealed at
/// `sealedHour`.
Delayed delayed(double nestHour, double sealedHour, const HeatSpan& span, double rate) {
    const double start = std::max(span.fromH, sealedHour);
    if (nestHour <= start || start >= span.toH) return {nestHour, 1};
    const double left = nestHour - start;
    const double done = rate * (span.toH - start);
    // Sealed during the stay: her sealing moves with her, so only the sealed hours stretch.
    const double sealedSlope = sealedHour > span.fromH ? 1 : 1 / rate;
    if (left <= done) return {start + left / rate, sealedSlope};
    return {span.toH + left - done, 1};
}

}  // namespace

HeatRate heatRate(const Facts& facts, double celsius) {
    const double nest = facts[Fact::NestC];
    const double cold = facts[Fact::ColdC];
    const double kept = std::clamp(celsius, std::min(cold, nest), nest);
    const double sealedHours = facts[Fact::EmergenceH] - facts[Fact::SealingH];
    const double coldRate = sealedHours / (sealedHours + facts[Fact::ColdDelayH]);
    const double share = nest > cold ? (kept - cold) / (nest - cold) : 1;
    return {coldRate + (1 - coldRate) * share, kept != celsius};
}

QueenClock::QueenClock(const Facts& facts, double larvaFromH, double larvaToH,
                       std::optional<HeatSpan> heat) {
    const double width = larvaToH - larvaFromH;
    const double grafted = facts[Fact::EggH] + (larvaFromH + larvaToH) / 2;
    const double sealing = facts[Fact::SealingH];
    const double emergence = facts[Fact::EmergenceH];
    const double sd = facts[Fact::EmergenceSdH];
    sealed_ = Spread(sealing - grafted, width, emergence > 0 ? sd * sealing / emergence : 0);
    emerged_ = Spread(emergence - grafted, width, sd);
    if (!heat) return;
    const auto rate = heatRate(facts, heat->celsius);
    heatClamped_ = rate.clamped;
    const auto late = delayed(emerged_.mean(), sealed_.mean(), *heat, rate.rate);
    emerged_ = Spread(late.hour, width * late.slope, sd * late.slope);
}

double QueenClock::firstOutAt(double n, double p) const {
    return emerged_.at(-std::expm1(std::log1p(-p) / std::max(n, 1.0)));
}

double QueenClock::firstOutBy(double n, double hour) const {
    const double out = emerged_.by(hour);
    return out >= 1 ? 1 : -std::expm1(std::max(n, 1.0) * std::log1p(-out));
}

}  // namespace tenthday
