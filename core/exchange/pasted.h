/// @file pasted.h  Lines copied out of a spreadsheet, taken in as rows of one kind.
///
/// Spreadsheets put tabs between the cells they copy; files come with commas or semicolons. A cell
/// that holds any of these, a quote or a line end stands in quotes.
#pragma once
#include <optional>

#include "exchange/import.h"

namespace tenthday {

/// Cells by line, every line as long as the longest.
struct PastedCells {
    std::vector<std::vector<std::string>> lines;
    std::size_t columns = 0;

    [[nodiscard]] bool isEmpty() const { return lines.empty(); }
};

/// Reads what was pasted: parted by tabs if its first line holds one, else by semicolons if it
/// holds more of them than commas, else by commas. LF, CRLF or CR end a line; blank lines are
/// passed over. Cells without quotes lose spaces at both ends. Bytes that are no UTF-8 are refused,
/// and a quote that is never closed.
[[nodiscard]] Result<PastedCells> readPasted(std::string_view text);

/// Cells parted by tabs, as a spreadsheet takes them in.
void appendPasted(std::string& text, const std::vector<std::string>& cells);

struct RowCounts {
    std::size_t fresh = 0;
    std::size_t changed = 0;
};

/// What a list of lines would bring.
struct PastedEdit {
    ChangeSet changes;  ///< of all lines together; empty while any of them is in trouble
    /// By line: what is wrong with it, without its number; empty where nothing is.
    std::vector<std::string> troubles;
    std::vector<bool> isNew;      ///< by line: a row that is not there yet, else one that changes
    std::vector<bool> isSame;     ///< by line: it says what is there already; may be shorter
    std::vector<bool> takesBack;  ///< by line: it takes back what is there; may be shorter
    /// Of all lines together, where they are too many to be told apart one by one; what stands
    /// above by line is empty then, but for troubles.
    std::optional<RowCounts> counts;

    [[nodiscard]] bool isGood() const;
};

/// Takes in lines of one kind, all or nothing.
/// @param columns  of the kind, for each cell of a line; of orders also those of their terms, which
///                 are a row beside theirs: it is left alone where a line says nothing of them
[[nodiscard]] PastedEdit editOf(const Snapshot& snapshot, std::string_view kind,
                                const std::vector<std::string>& columns,
                                const std::vector<std::vector<std::string>>& lines,
                                const IdSource& newId);

}  // namespace tenthday
