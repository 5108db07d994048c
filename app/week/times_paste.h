/// @file times_paste.h  Minutes of work and of ways as lines of a spreadsheet, both ways.
#pragma once
#include "paste/paste_dialog.h"

namespace tenthday {

/// @param book  with the times as they stand in the dialog
[[nodiscard]] QString copiedWorks(const Snapshot& book);
[[nodiscard]] QString copiedWays(const Snapshot& book);

/// An empty line takes the user's own times back. The edit is of the book given here.
[[nodiscard]] PasteKind worksToPaste(const Snapshot& book);
[[nodiscard]] PasteKind waysToPaste(const Snapshot& book);
/// Whether a text has the heads of ways, else it is of works.
[[nodiscard]] bool areWays(const QString& pasted);

}  // namespace tenthday
