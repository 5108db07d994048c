/// @file winter.h  Queens that stay in their nuc over the winter: judged good, and not caught.
#pragma once
#include "occupancy/nucs.h"

namespace tenthday {

/// The note of an outcome `judged_good` that says so.
inline constexpr std::string_view kWinterNote = "winter";

[[nodiscard]] inline bool staysForWinter(const Outcome& outcome) {
    return outcome.kind == OutcomeKind::JudgedGood && outcome.note == kWinterNote;
}
/// Her nuc waits for no catch, and is not free for a cell.
[[nodiscard]] inline bool staysForWinter(const SideRound& round) {
    return round.seen == NucState::JudgedGood && round.catchDay == kLastDay;
}

}  // namespace tenthday
