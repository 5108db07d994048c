/// @file evening_paste.h  The evening page as lines of a spreadsheet, both ways.
#pragma once
#include "evening/evening_model.h"
#include "paste/paste_dialog.h"

namespace tenthday {

/// Every row that takes an entry, beside the task it belongs to.
[[nodiscard]] QString copiedEvening(const EveningModel& model);

/// Counts, looks, catches, cells that went in and ticks, line by line, each judged as if those
/// before it were entered. An empty cell takes back what was entered.
/// @param queenNumbers  pattern of the numbers that caught queens get; empty: none
[[nodiscard]] PasteKind eveningToPaste(const EveningModel& model, const QString& queenNumbers);

/// What was pasted, a column alone beside the rows from this one on that take an entry: numbers,
/// with their head or without, beside those that take a count.
[[nodiscard]] QString eveningPasteText(const EveningModel& model, int fromRow,
                                       const QString& pasted);

}  // namespace tenthday
