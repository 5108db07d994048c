/// @file example.h  An invented operation in the middle of its season, to look at and to try.
#pragma once
#include "records/change_set.h"

namespace tenthday {

/// All rows of a new book, made from the CSV files of resources/example by the same import that
/// users' files go through. Ids are fixed, so every call gives the same; today is stored.
[[nodiscard]] ChangeSet exampleContent();

}  // namespace tenthday
