/// @file open_hours.h  The hours of a day at which boxes in a yard are left shut.
#pragma once
#include <optional>

#include "mating/mating_table.h"
#include "occupancy/nucs.h"

namespace tenthday {

/// Boxes are left shut from one hour to the other, and why.
struct ShutHours {
    Hour from;
    Hour until;
    bool flights = false;  ///< virgins fly (S17)
    bool robbing = false;  ///< noted for the yard
    friend bool operator==(const ShutHours&, const ShutHours&) = default;
};

/// What is worked on.
enum class Opens : std::uint8_t {
    Nucs,     ///< shut while virgins fly, and while there is robbing
    Builder,  ///< shut while there is robbing
};

/// Nothing where they may be opened at any hour. Virgins that are due to fly in the yard shut its
/// nucs, unless the day is known to be no flying day.
[[nodiscard]] std::optional<ShutHours> shutHours(const Snapshot& snapshot, const NucOutlook& nucs,
                                                 const MatingTable& mating, Id<Yard> yard, Day day,
                                                 Opens opens);

}  // namespace tenthday
