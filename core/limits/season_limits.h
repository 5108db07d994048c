/// @file season_limits.h  The first and the last day on which a graft is worth while, and why.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "mating/mating_table.h"
#include "records/snapshot.h"

namespace tenthday {

/// What sets a first graft (the first two) or a last one.
enum class Limit : std::uint8_t {
    DronesReady,          ///< mature drones for the first flights
    FlyingWeatherFrom,    ///< weather that lets virgins out, from here on
    DronesOut,            ///< drones are thrown out
    FlyingWeatherUntil,   ///< the last weather that lets virgins out
    WinterBeesTwoRounds,  ///< she winters on two rounds of her own bees
    WinterBeesOneRound,   ///< the last chance: on one round
};
template <>
struct TokensOf<Limit> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"drones_ready", "flying_weather_from", "drones_out", "flying_weather_until",
         "winter_bees_two_rounds", "winter_bees_one_round"});
};
[[nodiscard]] constexpr bool isFirst(Limit limit) { return limit <= Limit::FlyingWeatherFrom; }

/// One limit of the season's grafts.
struct SeasonLimit {
    Limit limit{};
    std::optional<Day> day;    ///< of the graft; nothing where what it hangs on is not known
    bool binds = false;        ///< it sets the first or the last graft
    std::optional<Day> cause;  ///< drones mature, drones thrown out, hard frost; none for weather
    std::int32_t days = 0;     ///< between cause and graft
    Ptr<Yard> yard;            ///< whose day it is; none for weather
    bool open = false;         ///< weather that limits no graft of the season: no day
};

/// All six, in the order of Limit. The first graft is the latest of its limits; the last one the
/// earliest of drones, weather and two rounds of winter bees. Where yards differ, those of the yard
/// that allows the longest season stand here: drones of mating yards (of all where none has the
/// role), frost of all.
struct SeasonLimits {
    std::vector<SeasonLimit> all;

    [[nodiscard]] const SeasonLimit& operator[](Limit limit) const {
        return all[static_cast<std::size_t>(limit)];
    }
    /// Nothing where no limit is known.
    [[nodiscard]] std::optional<Day> firstGraft() const;
    [[nodiscard]] std::optional<Day> lastGraft() const;
};

/// Sources: drones S18, S53; thrown out -24 d (derived; -20 for queens that fly at 8 d of age);
/// winter bees S94, S95, frost -68 d and -47 d (derived). Weather: the days between which the share
/// `season_mating_share` of virgins finds flying weather in the possible seasons.
[[nodiscard]] SeasonLimits seasonLimits(const Snapshot& snapshot, const MatingTable& mating);

/// The day by which drone comb is put in, for first flights of a graft on `graft` (S18).
[[nodiscard]] Day droneCombBy(Day graft, const Facts& facts);
/// The last day on which it is of use for them: drones of eggs of that day are mature in time
/// (derived from S18, S53).
[[nodiscard]] Day droneCombLast(Day graft, const Facts& facts);

/// The day of a month-and-day date (a frost, drones thrown out) in a season: the one on or after
/// the season's first day.
[[nodiscard]] Day inSeason(Day yearly, const DayWindow& season);

/// "drones are thrown out on 25 August in Heath, 24 days after the graft": why it is that day, or
/// what is not known. English, for headless output.
[[nodiscard]] std::string englishReason(const SeasonLimit& limit);

}  // namespace tenthday
