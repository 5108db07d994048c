#include "screen_text/batch_text.h"

#include <QLocale>
#include <QStringList>
#include <algorithm>
#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/lists.h"
#include "screen_text/words.h"

namespace tenthday::batch_text {
namespace {

bool isLook(TaskRule rule) {
    return rule == TaskRule::FirstWildLook || rule == TaskRule::SecondWildLook;
}

/// "one look on Saturday", "free breeder queen on Sunday".
QString jobOn(const Job& job, const FreeDays& free) {
    const auto day = QLocale().dayName(isoWeekday(job.dayBeside(free)));
    return isLook(job.rule) ? Words::tr("one look on %1").arg(day)
                            : Words::tr("%1 on %2").arg(jobName(job.rule), day);
}

/// More ripe cells than nucs: what there is for them.
QString nucsWanted(const Finding& finding) {
    const auto cells = Words::tr("%Ln ripe cell(s) for nucs", nullptr,
                                 static_cast<int>(std::lround(finding.count)));
    return Words::tr("%1: %2").arg(cells, yardNumbers(finding.numbers));
}

/// A look takes minutes, any other job a good part of the day.
int workOf(const DayTrial& trial) {
    int work = 0;
    for (const auto& job : trial.onFreeDays) work += isLook(job.rule) ? 1 : 3;
    return work;
}

}  // namespace

QString planEntry() { return Words::tr("Plan a &batch ..."); }
QString editEntry() { return Words::tr("Change the &selected batch ..."); }
QString planTitle() { return Words::tr("Plan a batch"); }
QString editTitle(const QString& label) { return Words::tr("Batch %1").arg(label); }

QString label() { return Words::tr("&Label"); }
QString start() { return Words::tr("&Starts with"); }
QString startName(Start start) {
    switch (start) {
        case Start::Graft:
            return Words::tr("a graft");
        case Start::Confined:
            return Words::tr("the breeder queen confined");
        case Start::SealedFound:
            return Words::tr("sealed cells found");
        case Start::Ripe:
            return Words::tr("ripe cells bought in");
        case Start::Virgin:
            return Words::tr("virgins");
    }
    return {};
}
QString direction() { return Words::tr("&Plan"); }
QString forward() { return Words::tr("forward from its first day"); }
QString backward() { return Words::tr("backward from a day wanted"); }
QString dayOf(Start start) {
    switch (start) {
        case Start::Graft:
            return Words::tr("Graft &on");
        case Start::Confined:
            return Words::tr("C&onfined on");
        case Start::SealedFound:
            return Words::tr("F&ound on");
        case Start::Ripe:
        case Start::Virgin:
            return Words::tr("C&ome on");
    }
    return {};
}
QString wanted() { return Words::tr("&Wanted"); }
QString wantedEvent(Event event) {
    switch (event) {
        case Event::Ripe:
            return Words::tr("ripe cells");
        case Event::Emergence:
            return Words::tr("virgins out");
        case Event::FirstEggs:
            return Words::tr("laying queens");
        case Event::SealedBrood:
            return Words::tr("sealed brood");
        case Event::Catch:
            return Words::tr("queens caught");
        default:
            return chart_text::event(event);
    }
}
QString sureness(Sureness sureness) {
    return sureness == Sureness::Likely ? Words::tr("half of them") : Words::tr("19 of 20 of them");
}
QString hour() { return Words::tr("&Hour"); }
QString hourSuffix() { return Words::tr(":00"); }
QString hourNotGiven() { return Words::tr("not given (12:00)"); }
QString larvae() { return Words::tr("L&arvae, hours old"); }
QString larvaeTo() { return Words::tr("to"); }
QString larvaeUsual(double hours) { return Words::tr("usual: %1").arg(QLocale().toString(hours)); }
QString method() { return Words::tr("&Method"); }
QString steps(const std::vector<Ptr<Step>>& steps) {
    QStringList parts;
    for (const auto& step : steps)
        parts += Words::tr("%1, day %2 to %3")
                     .arg(chart_text::builderKind(step->where),
                          QLocale().toString(step->fromHour / 24.0, 'g', 3),
                          QLocale().toString(step->toHour / 24.0, 'g', 3));
    return parts.join(QStringLiteral("; "));
}
QString mating() { return Words::tr("Ma&ting"); }
QString matingName(Mating mating) {
    switch (mating) {
        case Mating::Open:
            return Words::tr("open, from the nucs");
        case Mating::Station:
            return Words::tr("at a mating station");
        case Mating::Insemination:
            return Words::tr("by insemination");
    }
    return {};
}
QString catchRule() { return Words::tr("&Catch"); }
QString catchRuleName(CatchRule rule, std::optional<int> nucDays) {
    const auto name = rule == CatchRule::Eggs          ? Words::tr("on eggs")
                      : rule == CatchRule::SealedBrood ? Words::tr("on sealed brood")
                                                       : Words::tr("by age");
    return nucDays ? Words::tr("%1 (%Ln nuc day(s))", nullptr, *nucDays).arg(name) : name;
}
QString catchRuleOfBook(CatchRule rule) {
    return Words::tr("as the book: %1").arg(catchRuleName(rule, {}));
}
QString makeUp() { return Words::tr("Make &up the builder"); }
QString makeUpName(MakeUpPlan plan) {
    switch (plan) {
        case MakeUpPlan::None:
            return Words::tr("not planned with it");
        case MakeUpPlan::WithoutOpenBrood:
            return Words::tr("for this batch, without open brood");
        case MakeUpPlan::WithOpenBrood:
            return Words::tr("for this batch, with open brood");
    }
    return {};
}
QString note() { return Words::tr("&Note"); }

QString bars() { return Words::tr("Bars"); }
QString breeder() { return Words::tr("Breeder queen"); }
QString noBreeder() { return Words::tr("not said"); }
QString grafts(Start start) {
    return hasGraft(start)          ? Words::tr("Grafts")
           : start == Start::Virgin ? Words::tr("Virgins")
                                    : Words::tr("Cells");
}
QString take() { return Words::tr("Take"); }
QString takeExpected(int cells) { return Words::tr("about %1").arg(QLocale().toString(cells)); }
QString takeWhy(const QString& share) {
    return Words::tr(
               "Started cells: type what you counted. Until then %1 of the grafts are "
               "expected.")
        .arg(share);
}
QString builderAt(BuilderKind where) {
    auto name = chart_text::builderKind(where);
    if (!name.isEmpty()) name[0] = name[0].toUpper();
    return name;
}
QString noBuilder() { return Words::tr("none yet"); }
QString addBar() { return Words::tr("Add a &bar"); }
QString removeBar() { return Words::tr("Remove bar"); }
QString bar(int number) { return Words::tr("Bar %1").arg(QLocale().toString(number)); }

QString yards() { return Words::tr("Cells by yard"); }
QString noYards() { return Words::tr("No yard for mating yet: add one in the set-up."); }
QString yardNumbers(const ReadyNumbers& numbers) {
    const auto n = [](int count) { return QLocale().toString(count); };
    QStringList parts{Words::tr("%1 ready").arg(n(numbers.ready))};
    if (const auto likely = static_cast<int>(std::lround(numbers.likely)); likely > 0)
        parts += Words::tr("%1 likely").arg(n(likely));
    if (numbers.canStock > 0) parts += Words::tr("%1 to stock").arg(n(numbers.canStock));
    if (numbers.needsBrood > 0) parts += Words::tr("%1 without brood").arg(n(numbers.needsBrood));
    return parts.join(QStringLiteral(" · "));
}
QString sum(int ripe, int given) {
    const auto n = [](int count) { return QLocale().toString(count); };
    if (given == 0)
        return Words::tr(
            "%Ln ripe cell(s) expected, to find nucs by themselves in the fewest yards.", nullptr,
            ripe);
    if (given == ripe) return Words::tr("%Ln ripe cell(s) expected, all given.", nullptr, ripe);
    return given < ripe
               ? Words::tr(
                     "%Ln ripe cell(s) expected, %1 given: %2 left to find nucs by themselves.",
                     nullptr, ripe)
                     .arg(n(given), n(ripe - given))
               : Words::tr("%Ln ripe cell(s) expected, %1 given: %2 more than there are.", nullptr,
                           ripe)
                     .arg(n(given), n(given - ripe));
}

QString dates() { return Words::tr("Dates"); }
QString dateHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("What");
        case 1:
            return Words::tr("Likely");
        case 2:
            return Words::tr("Day");
        default:
            return Words::tr("9 of 10 within");
    }
}
QString dayNumber(int number) { return QLocale().toString(number); }
QString range(const QString& earliest, const QString& latest) {
    return Words::tr("%1 to %2").arg(earliest, latest);
}
QString seen() { return Words::tr("seen"); }
QString planned(Day day) { return Words::tr("planned %1").arg(weekdayAndDay(day)); }
QString seenNotAsPlanned(Day planned) {
    return Words::tr("seen; planned %1").arg(weekdayAndDay(planned));
}

