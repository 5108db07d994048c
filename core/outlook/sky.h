/// @file sky.h  What a book knows of the weather, for its season.
#pragma once
#include <memory>

#include "mating/mating_table.h"
#include "records/snapshot.h"

namespace tenthday {

/// What a row knows of its day, in °C, mm and m/s.
[[nodiscard]] DayWeather weatherOf(const WeatherDay& row);

/// The possible seasons of the snapshot's weather rows: from 60 days before its season, for batches
/// whose queens still sit in nucs, to 120 days after, for those grafted last. Null where the rows
/// hold no past year of them.
[[nodiscard]] std::shared_ptr<const FlyingSeasons> flyingSeasons(const Snapshot& snapshot);

/// The past years of the same rows as they were, one possible season each. Null where none serves.
[[nodiscard]] std::shared_ptr<const FlyingSeasons> pastYears(const Snapshot& snapshot);

/// The chain of flying days that the snapshot's climate by month makes, for the same days; what is
/// recorded or forecast of them is certain. Null without a climate.
[[nodiscard]] std::shared_ptr<const FlyingChain> flyingChain(const Snapshot& snapshot);

/// Nothing but the recorded and forecast days of the same window, all others being gaps. Null where
/// it has none.
[[nodiscard]] std::shared_ptr<const FlyingChain> recordedDays(const Snapshot& snapshot);

/// The mating table with the weather of past years; without them, with that of the climate; without
/// that, with the days recorded and forecast; else without. Never null.
[[nodiscard]] std::shared_ptr<const MatingTable> matingTable(const Snapshot& snapshot);

}  // namespace tenthday
