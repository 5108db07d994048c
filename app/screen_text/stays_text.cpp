#include "screen_text/stays_text.h"

#include <QLocale>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/words.h"

namespace tenthday::stays_text {
namespace {

bool isStation(Mating mating) { return mating == Mating::Station; }

}  // namespace

QString station() { return Words::tr("Station"); }
QString noStation() { return Words::tr("not said"); }
QString from(Mating mating) {
    return isStation(mating) ? Words::tr("Brought there") : Words::tr("First day");
}
QString until(Mating mating) {
    return isStation(mating) ? Words::tr("Fetched back") : Words::tr("Last day");
}
QString ofStay(Mating mating, int number, const QString& field) {
    const auto which = chart_text::number(number);
    return isStation(mating) ? Words::tr("Stay %1, %2").arg(which, field)
                             : Words::tr("Insemination %1, %2").arg(which, field);
}
QString add(Mating mating, bool none) {
    if (none) return Words::tr("Suggest da&ys");
    return isStation(mating) ? Words::tr("Add a sta&y") : Words::tr("Add da&ys");
}
QString remove(Mating mating) {
    return isStation(mating) ? Words::tr("Remove stay") : Words::tr("Remove days");
}

QString dueToFly(Day earliest, Day latest, bool none) {
    const auto due = Words::tr("9 of 10 virgins are due to fly from %1 to %2.")
                         .arg(weekdayAndDay(earliest), weekdayAndDay(latest));
    return none ? Words::tr("%1 No days yet: reckoned as if they flew from the nucs at home.")
                      .arg(due)
                : due;
}
QString whyStation() {
    return Words::tr(
        "Suggested: from the day before the earliest are due to fly until a week after the latest "
        "are, to spare for bad weather (common practice). Queens mate on days there only; the "
        "days move with the batch.");
}
QString oldEnough(double age, Day day, bool none) {
    const auto old = Words::tr("Half of the virgins are %1 days old on %2.")
                         .arg(QLocale().toString(age, 'g', 3), weekdayAndDay(day));
    return none ? Words::tr("%1 No days yet: that age is taken.").arg(old) : old;
}
QString whyInsemination(const Facts& facts) {
    const auto& entry = facts.entry(Fact::InseminationAgeD);
    return Words::tr(
               "Suggested: the day of that age, a trade number (%1; %2). Eggs are reckoned from "
               "the last day; the days move with the batch.")
        .arg(fact_text::range(entry, facts[Fact::InseminationAgeD]),
             facts.isOverridden(Fact::InseminationAgeD) ? fact_text::own()
                                                        : fact_text::sources(entry));
}

}  // namespace tenthday::stays_text
