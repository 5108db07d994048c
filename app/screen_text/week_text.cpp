#include "screen_text/week_text.h"

#include <QLocale>
#include <QTime>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/sheet_text.h"
#include "screen_text/words.h"

namespace tenthday::week_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString joined(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

bool areVirgins(const Outlook& outlook, const Task& task) {
    const auto row = task.batch ? outlook.snapshot.find(*task.batch) : nullptr;
    return row && row->start == Start::Virgin;
}

/// Such tasks have neither batch nor builder.
bool isOfOrder(TaskRule rule) { return rule == TaskRule::CageQueens || rule == TaskRule::Deliver; }

}  // namespace

QString pageEntry() { return Words::tr("Wee&k"); }
QString newTaskEntry() { return Words::tr("New &task of your own ..."); }

QString head(IsoWeek week) {
    return Words::tr("%1 · %2").arg(sheet_text::week(week), sheet_text::daysOfWeek(week));
}

QString summary(int tasks, int must, int done) {
    if (tasks == 0) return Words::tr("Nothing to do in this week.");
    const auto all = Words::tr("%Ln task(s)", nullptr, tasks);
    return Words::tr("%1  ·  %2 must be done on their day  ·  %3 done")
        .arg(all, chart_text::number(must), chart_text::number(done));
}

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("No.");
        case 1:
            return Words::tr("Done");
        case 2:
            return Words::tr("Task");
        case 3:
            return Words::tr("About");
        case 4:
            return Words::tr("Count");
        case 5:
            return Words::tr("Yard");
        case 6:
            return Words::tr("Must");
        default:
            return Words::tr("When");
    }
}

QString dayHead(Day day, bool isToday, bool isEmpty) {
    auto text = longDay(day);
    if (isToday) text = Words::tr("%1, today").arg(text);
    return isEmpty ? Words::tr("%1  ·  %2").arg(text, sheet_text::nothing()) : text;
}

QString dayHead() { return Words::tr("Day"); }
QString givenHead() { return Words::tr("Given to"); }
QString pastedName() { return Words::tr("ticks and initials of tasks"); }

QString stillOpen(int tasks) {
    return Words::tr("Still open: %Ln task(s) from before today", nullptr, tasks);
}

QString kind(TaskRule rule) {
    switch (rule) {
        case TaskRule::CellsOut:
            return Words::tr("Cells out");
        case TaskRule::CellsIn:
            return Words::tr("Cells into nucs");
        case TaskRule::CageCells:
            return Words::tr("Cage cells in place");
        case TaskRule::FreeBreeder:
            return Words::tr("Free the breeder queen");
        case TaskRule::Confine:
            return Words::tr("Confine the breeder queen");
        case TaskRule::MakeUpBuilder:
            return Words::tr("Make up the builder");
        case TaskRule::Feed:
            return Words::tr("Feed the builder");
        case TaskRule::Graft:
            return Words::tr("Graft");
        case TaskRule::TakeCount:
            return Words::tr("Count the started cells");
        case TaskRule::MoveCells:
            return Words::tr("Move the cells on");
        case TaskRule::FirstWildLook:
            return Words::tr("Look for wild cells");
        case TaskRule::SecondWildLook:
            return Words::tr("Look again for wild cells");
        case TaskRule::FirstLook:
            return Words::tr("First look");
        case TaskRule::CatchQueens:
            return Words::tr("Catch queens");
        case TaskRule::CageQueens:
            return Words::tr("Cage queens for orders");
        case TaskRule::Deliver:
            return Words::tr("Deliver orders");
        case TaskRule::StockNucs:
            return Words::tr("Stock nucs");
        case TaskRule::ToStation:
            return Words::tr("Nucs to the mating station");
        case TaskRule::FromStation:
            return Words::tr("Nucs back from the mating station");
        case TaskRule::Inseminate:
            return Words::tr("Inseminate queens");
        case TaskRule::DroneComb:
            return Words::tr("Put drone comb in");
        case TaskRule::Own:
            return Words::tr("Tasks of your own");
    }
    return {};
}

QString task(const Outlook& outlook, const Task& task) {
    if (task.key.rule == TaskRule::Own) return plain(task.subjectLabel);
    if (task.key.rule == TaskRule::CellsIn && areVirgins(outlook, task))
        return Words::tr("Virgins into nucs");
    return kind(task.key.rule);
}

QString subject(const Outlook& outlook, const Task& task) {
    const auto batch = task.batch ? outlook.snapshot.find(*task.batch) : nullptr;
    const auto builder = task.builder ? outlook.snapshot.find(*task.builder) : nullptr;
    if (!batch && !builder && isOfOrder(task.key.rule))
        return Words::tr("order %1").arg(plain(task.subjectLabel));
    return joined({batch ? Words::tr("batch %1").arg(plain(batch->label)) : QString(),
                   builder ? plain(builder->label) : QString()});
}

QString count(const Task& task) {
    return task.count > 0 ? chart_text::number(task.count) : QString();
}

QString must(const Task& task) { return task.must ? Words::tr("this day") : QString(); }

QString when(const Task& task, bool withDay) {
    const auto hour = task.hour
                          ? QLocale().toString(QTime(task.hour->value, 0), QStringLiteral("H:mm"))
                          : QString();
    if (task.done) return Words::tr("done %1").arg(weekdayAndDay(*task.done));
    return joined({withDay ? weekdayAndDay(task.day) : QString(), hour,
                   task.window.last > task.day
                       ? Words::tr("until %1").arg(weekdayAndDay(task.window.last))
                       : QString()});
}

QString weekBefore() { return Words::tr("The week before (Page up)"); }
QString weekAfter() { return Words::tr("The week after (Page down)"); }
QString thisWeek() { return Words::tr("This week"); }
QString print() { return Words::tr("&Print ..."); }
QString newTask() { return Words::tr("N&ew task ..."); }
QString change() { return Words::tr("&Change ..."); }
QString remove() { return Words::tr("&Delete"); }
QString whyButton() { return Words::tr("All dates of the batch (W)"); }
QString chooseTask() {
    return Words::tr("Choose a task: here stands which rule it comes from and what sets its day.");
}
QString doneByRecord() {
    return Words::tr("This is done by what was recorded in the book, not by a tick.");
}

QString newTaskHead() { return Words::tr("New task of your own"); }
QString changeTaskHead() { return Words::tr("Change the task"); }
QString text() { return Words::tr("&What is to be done"); }
QString day() { return Words::tr("&Day"); }
QString yard() { return Words::tr("&Yard"); }
QString noYard() { return Words::tr("no particular yard"); }
QString mustBox() { return Words::tr("&must be done on this very day"); }
QString textNeeded() { return Words::tr("Write what is to be done."); }

}  // namespace tenthday::week_text
