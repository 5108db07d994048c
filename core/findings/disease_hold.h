/// @file disease_hold.h  What would leave a yard under a hold for disease. Inner to the room.
#pragma once
#include "findings/finding.h"

namespace tenthday {

/// Bees or brood taken from a held yard, and boxes moved out of it, from today on. A donor is of a
/// yard when its label is in it as whole words: "Mill", "mill 3". Common practice; what is allowed
/// the bee inspector says.
[[nodiscard]] std::vector<Finding> leavesHold(const Snapshot& snapshot);

/// That something leaves the yard on a day, without what it is about: before today a warning of
/// what was done.
[[nodiscard]] Finding holdFinding(const YardNote& note, const Yard& yard, Day day, Day today);

}  // namespace tenthday
