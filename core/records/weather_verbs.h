/// @file weather_verbs.h  Edits of the weather: whether queens flew, and a month's usual weather.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// Notes whether queens could fly on a day. Without an answer the note goes, and with it a row that
/// knows nothing else. Empty when nothing changes. @param fresh  id of the row, should it be new
[[nodiscard]] ChangeSet recordFlew(const Snapshot& snapshot, Day day, std::optional<bool> flew,
                                   Id<WeatherDay> fresh);

/// Keeps a month's mean daily maximum and its rain days. Without the maximum the row goes.
/// Refused outside -60..59.9 °C and 0..31 days, and rain days without a maximum.
/// @param month  1..12  @param fresh  id of the row, should it be new
[[nodiscard]] Result<ChangeSet> setClimateMonth(const Snapshot& snapshot, std::int32_t month,
                                                std::optional<Tenths> tmaxC,
                                                std::optional<Tenths> rainDays,
                                                Id<ClimateMonth> fresh);

}  // namespace tenthday
