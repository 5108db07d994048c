/// @file egg_hours.h  When a graft's queens that will lay have their first eggs.
#pragma once
#include <optional>
#include <vector>

#include "biology/spread.h"

namespace tenthday {

/// Hours after the graft as a distribution: a smooth spread where no weather is known, else whole
/// days with the chance of each.
class EggHours {
public:
    EggHours() : spread_(Spread()) {}
    explicit EggHours(const Spread& spread) : spread_(spread) {}

    struct Step {
        double hour;  ///< h after the graft, rising
        double by;    ///< share of queens that have eggs by then, rising to 1
    };
    /// @param steps  one at least; the last one's share is taken as 1
    explicit EggHours(std::vector<Step> steps) : steps_(std::move(steps)) {}

    /// Share with eggs by an hour, 0..1.
    [[nodiscard]] double by(double hour) const;
    /// Hour by which a share q has eggs (0 < q < 1).
    [[nodiscard]] double at(double q) const;

private:
    std::optional<Spread> spread_;
    std::vector<Step> steps_;
};

}  // namespace tenthday
