/// @file table_keys.h  The keys for copying and pasting in a table.
#pragma once
#include <QString>
#include <functional>

class QTableView;

namespace tenthday {

/// What the keys do.
struct TableKeys {
    /// Goes into the clipboard; null goes nowhere.
    std::function<QString()> copied;
    std::function<void()> paste;
};
/// The keys given last hold.
void setTableKeys(QTableView& table, TableKeys keys);

/// Does what the keys for pasting do in the table.
void pasteInto(QTableView& table);

/// In a table of what is reckoned the keys for pasting say so, and where it can be changed.
/// Copied is what it shows.
void sayNoPaste(QTableView& table, std::function<QString()> why);

}  // namespace tenthday
