/// @file paste_text.h  The words of taking in lines copied from a spreadsheet.
#pragma once
#include <QString>
#include <QStringList>

namespace tenthday::paste_text {

[[nodiscard]] QString pasted();
[[nodiscard]] QString pasteHere();
[[nodiscard]] QString columns();
[[nodiscard]] QString needed(const QString& name);
[[nodiscard]] QString nowhere();
/// "2: due"; the number alone without a header.
[[nodiscard]] QString cellColumn(int number, const QString& head);
[[nodiscard]] QString preview();
/// "500 of 1,234 lines shown; all are taken."
[[nodiscard]] QString shownOf(int shown, int all);
[[nodiscard]] QString line();
[[nodiscard]] QString state();
/// What a line that is good brings.
enum class Brings : std::uint8_t { New, Change, Same, TakesBack };
/// "new", "as it is already" ...
[[nodiscard]] QString brings(Brings what);
/// What is wrong with a line.
[[nodiscard]] QString wrong(const QString& trouble);
[[nodiscard]] QString nothing();
[[nodiscard]] QString unreadable(const QString& why);
[[nodiscard]] QString missing(const QStringList& columns);
/// "Due: why", of a cell of that column.
[[nodiscard]] QString inColumn(const QString& column, const QString& why);
[[nodiscard]] QString isMissing();
/// "line 3: why".
[[nodiscard]] QString lineAnd(int line, const QString& why);
/// @param first  the first line that cannot be, and why
[[nodiscard]] QString troubled(int bad, int all, const QString& first);
/// What lines bring, by how many of them.
struct Sums {
    int fresh = 0;
    int changed = 0;
    int same = 0;
    int takenBack = 0;
};
[[nodiscard]] QString good(const Sums& sums);
/// The same, and heads of columns that are not read.
[[nodiscard]] QString goodBut(const QString& good, const QStringList& heads);
/// While somebody still types: what there is was read only now.
[[nodiscard]] QString lookAgain();
[[nodiscard]] QString nothingNew();
/// Of lists that are taken in one after the other: "Make-ups (1 of 2)".
[[nodiscard]] QString partOf(const QString& list, int number, int all);
/// On the button that goes to the next of several lists.
[[nodiscard]] QString goOn();
/// One of several lists was given up.
[[nodiscard]] QString gaveUp();
[[nodiscard]] QString readOnly();
/// Head of the column with the number of a row.
[[nodiscard]] QString row();

/// What a cell may say for yes, and for no.
[[nodiscard]] QStringList yesWords();
[[nodiscard]] QStringList noWords();
[[nodiscard]] QString notKnown(const QString& typed, const QStringList& known);
[[nodiscard]] QString noSuchRow();
[[nodiscard]] QString twice();
/// A name that fits several rows of the table.
[[nodiscard]] QString severalRows();
[[nodiscard]] QString takeInLines(int lines);
[[nodiscard]] QString notADay(const QString& typed);
[[nodiscard]] QString notANumber(const QString& typed);

}  // namespace tenthday::paste_text
