#include "screen_text/sheet_text.h"

#include <algorithm>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::sheet_text {

QStringList sumOfCells(const QStringList& yards) {
    QStringList parts{Words::tr("out")};
    parts += yards;
    return parts + QStringList{Words::tr("sold"), Words::tr("caged"), Words::tr("given away"),
                               Words::tr("culled")};
}

QStringList cautions() {
    return {
        Words::tr("Stings: trouble breathing, faintness or a rash within minutes is an emergency: "
                  "call the emergency number, use the prescribed injector. Do not work alone."),
        Words::tr("Full boxes: two people. Smoker: never on dry grass. Treatments: follow the "
                  "label and the local rules. Before bees or queens are moved or sold: ask the bee "
                  "inspector."),
        Words::tr("Black bar: must be done this day. Leave nucs with virgins alone from 11:00 to "
                  "16:00.")};
}

QString cannotPrint() {
    return Words::tr(
        "This could not be printed whole. See whether the printer is ready, or whether "
        "the file can be written.");
}
QString week(IsoWeek week) { return Words::tr("Week %1").arg(chart_text::number(week.week)); }

QString weekOf(IsoWeek of, const QString& who) {
    return who.isEmpty() ? week(of) : Words::tr("%1 · %2").arg(week(of), who);
}
QString givenTo(const QString& who) {
    return who.isEmpty() ? QString() : Words::tr("for %1").arg(who);
}
QString with(const QString& words, const QString& more) {
    if (words.isEmpty() || more.isEmpty()) return words + more;
    return Words::tr("%1; %2").arg(words, more);
}
QString toNobody(int tasks) {
    return Words::tr("%Ln task(s) of this week are given to nobody and not on this sheet.", nullptr,
                     tasks);
}
namespace {

/// With no-break spaces from the first digit on: a time is never broken over two lines.
QString unbroken(QString time) {
    const auto digit =
        std::find_if(time.cbegin(), time.cend(), [](QChar c) { return c.isDigit(); });
    const auto from = digit - time.cbegin();
    return time.left(from) + time.mid(from).replace(u' ', QChar(QChar::Nbsp));
}

}  // namespace

QString hours(int minutes) {
    if (minutes < 60) return unbroken(Words::tr("about %1 min").arg(chart_text::number(minutes)));
    return unbroken(Words::tr("about %1 h %2")
                        .arg(chart_text::number(minutes / 60))
                        .arg(minutes % 60, 2, 10, QLatin1Char('0')));
}
QString hoursExplained(bool own, bool driven) {
    const auto work =
        own ? Words::tr("Hours: by your own times for each kind of task")
            : Words::tr("Hours: by common practice where no times of your own are set");
    return driven ? Words::tr("%1, and the driving.").arg(work)
                  : Words::tr("%1; ways without a set time count nothing.").arg(work);
}

QString daysOfWeek(IsoWeek week) {
    const auto days = daysOf(week);
    return Words::tr("%1 to %2 %3")
        .arg(shortDay(days.first), shortDay(days.last), yearNumber(days.last));
}

QString page(int number, int of) {
    return Words::tr("page %1 of %2").arg(chart_text::number(number), chart_text::number(of));
}

QString head(Day day, const QString& yard) {
    return yard.isEmpty() ? longDay(day) : Words::tr("%1 · %2").arg(longDay(day), yard);
}

QString goesOn(const QString& head) { return Words::tr("%1 (goes on)").arg(head); }
QString nothing() { return Words::tr("nothing: leave nucs shut"); }
QString nothingShort() { return Words::tr("nothing"); }
QString takeAlongHead() { return Words::tr("Take along"); }
QString notes(const QString& yard) { return Words::tr("Notes %1").arg(yard); }
QString box() { return Words::tr("box"); }
QString circles() { return Words::tr("E L S V – X"); }
QString circlesMean() {
    return Words::tr("E eggs, L larvae, S sealed brood, V virgin seen, – none yet, X gone or dead");
}
QString sumHead() { return Words::tr("Cells of this day must add up"); }
QString done() { return Words::tr("done"); }

}  // namespace tenthday::sheet_text