QString clashes() { return Words::tr("What speaks against this day"); }
QString noClash() { return Words::tr("Nothing: it clashes with no other batch, builder or nuc."); }
QString clash(const Finding& finding) {
    const auto& subject =
        finding.builderLabel.empty() ? finding.subjectLabel : finding.builderLabel;
    return Words::tr("▲ %1, %2: %3")
        .arg(QString::fromStdString(subject), weekdayAndDay(finding.day),
             finding.kind == FindingKind::TooManyCells ? nucsWanted(finding)
                                                       : chart_text::trouble(finding));
}
QStringList against(const DayTrial& trial) {
    QStringList lines;
    if (trial.lateMakeUp)
        lines +=
            Words::tr("▲ make up on %1: that day is past").arg(weekdayAndDay(*trial.lateMakeUp));
    for (const auto& finding : trial.clashes) lines += clash(finding);
    return lines;
}
QString searching() { return Words::tr("Looking ..."); }

QString weekHead() { return Words::tr("Graft on another day of that week"); }
QString graftColumn() { return Words::tr("Graft on"); }
QString jobName(TaskRule rule) {
    switch (rule) {
        case TaskRule::Confine:
            return Words::tr("confine");
        case TaskRule::FreeBreeder:
            return Words::tr("free the queen");
        case TaskRule::MakeUpBuilder:
            return Words::tr("make up");
        case TaskRule::Graft:
            return Words::tr("graft");
        case TaskRule::TakeCount:
            return Words::tr("count");
        case TaskRule::MoveCells:
            return Words::tr("move cells");
        case TaskRule::FirstWildLook:
            return Words::tr("first look");
        case TaskRule::SecondWildLook:
            return Words::tr("second look");
        case TaskRule::CageCells:
            return Words::tr("cage");
        case TaskRule::CellsOut:
            return Words::tr("cells out");
        default:
            return {};
    }
}
QString onFreeDay(const QString& day) { return Words::tr("%1, free day").arg(day); }
QString verdictHead() { return Words::tr("On free days"); }
QString verdict(const DayTrial& trial, const FreeDays& free) {
    if (trial.onFreeDays.empty())
        return trial.clashesWithNothing() ? Words::tr("none") : Words::tr("none, clashes");
    if (trial.onFreeDays.size() == 1) return jobOn(trial.onFreeDays.front(), free);
    return Words::tr("%Ln job(s)", nullptr, static_cast<int>(trial.onFreeDays.size()));
}
QString reasons(const DayTrial& trial, const FreeDays& free) {
    QStringList lines;
    for (const auto& job : trial.onFreeDays) lines += jobOn(job, free);
    return (lines + against(trial)).join(u'\n');
}
QString weekSum(const std::vector<DayTrial>& week, const FreeDays& free, Day own) {
    if (week.empty()) return {};
    if (free.spans.empty() &&
        std::none_of(free.weekdays.begin(), free.weekdays.end(), [](bool off) { return off; }))
        return Words::tr(
            "Choose the weekdays without work: then this says which graft days keep "
            "them free.");
    QStringList good;
    const DayTrial* best = &week.front();
    for (const auto& trial : week) {
        if (trial.onFreeDays.empty()) good += longDay(trial.graft);
        const int less = workOf(*best) - workOf(trial);
        if (less > 0 || (less == 0 && trial.day == own)) best = &trial;
    }
    if (good.size() == static_cast<qsizetype>(week.size()))
        return Words::tr("No day of this week brings work on a free day.");
    if (good.size() == 1)
        return Words::tr("%1 is the only graft day without work on a free day.").arg(good.first());
    if (!good.isEmpty()) return Words::tr("No work on a free day: graft on %1.").arg(listed(good));
    QStringList jobs;
    for (const auto& job : best->onFreeDays) jobs += jobOn(job, free);
    return Words::tr("Every graft day brings work on a free day. Least on %1: %2.")
        .arg(longDay(best->graft), listed(jobs));
}
QString freeWeekdays() { return Words::tr("No work on"); }

