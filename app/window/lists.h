/// @file lists.h  Lists of one kind as files: taken into the open book, and written from it.
#pragma once
#include <QString>
#include <string>

#include "desk/desk.h"

namespace tenthday {

/// Takes what `exportList` writes, all or nothing, as one undo step. A list that speaks of batches
/// of other seasons than the one shown goes into the file as a whole; undo begins anew then.
/// @param kind  one of exportKinds()
/// @return rows that came or changed. An Error of the list's content begins with its path.
[[nodiscard]] Result<int> importList(Desk& desk, const std::string& kind, const QString& path);

/// Writes all rows of the kind, of every season, as CSV: plain, or as a spreadsheet of the user's
/// locale opens it.
[[nodiscard]] Result<void> exportList(Desk& desk, const std::string& kind, const QString& path,
                                      bool forSpreadsheet = false);

}  // namespace tenthday
