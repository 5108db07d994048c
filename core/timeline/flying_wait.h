/// @file flying_wait.h  Why the first eggs of a batch are awaited so long: days on which none of
/// its virgins may be able to fly, and years in which some never mate.
#pragma once
#include <optional>

#include "timeline/batch_timeline.h"

namespace tenthday {

/// Share of something among past years.
struct OfYears {
    std::int32_t with = 0;
    std::int32_t all = 0;
    friend bool operator==(const OfYears&, const OfYears&) = default;
};

/// Days in a row on which no virgin flies, as far as weather is known.
struct FlyingWait {
    DayWindow days;
    std::int32_t known = 0;        ///< so many of the first of them are recorded or forecast
    double chance = 1;             ///< that none of them is a flying day, 0..1
    std::optional<OfYears> years;  ///< past years in which none was; without them months say it

    /// All of it is recorded or forecast.
    [[nodiscard]] bool isKnown() const { return known == days.size(); }
};

/// Days on which virgins of the batch wait to fly: from the day the first are due (5 % of them) to
/// the last day of flight before the level's first eggs (the facts `likely_level` and
/// `eggs_after_flight_d`), both counted. Empty where the level is met as soon as can be.
[[nodiscard]] DayWindow daysOfWaiting(const BatchTimeline& timeline, const Facts& facts);

/// The wait that sets the day of the level: of all runs of days within daysOfWaiting, the longest
/// that holds no flying day with at least the chance that the level leaves aside (at 80 %: in one
/// past year of five). Of equals the likelier, then the earlier. Nothing where it would be a single
/// day, or where weather is not reckoned with.
/// @param pastYears  each past year once, unshifted, this year's known days in all; null: the chain
///                   of the mating table is asked
[[nodiscard]] std::optional<FlyingWait> flyingWait(const BatchTimeline& timeline,
                                                   const MatingTable& mating,
                                                   const FlyingSeasons* pastYears,
                                                   const Facts& facts);

/// Past years in which weather kept virgins from mating.
struct NeverMated {
    OfYears years;     ///< in which one virgin in twenty or more would never have mated
    double least = 0;  ///< of those years, the least share that would not, 0..1
};
/// Nothing where there is no such year, or all weather that counts is known and years do not
/// differ.
[[nodiscard]] std::optional<NeverMated> neverMated(const BatchTimeline& timeline,
                                                   const FlyingSeasons& pastYears,
                                                   const Facts& facts);

}  // namespace tenthday
