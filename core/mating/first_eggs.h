/// @file first_eggs.h  From emergence to flights and first eggs. The door through which weather
/// comes in: callers ask by emergence day and do not know what stands behind.
#pragma once
#include "biology/spread.h"
#include "calendar/day.h"
#include "facts/facts.h"

namespace tenthday {

/// What lies ahead of virgins that emerged on one day.
struct LayingDelay {
    double neverMates = 0;  ///< chance of never mating for weather, 0..1
    double meanH = 0;       ///< of those that will lay: emergence to first eggs, h
    double sdH = 0;
};

/// Shared by all batches of a snapshot. Until weather is known: one fixed figure (S61).
class MatingTable {
public:
    explicit MatingTable(const Facts& facts);

    [[nodiscard]] LayingDelay forEmergence(Day day) const;
    /// When queens with this emergence first fly (S47, shares from memory).
    [[nodiscard]] Spread dueToFly(const Spread& emerged) const;
    /// When those that will lay have first eggs.
    [[nodiscard]] Spread firstEggs(const Spread& emerged, Day emergence) const;

private:
    LayingDelay fixed_;
    std::array<double, 3> flightHours_{};
    std::array<double, 3> flightShares_{};
};

}  // namespace tenthday
