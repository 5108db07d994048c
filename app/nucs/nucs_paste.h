/// @file nucs_paste.h  The nucs of a day as lines of a spreadsheet, both ways: what each is, and
/// with what it is stocked on that day.
#pragma once
#include "nucs/nucs_model.h"
#include "paste/paste_dialog.h"

class QTableView;

namespace tenthday {

/// What the table shows of its rows, and what each nuc is stocked with on the model's day.
/// @param rowOf  the model's row behind a row of the table
[[nodiscard]] QString copiedNucs(const QTableView& table, const NucsModel& model,
                                 const std::function<int(int)>& rowOf);

/// Bees, brood and donor, entered for the model's day. All else is reckoned: it names the nuc or is
/// not looked at. A line without any of these leaves its nuc alone; one that is emptied of a
/// stocking is refused: that is deleted in the list of stockings.
[[nodiscard]] PasteKind nucsToPaste(const NucsModel& model);

}  // namespace tenthday
