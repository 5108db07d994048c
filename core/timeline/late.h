/// @file late.h  Whether weather makes a batch late, and how many days without flying lie behind
/// it.
#pragma once
#include "timeline/batch_timeline.h"

namespace tenthday {

/// When first eggs would be there, were every day a flying day: the likely emergence, then the mean
/// age of first flights and the days from flight to eggs. S47, S49, S58.
[[nodiscard]] Moment fairFirstEggs(const BatchTimeline& timeline, const Facts& facts);

/// Days recorded or forecast to be no flying days, from the day the first virgins are due to fly
/// (5 % of them) to the day of the first look, both counted. 0 where weather does not make the
/// batch late: fewer than three such days, or first eggs (of the level asked for) less than three
/// days behind fair weather.
[[nodiscard]] std::int32_t lateByWeather(const BatchTimeline& timeline, const MatingTable& mating,
                                         const Facts& facts);

}  // namespace tenthday
