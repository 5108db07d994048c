/// @file limit_text.h  Why a first or a last graft is that day, in the window's words.
#pragma once
#include "limits/season_limits.h"
#include "screen_text/chart_cards.h"

namespace tenthday::limit_text {

/// "drones are thrown out about 25 August in Heath; queens fly up to 24 days after the graft": why
/// it is that day, or what is not known.
[[nodiscard]] QString reason(const SeasonLimit& limit);

/// Of a day before the first graft or after the last one: that graft's day, and what sets it. Empty
/// for a day between them.
[[nodiscard]] CardText outside(const SeasonLimits& limits, Day day);

}  // namespace tenthday::limit_text
