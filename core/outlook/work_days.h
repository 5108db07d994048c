/// @file work_days.h  The days on which there can be work for the season shown.
#pragma once
#include "outlook/outlook.h"

namespace tenthday {

/// From the week before the first batches may start to the season's last day or, where it is later,
/// the last catch; today too.
[[nodiscard]] DayWindow workDays(const Outlook& outlook);

}  // namespace tenthday
