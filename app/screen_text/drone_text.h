/// @file drone_text.h  The drones a season's virgins want, in words.
#pragma once
#include <QStringList>

#include "occupancy/drone_needs.h"

namespace tenthday::drone_text {

/// A sentence or two for each yard; one line that says so where no virgin flies.
[[nodiscard]] QStringList needs(const std::vector<DroneNeed>& drones);
/// Rules, numbers and sources behind them.
[[nodiscard]] QString why(const Facts& facts);

}  // namespace tenthday::drone_text
