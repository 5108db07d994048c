/// @file lists.h  Lists of one kind as files: taken into the open book, and written from it.
#pragma once
#include <QString>
#include <memory>
#include <string>

#include "desk/desk.h"

namespace tenthday {

/// Takes what `exportList` writes, all or nothing, as one undo step. A list that speaks of batches
/// of other seasons than the one shown goes into the file as a whole; undo begins anew then.
/// @param kind  one of exportKinds()
/// @return rows that came or changed. An Error of the list's content begins with its path.
[[nodiscard]] Result<int> importList(Desk& desk, const std::string& kind, const QString& path);

/// The book with the batches of all seasons: what a list is judged against.
[[nodiscard]] Result<std::shared_ptr<const Snapshot>> allSeasons(Desk& desk);
/// Takes an edit made from them, as importList() does.
[[nodiscard]] Result<void> takeList(Desk& desk, const Snapshot& all, const ChangeSet& changes);

/// Writes all rows of the kind, of every season, as CSV: plain, or as a spreadsheet of the user's
/// locale opens it.
[[nodiscard]] Result<void> exportList(Desk& desk, const std::string& kind, const QString& path,
                                      bool forSpreadsheet = false);

}  // namespace tenthday
