/// @file table_lines.h  Lines of a table of what is reckoned, of which some columns can be changed:
/// copied with heads, and pasted back line by line.
#pragma once
#include <functional>
#include <map>

#include "paste/named_rows.h"
#include "paste/paste_dialog.h"

class QTableView;

namespace tenthday {

/// A line as it was pasted, by the columns that are there.
class PastedLine {
public:
    PastedLine(const std::vector<std::string>& columns, const std::vector<std::string>& cells);
    [[nodiscard]] bool has(const std::string& column) const { return cells_.contains(column); }
    /// Empty where the column is not there.
    [[nodiscard]] QString operator[](const std::string& column) const;

private:
    std::map<std::string, QString> cells_;
};

/// What became of a line.
struct LineJudged {
    QString trouble = {};    ///< empty where nothing is wrong
    bool changes = false;    ///< it says something else than the table
    bool isNew = false;      ///< it brings a row that was not there
    bool takesBack = false;  ///< an empty cell of it takes back what is entered
};

/// What all lines would bring, each judged by itself.
/// @param judge  adds what the line brings to the edit
[[nodiscard]] PastedEdit editLineByLine(
    const std::vector<std::string>& columns, const std::vector<std::vector<std::string>>& lines,
    const std::function<LineJudged(const PastedLine&, ChangeSet&)>& judge);

/// The column in which lines name their row by its number.
inline constexpr const char* kRowColumn = "row";
[[nodiscard]] PasteColumn rowColumn();

/// The same, of lines that are meant for rows of a table.
/// @param names  columns that name a row, as `rows` was told
/// @param judge  of a line and its row
[[nodiscard]] PastedEdit editNamedLines(
    const std::vector<std::string>& columns, const std::vector<std::vector<std::string>>& lines,
    const NamedRows& rows, const std::vector<std::string>& names,
    const std::function<LineJudged(int row, const PastedLine&, ChangeSet&)>& judge);

/// Appends a line of these cells to a copied text.
void appendCells(std::string& text, const QStringList& cells);

/// The number says no more than tenths, which are what is kept.
[[nodiscard]] bool areTenths(double number);

/// How a cell that answers yes or no was meant.
enum class TickTyped : std::uint8_t { Yes, No, Other };
/// "x", "yes", "1" or one of these words is yes; "no", "0" or nothing is no.
[[nodiscard]] TickTyped tickTyped(const QString& typed, const QStringList& yes = {});

/// What the clipboard holds as the text of a paste dialog: as it is where it has several columns. A
/// column alone, with its head or without, is put beside the names of rows, from the first on; a
/// line without a value passes over its row.
/// @param heads  of the number and the names of a row, and of the column
/// @param names  numbers and names of rows, as many as can take a value
[[nodiscard]] QString besideNames(const QString& pasted, const QStringList& heads,
                                  const std::vector<QStringList>& names);

/// The values of a column alone, with its head if it has one; nothing where there are several.
[[nodiscard]] QStringList columnAlone(const QString& pasted);

/// A table whose lines can be pasted back.
struct TableLines {
    std::function<QString()> copied;
    /// Of what is pasted; called when the keys for pasting are pressed.
    std::function<PasteKind()> kind;
    /// The text the dialog begins with.
    std::function<QString(const QString& pasted)> text = {};
    /// None: what is taken is an edit of the book.
    PasteDialog::Save save = {};
};
/// Gives the table the keys for copying and pasting. @param desk  must outlive the table
void setTableLines(Desk& desk, QTableView& table, TableLines lines);

}  // namespace tenthday
