#include "screen_text/window_text.h"

#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>

#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/words.h"

namespace tenthday::window_text {
namespace {

/// The edit in the imperative, without its day.
QString editName(Verb verb, const QString& subject) {
    switch (verb) {
        case Verb::MakeBook:
            return Words::tr("make the book");
        case Verb::MoveBatch:
            return Words::tr("move batch %1").arg(subject);
        case Verb::MoveBatches:
            return Words::tr("move batches %1").arg(subject);
        case Verb::MoveBars:
            return Words::tr("move cells of batch %1").arg(subject);
        case Verb::MoveShare:
            return Words::tr("move cells of batch %1 to another yard").arg(subject);
        case Verb::SetGrafts:
            return Words::tr("change the grafts of batch %1").arg(subject);
        case Verb::AddRow:
            return Words::tr("add %1").arg(subject);
        case Verb::EditRow:
            return Words::tr("change %1").arg(subject);
        case Verb::DeleteRow:
            return Words::tr("delete %1").arg(subject);
        case Verb::Import:
            return Words::tr("import %1").arg(subject);
        case Verb::RecordOutcome:
            return Words::tr("record %1").arg(subject);
        case Verb::TickLook:
            return Words::tr("tick look at %1").arg(subject);
        case Verb::SetFact:
            if (const auto fact = fromToken<Fact>(subject.toStdString()))
                return Words::tr("set the number \"%1\"").arg(fact_text::name(*fact));
            return Words::tr("set %1").arg(subject);
        case Verb::TickTask:
            return subject.isEmpty() ? Words::tr("tick a task")
                                     : Words::tr("tick a task of %1").arg(subject);
        case Verb::PlanBatch:
            return Words::tr("plan batch %1").arg(subject);
        case Verb::EditBatch:
            return Words::tr("change batch %1").arg(subject);
        case Verb::DeleteBatch:
            return Words::tr("delete batch %1").arg(subject);
        case Verb::PlanSeason:
            return Words::tr("plan batches %1").arg(subject);
        case Verb::GiveTask:
            return subject.isEmpty() ? Words::tr("give a task to somebody")
                                     : Words::tr("give a task of %1 to somebody").arg(subject);
        case Verb::SetMinutes:
            return Words::tr("set times of work and driving");
        case Verb::CarrySeason:
            return Words::tr("carry over to season %1").arg(subject);
    }
    return subject;
}

QString withDay(Verb verb, const QString& edit, std::optional<Day> day) {
    if (!day) return edit;
    return verb == Verb::PlanBatch ? Words::tr("%1 on %2").arg(edit, weekdayAndDay(*day))
                                   : Words::tr("%1 to %2").arg(edit, weekdayAndDay(*day));
}

/// A label may hold the sign that marks a menu's key.
QString forMenu(QString text) { return text.replace(u'&', QStringLiteral("&&")); }

}  // namespace

QString title(const QString& book) {
    return book.isEmpty() ? QStringLiteral("Tenthday")
                          : Words::tr("%1 - %2").arg(book, QStringLiteral("Tenthday"));
}

QString asTitle(QString entry) { return entry.remove(u'&').remove(QStringLiteral(" ...")); }

QString fileMenu() { return Words::tr("&File"); }
QString editMenu() { return Words::tr("&Edit"); }
QString viewMenu() { return Words::tr("&View"); }
QString lookMenu() { return Words::tr("&Look"); }
QString newBook() { return Words::tr("&New book ..."); }
QString openBook() { return Words::tr("&Open a book ..."); }
QString openExample() { return Words::tr("Open the &example"); }
QString saveCopy() { return Words::tr("Save a &copy ..."); }
QString weekSheet() { return Words::tr("&Week sheet ..."); }
QString importList() { return Words::tr("&Import a list ..."); }
QString exportList() { return Words::tr("E&xport a list ..."); }
QString listFiles() { return Words::tr("Lists (*.csv)"); }
QString whichKind() { return Words::tr("What is in the list?"); }
QString kindName(const QString& kind) {
    const std::pair<const char*, QString> names[] = {
        {"seasons", Words::tr("Seasons")},
        {"yards", Words::tr("Yards")},
        {"boxes", Words::tr("Nuc boxes")},
        {"stockings", Words::tr("Bees put into nucs")},
        {"builders", Words::tr("Builders")},
        {"makeups", Words::tr("Builders made up")},
        {"buildernotes", Words::tr("Looks and brood of builders")},
        {"methods", Words::tr("Methods")},
        {"queens", Words::tr("Queens")},
        {"batches", Words::tr("Batches")},
        {"bars", Words::tr("Bars")},
        {"loads", Words::tr("Bars in builders")},
        {"shares", Words::tr("Cells for each yard")},
        {"placements", Words::tr("Cells given")},
        {"outcomes", Words::tr("What was seen and counted")},
        {"daysoff", Words::tr("Days off")},
        {"orders", Words::tr("Orders")},
        {"weather", Words::tr("Weather by day")},
        {"climate", Words::tr("Weather by month")},
        {"drones", Words::tr("Drones seen")},
        {"yardnotes", Words::tr("Flow and dearth")},
        {"matings", Words::tr("Mating stations and insemination")},
        {"owntasks", Words::tr("Own tasks")},
        {"ticks", Words::tr("Ticks of tasks")},
        {"facts", Words::tr("Trade numbers")}};
    for (const auto& [token, name] : names)
        if (kind == QLatin1String(token)) return name;
    return kind;
}
QString imported(int rows) {
    return rows == 0 ? Words::tr("The list says nothing new.")
                     : Words::tr("%Ln row(s) were taken from the list.", nullptr, rows);
}
QString exported(const QString& path) { return Words::tr("The list is in %1").arg(path); }
QString cannotImport() { return Words::tr("The list cannot be taken; nothing was changed."); }
QString cannotExport() { return Words::tr("The list cannot be written."); }
QString restoreBackup() { return Words::tr("&Restore a backup ..."); }
QString languageMenu() { return Words::tr("Lan&guage"); }
QString languageOfSystem() { return Words::tr("As the system"); }
QString languageFromNextStart() {
    return Words::tr("The window speaks it from the next start on.");
}
QString helpMenu() { return Words::tr("&Help"); }
QString eachNuc() { return Words::tr("Show eac&h nuc"); }
QString seasonPage() { return Words::tr("&Season chart"); }
QString nucsPage() { return Words::tr("Nu&cs"); }
QString factsPage() { return Words::tr("Trade &numbers"); }
QString setupPage() { return Words::tr("Set-&up"); }
QString pages() { return Words::tr("Pages"); }
QString keys() { return Words::tr("&Keys"); }
QString whichBackup() {
    return Words::tr(
        "Which backup shall take the place of the book? The book as it is now is kept.");
}
QString noBackups() { return Words::tr("There is no backup of this book yet."); }
QString restoreNow() { return Words::tr("Restore"); }
QString cancel() { return Words::tr("Cancel"); }
QString restored(const QString& kept) {
    return kept.isEmpty() ? Words::tr("The backup is restored.")
                          : Words::tr("The backup is restored. The book as it was: %1").arg(kept);
}
QString cannotRestore() { return Words::tr("The backup cannot be restored."); }
QString restoreDamaged(const QString& backup) {
    return Words::tr("Shall the newest good backup take its place? The damaged file is kept. %1")
        .arg(backup);
}
QString backupName(const QString& backupPath) {
    static const QRegularExpression dayAndRest(
        QStringLiteral("-(\\d{4}-\\d\\d-\\d\\d)(-before-(?:schema|restore)-\\d+)?$"));
    const auto name = QFileInfo(backupPath).completeBaseName();
    const auto found = dayAndRest.match(name);
    const auto day = dayFromText(found.captured(1).toStdString());
    if (!day) return name;
    const auto rest = found.captured(2);
    const auto when = Words::tr("%1 %2").arg(weekdayAndDay(*day), yearNumber(*day));
    if (rest.startsWith(QStringLiteral("-before-schema")))
        return Words::tr("%1, before bringing it up to date").arg(when);
    if (rest.startsWith(QStringLiteral("-before-restore")))
        return Words::tr("%1, before a backup was restored").arg(when);
    return when;
}
QString quit() { return Words::tr("&Quit"); }
QString zoomIn() { return Words::tr("Zoom &in"); }
QString zoomOut() { return Words::tr("Zoom &out"); }
QString seasonsMenu() { return Words::tr("Se&ason"); }
QString season(const QString& label, Day from, Day until) {
    return Words::tr("%1: %2 to %3").arg(label, longDay(from), longDay(until));
}
QString wholeSeason() { return Words::tr("&Whole season"); }
QString goToToday() { return Words::tr("Go to &today"); }
QString lookSystem() { return Words::tr("As the &desktop"); }
QString lookLight() { return Words::tr("&Light"); }
QString lookDark() { return Words::tr("D&ark"); }

QString undo() { return Words::tr("&Undo"); }
QString redo() { return Words::tr("&Redo"); }
QString undo(Verb verb, const QString& subject, std::optional<Day> day) {
    return Words::tr("&Undo: %1").arg(forMenu(withDay(verb, editName(verb, subject), day)));
}
QString redo(Verb verb, const QString& subject, std::optional<Day> day) {
    return Words::tr("&Redo: %1").arg(forMenu(withDay(verb, editName(verb, subject), day)));
}

QString bookFiles() { return Words::tr("Tenthday books (*.tenthday)"); }

QString readOnly() { return Words::tr("Read only"); }
QString todayIs(Day day) { return Words::tr("Today: %1").arg(weekdayAndDay(day)); }
QString copySaved(const QString& path) { return Words::tr("Copy saved: %1").arg(path); }
QString backupFailed(const QString& why) { return Words::tr("No backup was made: %1").arg(why); }

QString cannotOpen() { return Words::tr("The book cannot be opened."); }
QString cannotMake() { return Words::tr("The book cannot be made."); }
QString cannotSaveCopy() { return Words::tr("The copy cannot be saved."); }
QString undoneIn(const QString& season) {
    return Words::tr("This was done in season %1, which is shown now.").arg(season);
}
QString cannotSaveEdit() { return Words::tr("This was not saved. The book is as it was before."); }
QString openForReading() { return Words::tr("Open for reading"); }
QString doNotOpen() { return Words::tr("Do not open"); }
QString newestBackup(const QString& path) { return Words::tr("The newest backup is %1").arg(path); }

}  // namespace tenthday::window_text