QString nearestHead() { return Words::tr("Nearest days that clash with nothing"); }
QString nearest(Day day, int away) {
    const auto name = weekdayAndDay(day);
    if (away == 0) return Words::tr("%1, this day").arg(name);
    return away < 0 ? Words::tr("%1, %Ln day(s) sooner", nullptr, -away).arg(name)
                    : Words::tr("%1, %Ln day(s) later", nullptr, away).arg(name);
}
QString noneNear() {
    return Words::tr("None within 60 days: each brings a clash, or work on a free day.");
}

QString repeatEvery() { return Words::tr("&Repeat every"); }
QString daysSuffix(int days) { return Words::tr(" day(s)", nullptr, days); }
QString repeatMore(int batches) { return Words::tr("batch(es) more", nullptr, batches); }
QString repeats(const QString& days) { return Words::tr("Also on %1").arg(days); }

QString save() { return Words::tr("Save"); }
QString cancel() { return Words::tr("Cancel"); }
QString remove() { return Words::tr("&Delete batch ..."); }
QString askRemove(const QString& label, int placements, int outcomes) {
    if (placements + outcomes == 0)
        return Words::tr(
                   "Delete batch %1? Its bars and its planned make-up go with it. Undo "
                   "brings all back.")
            .arg(label);
    return Words::tr(
               "Delete batch %1? Its bars, placed cells (%2) and what was seen (%3) go with it. "
               "Undo brings all back.")
        .arg(label, QLocale().toString(placements), QLocale().toString(outcomes));
}
QString topUp(Cells cups) {
    return Words::tr("&Top up cups: %1 ...").arg(chart_text::number(cups.value));
}
QString topUpHint(Day by) {
    return Words::tr(
               "Graft them anew into the same box, until %1 (common practice): a batch of its own, "
               "for its queens are younger. Count and move by the oldest cells of the box.")
        .arg(weekdayAndDay(by));
}
QString insure() { return Words::tr("&Graft again ..."); }
QString insureHint() {
    return Words::tr(
        "A second graft as insurance, the day after: the same bars into the same box. Cells of two "
        "ages stand there then; the box goes by the oldest.");
}
QString grafted() {
    return Words::tr("The graft is recorded: its day, hour, larvae and method stay as they are.");
}
QString countsGo(int counts) {
    return Words::tr("Saving this takes out %Ln recorded count(s). Undo brings all back.", nullptr,
                     counts);
}
QString askLeave() { return Words::tr("Leave without saving what you changed?"); }
QString readOnly() { return Words::tr("This book is open for reading only."); }
QString cannotWant() { return Words::tr("There is no day on which it could start for that."); }

}  // namespace tenthday::batch_text
