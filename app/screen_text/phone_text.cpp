#include "screen_text/phone_text.h"

#include "screen_text/dates.h"
#include "screen_text/sheet_text.h"
#include "screen_text/words.h"

namespace tenthday::phone_text {
namespace {

/// On paper a look has something to circle; on the phone its nucs are wanted.
bool isForPaper(const Task& task) { return task.key.rule == TaskRule::FirstLook && !task.done; }

QString plainSummary(const Outlook& outlook, const Task& task) {
    if (!isForPaper(task)) return sheet_text::what(outlook, task);
    return Words::tr("First look, batch %1").arg(QString::fromStdString(task.subjectLabel));
}

}  // namespace

QString summary(const Outlook& outlook, const Task& task) {
    const auto text = plainSummary(outlook, task);
    return task.done ? Words::tr("✓ %1").arg(text) : text;
}

QString details(const Outlook& outlook, const Task& task) {
    const bool nucsAlone = task.done || isForPaper(task);
    QStringList lines{nucsAlone ? sheet_text::nucs(task) : sheet_text::how(outlook, task)};
    if (task.done)
        lines += Words::tr("Done on %1.").arg(weekdayAndDay(*task.done));
    else if (task.must)
        lines += Words::tr("Must be done on this day.");
    lines.removeAll(QString());
    return lines.join(u'\n');
}

QString entry() { return Words::tr("Calendar for the &phone ..."); }
QString what() {
    return Words::tr(
        "Writes the season's tasks into a calendar file that phones and calendar programs read. An "
        "alarm rings for what must be done on its day, and on the last day for what can wait.");
}
QString file() { return Words::tr("&File"); }
QString chooseFile() { return Words::tr("&Choose ..."); }
QString calendarFiles() { return Words::tr("Calendars (*.ics)"); }
QString tasks() { return Words::tr("Which tasks"); }
QString all() { return Words::tr("&All"); }
QString none() { return Words::tr("&None"); }
QString times() { return Words::tr("When"); }
QString withHours() { return Words::tr("at their &hour, where they have one"); }
QString allDay() { return Words::tr("on their &day, without hours"); }
QString keep() { return Words::tr("&Keep the file up to date"); }
QString keepMeans() {
    return Words::tr(
        "It is written anew whenever the book has changed. Put it into a folder that your phone "
        "shares, and the phone follows: what moves is moved there, what falls away is marked as "
        "cancelled.");
}
QString keptAlready() {
    return Words::tr("This file is kept up to date. Changes made here go into it at once.");
}
QString cannotKeep() {
    return Words::tr("The book is open for reading only: the file can be written once, not kept.");
}
QString write() { return Words::tr("&Write"); }
QString stopKeeping() { return Words::tr("&Stop keeping it"); }
QString needsFile() { return Words::tr("The calendar needs a file."); }
QString needsTasks() { return Words::tr("Choose one kind of task at least."); }

QString cannotWrite() { return Words::tr("The calendar cannot be written."); }
QString written(const QString& path) { return Words::tr("The calendar is in %1").arg(path); }
QString kept(const QString& path) {
    return Words::tr("The calendar is in %1 and is kept up to date there.").arg(path);
}
QString noLongerKept() {
    return Words::tr("The calendar is no longer kept up to date; its file stays as it is.");
}
QString outOfDate() { return Words::tr("Phone calendar not up to date"); }

}  // namespace tenthday::phone_text
