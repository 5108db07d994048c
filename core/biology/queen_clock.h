/// @file queen_clock.h  When the queens of one graft reach each stage, as distributions.
#pragma once
#include <optional>

#include "facts/facts.h"

namespace tenthday {

/// Hours in which sealed cells stand at a temperature other than the brood nest's.
struct HeatSpan {
    double fromH = 0;  ///< h after the graft
    double toH = 0;    ///< h after the graft, not included
    double celsius = 34.5;
};

/// The hours of one graft's queens. Larval age is uniform over its range, development normal with
/// a spread that grows with its length, and one queen keeps one quantile through all her stages.
/// All hours are after the graft. Sources: S1, S2, S7 (see resources/facts).
class QueenClock {
public:
    QueenClock() = default;
    /// @param larvaFromH, larvaToH  ages since hatching, h; equal for an exact age
    /// @param heat  stay of the sealed cells at another temperature, if any
    QueenClock(const Facts& facts, double larvaFromH, double larvaToH,
               std::optional<HeatSpan> heat = {});

    /// Hour by which a share `q` (0..1, ends not included) of queens have sealed / emerged.
    [[nodiscard]] double sealedAt(double q) const;
    [[nodiscard]] double emergedAt(double q) const;
    /// Share of queens emerged by an hour, 0..1.
    [[nodiscard]] double emergedBy(double hour) const;
    /// Hour by which the first of n living cells has emerged with chance p (independent queens:
    /// cautious). n >= 1.
    [[nodiscard]] double firstOutAt(double n, double p) const;
    /// The chance of that by an hour.
    [[nodiscard]] double firstOutBy(double n, double hour) const;
    /// The temperature given lay outside what was measured; the nearest end was used.
    [[nodiscard]] bool heatClamped() const { return heatClamped_; }
    /// Hour by which a share q have emerged and, each an own normal delay later (mean and sd, h),
    /// done something: first eggs after emergence, say. Sums by convolution.
    [[nodiscard]] double afterEmergenceAt(double q, double meanH, double sdH) const;
    [[nodiscard]] double afterEmergenceBy(double hour, double meanH, double sdH) const;

private:
    /// Undoes and does what heat does to an hour of development.
    [[nodiscard]] double warmed(double coolHour) const;
    [[nodiscard]] double cooled(double nestHour) const;

    double ageFromH_ = 12;
    double ageToH_ = 24;
    double sealedH_ = 128;  ///< from hatching, mean
    double sealedSd_ = 4.2;
    double emergedH_ = 312;  ///< from hatching, mean
    double emergedSd_ = 8;
    std::optional<HeatSpan> heat_;
    double rate_ = 1;  ///< of development during the heat span
    bool heatClamped_ = false;
};

}  // namespace tenthday
