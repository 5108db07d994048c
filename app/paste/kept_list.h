/// @file kept_list.h  Lists of things the book keeps: what is copied from one pastes into a
/// spreadsheet, and back.
///
/// They copy what `export` writes of them, not what they show: only that can be read again. Lists
/// of what is reckoned copy what they show (table_copy.h).
#pragma once
#include <QString>
#include <functional>
#include <string>
#include <vector>

#include "desk/desk.h"

class QTableView;

namespace tenthday {

/// What a list shows now.
struct KeptList {
    /// Of exportKinds(): those its things are lines of.
    std::vector<std::string> kinds;
    /// What the first column of export says in the lines of the thing in a row of the table: ids,
    /// or its day.
    std::function<std::vector<std::string>(int row)> keys;
};

/// Lines of these things with heads, kind after kind, parted by tabs; decimals as the user's locale
/// writes them. @param book  of all seasons
[[nodiscard]] QString copiedText(const Snapshot& book, const std::vector<std::string>& kinds,
                                 const std::vector<std::string>& keys);

/// Lines of one kind.
struct PastedPart {
    std::string kind;
    std::string text;
};
/// What is pasted, by its heads; without any all of it is of the first kind.
[[nodiscard]] std::vector<PastedPart> partsByKind(const std::string& text,
                                                  const std::vector<std::string>& kinds);

/// Gives the list the keys for copying and pasting. What is pasted is looked at first, kind by
/// kind, and taken in as one edit, or not at all where one kind is given up.
/// @param desk  must outlive the table
void keepList(Desk& desk, QTableView& table, std::function<KeptList()> list);

}  // namespace tenthday
