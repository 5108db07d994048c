/// @file drone_findings.h  Yards whose drones are too few, or mature too late. Inner to the room.
#pragma once
#include "findings/finding.h"

namespace tenthday {

/// Sources: S16 for how many colonies, S18 and S53 for when drones are mature.
[[nodiscard]] std::vector<Finding> aboutDrones(const std::vector<DroneNeed>& drones, Day today);

}  // namespace tenthday
