/// @file supply_of.h  The orders of an outlook's season and the queens for them.
#pragma once
#include "outlook/outlook.h"
#include "supply/season_supply.h"

namespace tenthday {

/// Reckoned anew at each call; the outlook must outlive it.
[[nodiscard]] SeasonSupply supplyOf(const Outlook& outlook);

}  // namespace tenthday
