/// @file drone_needs.h  The drones that a season's virgins want, yard by yard.
#pragma once
#include <optional>
#include <vector>

#include "occupancy/nucs.h"

namespace tenthday {

/// Virgins of all batches that are due to fly about one yard, and the drones they want. Open mating
/// counts where the nucs stand, a mating station where the nucs are brought.
struct DroneNeed {
    Ptr<Yard> yard;
    DayWindow flights;          ///< days on which any are due to fly
    Day peak;                   ///< the first day with the most of them
    double virgins = 0;         ///< due to fly on that day, expected
    std::int32_t wanted = 0;    ///< strong drone colonies for them (S16)
    Day firstGraft;             ///< of the batches that fly there
    Day combBy;                 ///< drone comb goes in by here for the first of them (S18)
    Day combLast;               ///< comb put in later is too late for them
    std::optional<Day> mature;  ///< first drones of the season that are mature there, as noted
    std::optional<Day> combIn;  ///< comb, brood or drones of the season first noted
    std::optional<std::int32_t>
        noted;  ///< with drones mature by the peak, newest note; 0: too young
    [[nodiscard]] bool isShort() const { return noted && *noted < wanted; }
};

/// Yards in driving order; those about which no virgin flies in the season are left out.
[[nodiscard]] std::vector<DroneNeed> droneNeeds(const Snapshot& snapshot,
                                                const std::vector<YardOutlook>& yards,
                                                const Timelines& timelines);

}  // namespace tenthday
