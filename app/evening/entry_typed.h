/// @file entry_typed.h  What the cells of a pasted line mean for a row of the evening page. Inner
/// to the room.
#pragma once
#include "evening/evening_verbs.h"
#include "paste/table_lines.h"

namespace tenthday {

struct EntryTyped {
    enum class Says : std::uint8_t { Nothing, Something, CannotBeRead };
    Says says = Says::Nothing;               ///< nothing new: what the row holds already
    QString trouble = {};                    ///< where it cannot be read
    std::optional<EveningInput> input = {};  ///< none: what the row holds is taken back
};

/// Reads `entered`, `hour` and `note`, as far as they are there: numbers, words of the page, its
/// keys, or tokens.
[[nodiscard]] EntryTyped entryTyped(const EveningRow& row, const PastedLine& line, Day day,
                                    const std::string& queenNumbers);

/// The page's words for a look that was typed as a key, token or word; else what was typed.
[[nodiscard]] QString lookInWords(const QString& typed);

}  // namespace tenthday
