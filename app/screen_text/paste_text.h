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
/// What is wrong; else "new", "says nothing new" or "changes one".
[[nodiscard]] QString lineState(const QString& trouble, bool isNew, bool isSame = false);
[[nodiscard]] QString nothing();
[[nodiscard]] QString unreadable(const QString& why);
[[nodiscard]] QString missing(const QStringList& columns);
/// "line 3: why".
[[nodiscard]] QString lineAnd(int line, const QString& why);
/// @param first  the first line that cannot be, and why
[[nodiscard]] QString troubled(int bad, int all, const QString& first);
[[nodiscard]] QString good(int fresh, int changed, int same);
[[nodiscard]] QString nothingNew();
/// Of lists that are taken in one after the other: "Make-ups (1 of 2)".
[[nodiscard]] QString partOf(const QString& list, int number, int all);
[[nodiscard]] QString readOnly();

/// What a cell may say for yes, and for no.
[[nodiscard]] QStringList yesWords();
[[nodiscard]] QStringList noWords();
[[nodiscard]] QString notKnown(const QString& typed, const QStringList& known);
[[nodiscard]] QString noSuchRow();
[[nodiscard]] QString twice();
[[nodiscard]] QString takeInLines(int lines);
[[nodiscard]] QString notADay(const QString& typed);
[[nodiscard]] QString notANumber(const QString& typed);

}  // namespace tenthday::paste_text
