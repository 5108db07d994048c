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
QString brings(Brings what) {
    switch (what) {
        case Brings::New:
            return Words::tr("new");
        case Brings::Change:
            return Words::tr("changes what is there");
        case Brings::Same:
            return Words::tr("as it is already");
        case Brings::TakesBack:
            return Words::tr("takes back what is there");
    }
    return {};
}
QString wrong(const QString& trouble) { return Words::tr("! %1").arg(trouble); }
QString nothing() { return Words::tr("There are no lines yet."); }
QString unreadable(const QString& why) { return Words::tr("This cannot be read: %1").arg(why); }
QString missing(const QStringList& columns) {
    return Words::tr("Say on the left where this is found: %1.")
        .arg(columns.join(QStringLiteral(", ")));
}
QString inColumn(const QString& column, const QString& why) {
    return Words::tr("%1: %2").arg(column, why);
}
QString isMissing() { return Words::tr("this is missing"); }
QString lineAnd(int line, const QString& why) {
    return Words::tr("line %1: %2").arg(line).arg(why);
}
QString troubled(int bad, int all, const QString& first) {
    return Words::tr("Of %1 lines %2 cannot be taken; none is until all can. First: %3")
        .arg(all)
        .arg(bad)
        .arg(first);
}
QString good(const Sums& sums) {
    const auto number = [](int lines) { return chart_text::number(lines); };
    auto text = sums.changed == 0 ? Words::tr("All good: %1 new.").arg(number(sums.fresh))
                                  : Words::tr("All good: %1 new, %2 that change what is there.")
                                        .arg(number(sums.fresh), number(sums.changed));
    if (sums.takenBack > 0)
        text = Words::tr("%1 Taken back: %2.").arg(text, number(sums.takenBack));
    return sums.same == 0 ? text : Words::tr("%1 Said already: %2.").arg(text, number(sums.same));
}
QString goodBut(const QString& good, const QStringList& heads) {
    if (heads.isEmpty()) return good;
    return Words::tr("%1 Not read: %2.").arg(good, heads.join(QStringLiteral(", ")));
}
QString lookAgain() {
    return Words::tr("What you typed was read only now. Look at the lines, then take them in.");
}
QString nothingNew() { return Words::tr("These lines say nothing new."); }
QString partOf(const QString& list, int number, int all) {
    return Words::tr("%1 (%2 of %3)").arg(list).arg(number).arg(all);
}
QString goOn() { return Words::tr("Go on"); }
QString gaveUp() { return Words::tr("Nothing was taken in, of the lists before neither."); }
QString row() { return Words::tr("Row"); }
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
QString severalRows() {
    return Words::tr("twice in the table: say which, with a line for each of these rows");
}
QString takeInLines(int lines) { return season_text::takeInLines(lines); }
QString notADay(const QString& typed) {
    return Words::tr("\"%1\" is no day; 2027-05-01 is one").arg(typed);
}
QString notANumber(const QString& typed) {
    return Words::tr("\"%1\" is no number that can stand here").arg(typed);
}

}  // namespace tenthday::paste_text
