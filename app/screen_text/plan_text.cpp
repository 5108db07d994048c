#include "screen_text/plan_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/limit_text.h"
#include "screen_text/words.h"

namespace tenthday::plan_text {

QString pageEntry() { return Words::tr("Season &plan"); }
QString head() { return Words::tr("Season plan"); }
QString planNow() { return Words::tr("&Plan the season"); }
QString planAnew() { return Words::tr("&Plan anew"); }
QString stop() { return Words::tr("&Stop"); }
QString findWays() { return Words::tr("Find wa&ys to fix it"); }
QString change() { return Words::tr("Cha&nge ..."); }
QString asPlanned() { return Words::tr("As p&lanned"); }
QString tickAll() { return Words::tr("Tick &all"); }
QString tickNone() { return Words::tr("Tick n&one"); }
QString showInChart() { return Words::tr("See it in the &chart"); }
QString forget() { return Words::tr("&Drop the plan"); }
QString takeOver(int batches) {
    return batches == 0 ? Words::tr("&Take over")
                        : Words::tr("&Take over %Ln batch(es)", nullptr, batches);
}
QString takenOver(int batches) {
    return Words::tr("%Ln batch(es) taken over into the book; undo takes back all in one step.",
                     nullptr, batches);
}
QString bookChanged() {
    return Words::tr(
        "The book has changed since it was planned. Dates and chances are those of the book as it "
        "is now; plan anew for the best plan.");
}
QString droppedByEdit() {
    return Words::tr("The book was changed, so planning was given up: plan anew.");
}
QString cannotPlan(const QString& why) { return Words::tr("This cannot be planned: %1").arg(why); }
QString cannotTry(const QString& why) {
    return Words::tr("These batches cannot be in the book: %1").arg(why);
}
QString readOnly() { return Words::tr("The book is open for reading: nothing can be taken over."); }

QString graftFrom() { return Words::tr("&Graft from"); }
QString graftUntil() { return Words::tr("&until"); }
QString graftDaysTip(const Outlook& outlook) {
    const auto first = outlook.limits.firstGraft();
    const auto last = outlook.limits.lastGraft();
    QStringList lines{
        Words::tr("Nothing is proposed before today, outside the season or on the book's days "
                  "off.")};
    if (first) lines += Words::tr("First graft worth while: %1.").arg(weekdayAndDay(*first));
    if (last) lines += Words::tr("Last graft worth while: %1.").arg(weekdayAndDay(*last));
    for (const auto& limit : outlook.limits.all)
        if (limit.binds) lines += limit_text::reason(limit);
    return lines.join(u'\n');
}
QString mostGrafts() { return Words::tr("At &most"); }
QString mostGraftsUnit() { return Words::tr(" grafts a day"); }
QString noLimit() { return Words::tr("what the builders take"); }
QString mostHours() { return Words::tr("Day's &work"); }
QString mostHoursUnit() { return Words::tr(" h at most"); }
QString anyHours() { return Words::tr("any"); }
QString mostHoursTip() {
    return Words::tr(
        "Hours of work with its ways, on days on which a proposed batch is grafted, its cells come "
        "out or its queens are caught, beside what the book has on those days. It goes by the "
        "book's times of work and driving.");
}
QString notOnOneBatch() { return Words::tr("No order on one &batch alone"); }
QString notOnOneBatchTip() {
    return Words::tr(
        "No batch is meant to give more than half of an order of two or more: one that fails then "
        "takes no more than that.");
}
QString freeWeekdays() { return Words::tr("Keep free:"); }
QString freeWeekdaysTip() {
    return Words::tr(
        "On these weekdays nothing is grafted and no ripe cells come out. Days off are kept "
        "anyway.");
}
QString keepTicked() { return Words::tr("&Keep the ticked batches as they stand"); }
QString keepTickedTip() {
    return Words::tr(
        "The batches ticked below stay as they are, and the rest is planned round "
        "them.");
}
QString howSureTip() {
    return Words::tr("Each order says itself how sure it must be: see the page of orders.");
}

namespace {

QString phase(PlanPhase phase, int round) {
    switch (phase) {
        case PlanPhase::Reading:
            return Words::tr("Reading builders, nucs and orders");
        case PlanPhase::Orders:
            return Words::tr("1: as little short as can be");
        case PlanPhase::GraftDays:
            return Words::tr("2: as few graft days as can be");
        case PlanPhase::Grafts:
            return Words::tr("3: few grafts, and early ones");
        case PlanPhase::Sureness:
            return Words::tr("How sure each order is");
        case PlanPhase::Ways:
            return Words::tr("Trying way %1").arg(chart_text::number(round));
    }
    return {};
}

}  // namespace

QString progress(const PlanProgress& progress) {
    auto text = phase(progress.phase, progress.round);
    if (progress.round > 1 && progress.phase != PlanPhase::Ways)
        text = Words::tr("Round %1, to be sure enough. %2")
                   .arg(chart_text::number(progress.round), text);
    if (progress.shortBy && progress.graftDays)
        text = (*progress.shortBy == 0 ? Words::tr("Enough for every order with %1. %2")
                                       : Words::tr("As little short as can be with %1. %2"))
                   .arg(Words::tr("%Ln graft day(s)", nullptr, *progress.graftDays), text);
    if (!progress.best) return Words::tr("%1 ...").arg(text);
    text = Words::tr("%1: %2 found").arg(text, chart_text::expected(*progress.best));
    if (progress.bound)
        text = Words::tr("%1, no plan can do with less than %2")
                   .arg(text, chart_text::expected(*progress.bound));
    return text;
}
QString beginning() { return Words::tr("Planning ..."); }
QString lookingAgain() { return Words::tr("Being looked at again ..."); }

QString changeHead(Day graft) {
    return Words::tr("Proposed graft of %1").arg(weekdayAndDay(graft));
}
QString changeDone() { return Words::tr("&Change and look again"); }
QString graftDay() { return Words::tr("Graft day"); }
QString graftsUnit() { return Words::tr(" grafts"); }
QString changeHint() {
    return Words::tr("Nothing goes into the book yet: dates, chances and warnings are told anew.");
}

QString graftsOf(const Outlook& outlook, const ProposedBar& bar, bool alone) {
    if (alone) return Words::tr("Grafts");
    ProposedBatch one;
    one.bars = {bar};
    const auto breeder = breeders(outlook, one);
    const auto builder = builders(outlook, one);
    return breeder.isEmpty() ? Words::tr("Grafts in %1").arg(builder)
                             : Words::tr("Grafts of %1 in %2").arg(breeder, builder);
}

}  // namespace tenthday::plan_text
