/// @file drones.h  Drones: how old what was seen is, when they are mature, how many colonies it
/// takes.
#pragma once
#include "base/tokens.h"
#include "calendar/day.h"
#include "facts/facts.h"

namespace tenthday {

/// What was seen of drones, or done for them, by age.
enum class DroneStage : std::uint8_t {
    CombIn,  ///< drone comb put into a strong colony
    Eggs,
    Larvae,
    Sealed,
    PurpleEyes,  ///< pupae with purple eyes
    Emerging,
    Flying,
};
template <>
struct TokensOf<DroneStage> {
    static constexpr auto names = std::to_array<std::string_view>(
        {"comb_in", "eggs", "larvae", "sealed", "purple_eyes", "emerging", "flying"});
};

/// Ages of a stage, days from the egg. Sealing and emergence S1, S2; purple eyes derived from S57;
/// flying drones are taken as mature. Comb that is put in is laid into from that day on (common
/// practice).
struct DroneAge {
    double youngest;
    double oldest;
};
[[nodiscard]] DroneAge droneAge(DroneStage stage, const Facts& facts);

/// Age from the egg at which drones can mate, d: 24 to emergence (S18) and 16 more (S53).
[[nodiscard]] double droneMatureAge(const Facts& facts);

/// The day by which all drones of a stage seen on `day` are mature: the youngest of them count.
[[nodiscard]] Day dronesMatureBy(DroneStage stage, Day day, const Facts& facts);

/// Strong drone colonies wanted for so many virgins that fly at one time: at least 8, or one per 25
/// (S16). None for no virgin.
[[nodiscard]] std::int32_t droneColoniesFor(double virgins, const Facts& facts);

}  // namespace tenthday
