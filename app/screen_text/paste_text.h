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
/// What is wrong; else "new" or "changes one".
[[nodiscard]] QString lineState(const QString& trouble, bool isNew);
[[nodiscard]] QString nothing();
[[nodiscard]] QString unreadable(const QString& why);
[[nodiscard]] QString missing(const QStringList& columns);
/// "line 3: why".
[[nodiscard]] QString lineAnd(int line, const QString& why);
/// @param first  the first line that cannot be, and why
[[nodiscard]] QString troubled(int bad, int all, const QString& first);
[[nodiscard]] QString good(int fresh, int changed);
[[nodiscard]] QString nothingNew();

}  // namespace tenthday::paste_text
