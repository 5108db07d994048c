/// @file import.h  From a CSV text to an edit: what `export` gives, `import` takes.
///
/// A line is a row: by `id`, or where that is empty by its label, or by what can't stand twice.
/// A row not found is new. Nothing is ever deleted. A column the file lacks leaves a row as it
/// is; an empty field takes the value away, or puts the default back.
#pragma once
#include <string_view>

#include "base/result.h"
#include "exchange/lookup.h"
#include "records/change_set.h"

namespace tenthday {

/// All that a file of one kind brings, as one edit, or the first bad line by number and column
/// name ("line 7, column layout: ..."; the caller puts the file's name before it). The edit is
/// empty when the file says nothing new. `kind` is one of exportKinds(); asserts otherwise.
/// The snapshot must hold all seasons.
[[nodiscard]] Result<ChangeSet> importOf(const Snapshot& snapshot, std::string_view kind,
                                         std::string_view text, const IdSource& newId);

}  // namespace tenthday
