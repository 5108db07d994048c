/// @file table_note.h  A line of words over the foot of a table, for what a key cannot do there.
#pragma once
#include <QString>

class QTableView;

namespace tenthday {

/// Shows the words, also to screen readers, until the next key or click in the table.
void showNote(QTableView& table, const QString& words);

/// What is shown over the table now; empty where nothing is.
[[nodiscard]] QString noteOn(const QTableView& table);

}  // namespace tenthday
