/// @file new_book.h  What a new book begins with.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// The operation's row, a season for the year of `today` (1 March to 31 October) and the built-in
/// methods. @param label  name of the operation, not empty
[[nodiscard]] ChangeSet newBookContent(const std::string& label, Day today);

}  // namespace tenthday
