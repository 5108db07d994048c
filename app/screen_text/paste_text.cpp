#include "screen_text/paste_text.h"

#include "screen_text/chart_text.h"
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
QString lineState(const QString& trouble, bool isNew) {
    if (!trouble.isEmpty()) return Words::tr("! %1").arg(trouble);
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
QString good(int fresh, int changed) {
    return changed == 0 ? Words::tr("All good: %1 new.").arg(fresh)
                        : Words::tr("All good: %1 new, %2 that change what is there.")
                              .arg(fresh)
                              .arg(changed);
}
QString nothingNew() { return Words::tr("These lines say nothing new."); }

}  // namespace tenthday::paste_text
