/// @file first_eggs.h  From emergence to first eggs. The door through which weather will come in:
/// callers ask by emergence day and never know what stands behind.
#pragma once
#include "calendar/day.h"
#include "facts/facts.h"

namespace tenthday {

/// What a virgin's days bring that emerged on one day.
struct LayingDelay {
    double neverMates = 0;  ///< chance of never mating for weather, 0..1
    double meanH = 254.4;   ///< of those that will lay: emergence to first eggs, h
    double sdH = 48;
};

/// Shared by all batches of a snapshot. Until weather is known: one fixed figure (S61).
class MatingTable {
public:
    explicit MatingTable(const Facts& facts);
    [[nodiscard]] LayingDelay forEmergence(Day day) const;

private:
    LayingDelay fixed_;
};

}  // namespace tenthday
