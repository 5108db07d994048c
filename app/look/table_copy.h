/// @file table_copy.h  Tables as text: what is copied from any list pastes into a spreadsheet.
#pragma once
#include <QString>
#include <vector>

class QTableView;

namespace tenthday {

/// The rows that are copied: those chosen, all that are shown where at most one is.
[[nodiscard]] std::vector<int> copiedRows(const QTableView& table);

/// Heads and the chosen rows (all of them where at most one is chosen), columns as they stand,
/// those hidden left out; tabs between cells, quotes where a cell holds one, a tab or a line end.
[[nodiscard]] QString textOf(const QTableView& table);

/// The keys for copying put textOf() into the clipboard. A page that copies by itself goes first.
void makeCopyable(QTableView& table);

}  // namespace tenthday
