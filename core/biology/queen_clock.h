/// @file queen_clock.h  When the queens of one graft reach each stage, as distributions.
#pragma once
#include <optional>

#include "biology/spread.h"
#include "facts/facts.h"

namespace tenthday {

/// Hours in which cells stand at a temperature other than the brood nest's. Only sealed cells mind.
struct HeatSpan {
    double fromH = 0;  ///< h after the graft
    double toH = 0;    ///< h after the graft, not included
    double celsius = 34.5;
};

/// Rate of development of sealed cells at a temperature, 1 at the brood nest's. Linear in rate
/// between the two measured temperatures, clamped outside them (S7).
struct HeatRate {
    double rate = 1;
    bool clamped = false;  ///< the temperature was outside what was measured
};
[[nodiscard]] HeatRate heatRate(const Facts& facts, double celsius);

/// The hours of one graft's queens, all counted from the graft. Larval age is uniform over its
/// range, development normal with a spread in proportion to its length, and one queen keeps one
/// quantile through all her stages. Sources: S1, S2 (lengths), S7 (heat); see resources/facts.
class QueenClock {
public:
    QueenClock() = default;
    /// @param larvaFromH, larvaToH  ages since hatching, h, from <= to; equal for an exact age.
    ///        May be negative or large where an age is only reckoned (cells found sealed).
    /// @param heat  stay at another temperature, if any
    QueenClock(const Facts& facts, double larvaFromH, double larvaToH,
               std::optional<HeatSpan> heat = {});

    [[nodiscard]] const Spread& sealed() const { return sealed_; }
    [[nodiscard]] const Spread& emerged() const { return emerged_; }
    /// Takes an hour as seen: all queens out then.
    void setEmerged(double hour) { emerged_ = Spread(hour); }

    /// The first of n living cells to emerge, n >= 1: hour by which it is out with chance p.
    /// Queens taken as independent, which is cautious.
    [[nodiscard]] double firstOutAt(double n, double p) const;
    /// The chance of that by an hour.
    [[nodiscard]] double firstOutBy(double n, double hour) const;
    [[nodiscard]] bool heatClamped() const { return heatClamped_; }

private:
    Spread sealed_;
    Spread emerged_;
    bool heatClamped_ = false;
};

}  // namespace tenthday
