/// @file lists.h  Lists of one kind, written from the open book. Taken in they are by listDialog().
#pragma once
#include <QString>
#include <string>

#include "desk/desk.h"

namespace tenthday {

/// Writes all rows of the kind, of every season, as CSV: plain, or as a spreadsheet of the user's
/// locale opens it. @param kind  one of exportKinds()
[[nodiscard]] Result<void> exportList(Desk& desk, const std::string& kind, const QString& path,
                                      bool forSpreadsheet = false);

}  // namespace tenthday
