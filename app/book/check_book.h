/// @file check_book.h  Looks a book through, without changing it.
#pragma once
#include <QString>
#include <string>
#include <vector>

#include "base/result.h"

namespace tenthday {

struct CheckLine {
    std::string subject;  ///< file, schema, facts, references, or a table
    bool good = true;
    std::string detail;  ///< what was found: a number of rows, or the fault
};

/// Structure of the file, schema, facts revision, references, and every row of every table.
/// A fault is a line, not an Error; an Error means that the file could not be looked at.
[[nodiscard]] Result<std::vector<CheckLine>> checkBook(const QString& path);

}  // namespace tenthday
