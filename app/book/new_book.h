/// @file new_book.h  What a new book begins with.
#pragma once
#include "calendar/window.h"
#include "records/change_set.h"

namespace tenthday {

struct BookPlan {
    std::string label;  ///< name of the operation, not empty
    Hemisphere hemisphere = Hemisphere::North;
    DayWindow season;       ///< the first one
    std::string firstYard;  ///< empty: none
};

/// The season that is usual on a hemisphere in the year of `today`: 1 March to 31 October in the
/// north, 1 September to 30 April in the south, of those the one that runs or comes next.
[[nodiscard]] BookPlan planFor(const std::string& label, Day today,
                               Hemisphere hemisphere = Hemisphere::North);

/// The operation's row, its season, the first yard if there is one, and the built-in methods.
[[nodiscard]] ChangeSet newBookContent(const BookPlan& plan);

}  // namespace tenthday
