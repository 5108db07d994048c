/// @file day_lists.h  The lists of a day, filled from the outlook.
#pragma once
#include "cellsday/propose.h"
#include "sheets/list_paper.h"

namespace tenthday {

/// Where the cells of a draft go, in walking order.
[[nodiscard]] ListPaper placementPaper(const Outlook& outlook, const CellsDraft& draft,
                                       const std::vector<CellsNuc>& nucs);
/// The same of a day as it stands in the book; what is left there goes by the proposal.
[[nodiscard]] ListPaper placementPaper(const Outlook& outlook, Day day, const WayOrder& ways);

/// Queens to catch on the day, and those still open from days before: nuc by nuc, by yard.
[[nodiscard]] ListPaper catchPaper(const Outlook& outlook, Day day);

/// Nucs that lost their queen, or whose virgin is given up, by the next cells day from `day` on,
/// each with the cell it gets there.
[[nodiscard]] ListPaper recellPaper(const Outlook& outlook, Day day, const WayOrder& ways);

/// Nucs that want bees or brood for the cells of seven days from `day` on, by the day they are due.
[[nodiscard]] ListPaper stockingPaper(const Outlook& outlook, Day day);

/// What goes into the car on a day: by yard in driving order what its tasks need, with how many.
[[nodiscard]] ListPaper loadingPaper(const Outlook& outlook, Day day);

}  // namespace tenthday
