/// @file table_copy.h  A table as text, for the clipboard.
#pragma once
#include <QString>

class QTableWidget;

namespace tenthday {

/// Heads and shown rows, tabs between cells: pastes as a table anywhere.
[[nodiscard]] QString textOf(const QTableWidget& table);

}  // namespace tenthday
