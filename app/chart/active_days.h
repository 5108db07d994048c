/// @file active_days.h  The part of a season in which something happens: what a window shows first.
#pragma once
#include "outlook/outlook.h"

namespace tenthday {

/// From a week before the first builder is made up to a week after the last catch or order, within
/// the season; today is in it. The whole season where there is no batch.
[[nodiscard]] DayWindow activeDays(const Outlook& outlook);

}  // namespace tenthday
