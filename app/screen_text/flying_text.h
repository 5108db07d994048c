/// @file flying_text.h  The words of flying days and mature drones on the season chart.
#pragma once
#include "outlook/outlook.h"
#include "screen_text/chart_cards.h"

namespace tenthday::flying_text {

/// Names of the lane, with weather and without.
[[nodiscard]] QString flyingDays();
[[nodiscard]] QString drones();
/// On the span of mature drones: where it begins, and where only its end is known.
[[nodiscard]] QString dronesMature();
[[nodiscard]] QString dronesUntil(Day day);
/// Nothing is known of the weather but days of this year; what the lane then says of it.
[[nodiscard]] bool isThisYearOnly(const Outlook& outlook);
[[nodiscard]] QString thisYearOnly();
/// "late: 9 days without flying"; empty for a batch that weather does not make late.
[[nodiscard]] QString late(const Outlook& outlook, const BatchOutlook& batch);

/// A day: seen, forecast or how likely a flying day, and what that is counted from; the span of
/// mature drones.
[[nodiscard]] CardText card(const Outlook& outlook, Day day);

}  // namespace tenthday::flying_text
