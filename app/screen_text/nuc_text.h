/// @file nuc_text.h  The words of the page of nucs.
#pragma once
#include <QString>

#include "calendar/day.h"
#include "occupancy/nucs.h"

namespace tenthday::nuc_text {

[[nodiscard]] QString head(Day day);
[[nodiscard]] QString columnHead(int column);
/// Of what a nuc is stocked with on the day: bees, brood frames, open brood, donor.
[[nodiscard]] QString stockedHead(int part);
/// "stockings of Monday, 7 June": what undo calls what was pasted.
[[nodiscard]] QString pastedName(Day day);
[[nodiscard]] QString percent(double chance);
/// The four numbers, each with its words.
[[nodiscard]] QString ready(const ReadyNumbers& numbers);
[[nodiscard]] QString likely(const ReadyNumbers& numbers);
[[nodiscard]] QString canStock(const ReadyNumbers& numbers);
[[nodiscard]] QString needsBrood(const ReadyNumbers& numbers);
/// Entries of the filter, in its order: all, then the four, then those that hold something.
[[nodiscard]] QString filter(int entry);
inline constexpr int kFilters = 6;

[[nodiscard]] QString find();
[[nodiscard]] QString dayBefore();
[[nodiscard]] QString dayAfter();
[[nodiscard]] QString today();
[[nodiscard]] QString bees();
[[nodiscard]] QString millilitres();
[[nodiscard]] QString broodFrames();
[[nodiscard]] QString openBrood();
[[nodiscard]] QString donor();
/// "Stock 12 nucs on Fri 11 Jun".
[[nodiscard]] QString stock(int nucs, Day day);
[[nodiscard]] QString chooseNucs();
[[nodiscard]] QString chooseAll();
/// "Orchard: 7 ready, likely 2.4 more".
[[nodiscard]] QString yardLine(const QString& yard, const ReadyNumbers& numbers);
[[nodiscard]] QString noNucs();
/// Why a line cannot be that is emptied of a stocking.
[[nodiscard]] QString deletedInList();
/// "27-014 (Hill), wintered".
[[nodiscard]] QString wintered(const Snapshot& snapshot, const WinteredQueen& queen);

}  // namespace tenthday::nuc_text
