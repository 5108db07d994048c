#include "screen_text/paste_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/season_text.h"
#include "screen_text/words.h"

namespace tenthday::paste_text {

QString pasted() { return Words::tr("Copied lines"); }
QString pasteHere() {
    return Words::tr("Copy lines in your spreadsheet and paste them here with Ctrl+V.");
}
QString columns() { return Words::tr("Where is what?"); }
QString needed(const QString& name) { return Words::tr("%1 (needed)").arg(name); }
QString nowhere() { return Words::tr("not there"); }
QString cellColumn(int number, const QString& head) {
    return head.isEmpty() ? Words::tr("column %1").arg(number)
                          : Words::tr("%1: %2").arg(QString::number(number), head);
}
QString preview() { return Words::tr("Lines as they were read"); }
QString shownOf(int shown, int all) {
    return Words::tr("%1 of %2 lines are shown; all of them are taken in.")
        .arg(chart_text::number(shown), chart_text::number(all));
}
QString line() { return Words::tr("Line"); }
QString state() { return Words::tr("What it brings"); }
QString lineState(const QString& trouble, bool isNew, bool isSame) {
    if (!trouble.isEmpty()) return Words::tr("! %1").arg(trouble);
    if (isSame) return Words::tr("as it is already");
    return isNew ? Words::tr("new") : Words::tr("changes what is there");
}
QString nothing() { return Words::tr("There are no lines yet."); }
QString unreadable(const QString& why) { return Words::tr("This cannot be read: %1").arg(why); }
QString missing(const QStringList& columns) {
    return Words::tr("Say on the left where this is found: %1.")
        .arg(columns.join(QStringLiteral(", ")));
}
QString lineAnd(int line, const QString& why) {
    return Words::tr("line %1: %2").arg(line).arg(why);
}
QString troubled(int bad, int all, const QString& first) {
    return Words::tr("Of %1 lines %2 cannot be taken; none is until all can. First: %3")
        .arg(all)
        .arg(bad)
        .arg(first);
}
QString good(int fresh, int changed, int same) {
    const auto news =
        changed == 0
            ? Words::tr("All good: %1 new.").arg(fresh)
            : Words::tr("All good: %1 new, %2 that change what is there.").arg(fresh).arg(changed);
    return same == 0 ? news : Words::tr("%1 Said already: %2.").arg(news, chart_text::number(same));
}
QString nothingNew() { return Words::tr("These lines say nothing new."); }
QString partOf(const QString& list, int number, int all) {
    return Words::tr("%1 (%2 of %3)").arg(list).arg(number).arg(all);
}
QString readOnly() {
    return Words::tr("The book is open for reading only: nothing can be pasted.");
}

QStringList yesWords() {
    return {QStringLiteral("x"), QStringLiteral("1"), Words::tr("yes"), QStringLiteral("yes")};
}
QStringList noWords() { return {QStringLiteral("0"), Words::tr("no"), QStringLiteral("no")}; }
QString notKnown(const QString& typed, const QStringList& known) {
    return Words::tr("\"%1\" is none of these: %2").arg(typed, known.join(QStringLiteral(", ")));
}
QString noSuchRow() { return Words::tr("no line of the table has these names"); }
QString twice() { return Words::tr("this stands twice in what was pasted"); }
QString takeInLines(int lines) { return season_text::takeInLines(lines); }
QString notADay(const QString& typed) {
    return Words::tr("\"%1\" is no day; 2027-05-01 is one").arg(typed);
}
QString notANumber(const QString& typed) {
    return Words::tr("\"%1\" is no number that can stand here").arg(typed);
}

}  // namespace tenthday::paste_text
