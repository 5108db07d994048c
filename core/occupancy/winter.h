/// @file winter.h  Queens that stay in their nuc over the winter: judged good, and not caught.
///
/// Two things say so. The outcome `judged_good` with the note `winter` counts in the season of her
/// batch. Her stay of the place `nuc` counts in every season, for a batch is read with its own
/// alone: from its day on until her next stay, by which she is caught, moved or lost.
#pragma once
#include "occupancy/nucs.h"
#include "records/winter_note.h"

namespace tenthday {

/// Her nuc waits for no catch, and is not free for a cell.
[[nodiscard]] inline bool staysForWinter(const SideRound& round) {
    return round.seen == NucState::JudgedGood && round.catchDay == kLastDay;
}

/// One stay in the nuc that she was raised in.
struct WinterStay {
    Ptr<CaughtQueen> raised;  ///< batch and nuc
    Ptr<Queen> queen;
    Day from;
    Ptr<QueenStay> next;  ///< where she went; none: she is still there
};
/// Of all seasons, by queen, then day. Stays that end before `since` are left out.
[[nodiscard]] std::vector<WinterStay> winterStays(const Snapshot& snapshot, Day since);

/// The queen that a nuc was left with, still in it on the day by her stays: until she is caught,
/// moved or lost no cell goes in. Nothing where there is none.
/// @param stays  those of winterStays()
[[nodiscard]] const WinterStay* winterStayIn(const std::vector<WinterStay>& stays, Id<NucSide> side,
                                             Day day);
/// The same of a queen of a season before.
[[nodiscard]] const WinteredQueen* winteredOn(const SideOutlook& side, Day day);

/// Gives the sides the queens left in them: to a round of hers where her batch is read, else as a
/// queen of a season before. Sides are found by id.
void leaveForWinter(std::vector<SideOutlook>& sides, const Snapshot& snapshot);

}  // namespace tenthday
