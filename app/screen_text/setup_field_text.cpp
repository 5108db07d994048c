// Columns and fields of the set-up page: names, words in cells, what stands under a field.
#include <QLocale>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/setup_text.h"
#include "screen_text/words.h"

namespace tenthday::setup_text {
namespace {

/// "24 cells ... (15 to 48; S74, S25)".
QString rangeAndSource(const FactEntry& entry, double value) {
    return Words::tr("%1; %2").arg(
        fact_text::range(entry, value),
        QString::fromUtf8(entry.source.data(), static_cast<qsizetype>(entry.source.size())));
}

QString valueAndUnit(const FactEntry& entry, double value) {
    return Words::tr("%1 %2").arg(fact_text::value(entry, value), fact_text::unit(entry));
}

}  // namespace

QString name(Name name) {
    switch (name) {
        case Name::Label:
            return Words::tr("Label");
        case Name::FirstLabel:
            return Words::tr("Label of the first");
        case Name::HowMany:
            return Words::tr("How many");
        case Name::Roles:
            return Words::tr("Used for");
        case Name::Hemisphere:
            return Words::tr("Half of the earth");
        case Name::FrostDay:
            return Words::tr("First hard frost");
        case Name::DronesOutDay:
            return Words::tr("Drones are thrown out");
        case Name::DriveOrder:
            return Words::tr("Place on the round");
        case Name::Note:
            return Words::tr("Note");
        case Name::Boxes:
            return Words::tr("Boxes today");
        case Name::Yard:
            return Words::tr("Yard");
        case Name::YardFrom:
            return Words::tr("In this yard from");
        case Name::Layout:
            return Words::tr("Layout");
        case Name::LayoutFrom:
            return Words::tr("Laid out so from");
        case Name::From:
            return Words::tr("From");
        case Name::Until:
            return Words::tr("Last day");
        case Name::Kind:
            return Words::tr("Kind");
        case Name::OpenRoom:
            return Words::tr("Room for started cells");
        case Name::SealedRoom:
            return Words::tr("Room for sealed cells");
        case Name::Born:
            return Words::tr("Year of birth");
        case Name::Mother:
            return Words::tr("Mother");
        case Name::Line:
            return Words::tr("Line");
        case Name::BreederFrom:
            return Words::tr("Breeder from");
        case Name::BreederUntil:
            return Words::tr("Breeder until");
        case Name::Steps:
            return Words::tr("Steps");
        case Name::UsedBy:
            return Words::tr("Used by");
        case Name::Days:
            return Words::tr("Days");
        case Name::Batches:
            return Words::tr("Batches");
        case Name::Day:
            return Words::tr("Day");
        case Name::Stage:
            return Words::tr("Stage");
        case Name::Colonies:
            return Words::tr("Colonies with drones");
        case Name::MatureBy:
            return Words::tr("Mature by");
    }
    return {};
}

QString role(int index) {
    switch (index) {
        case 0:
            return Words::tr("mating");
        case 1:
            return Words::tr("cell builders");
        case 2:
            return Words::tr("giving bees and brood");
        default:
            return Words::tr("drone colonies");
    }
}
QString north() { return Words::tr("northern"); }
QString south() { return Words::tr("southern"); }
QString unknown() { return Words::tr("not known"); }
QString nowhere() { return Words::tr("nowhere"); }
QString retiredFrom(Day day) { return Words::tr("retired from %1").arg(setup_text::day(day)); }
QString comesOn(const QString& yard, Day day) {
    return Words::tr("%1 from %2").arg(yard, setup_text::day(day));
}
QString unchanged() { return Words::tr("as it is"); }
QString yearAndMark(int year) {
    QLocale locale;
    locale.setNumberOptions(QLocale::OmitGroupSeparator);
    return Words::tr("%1, %2").arg(locale.toString(year), mark(yearMark(year)));
}
QString mark(YearMark mark) {
    switch (mark) {
        case YearMark::Blue:
            return Words::tr("blue");
        case YearMark::White:
            return Words::tr("white");
        case YearMark::Yellow:
            return Words::tr("yellow");
        case YearMark::Red:
            return Words::tr("red");
        case YearMark::Green:
            return Words::tr("green");
    }
    return {};
}
QString markHint(YearMark mark) {
    return Words::tr("Her mark is %1 (S105).").arg(setup_text::mark(mark));
}
QString daySpan(int fromHour, int toHour) {
    const auto day = [](int hour) { return QLocale().toString(hour / 24.0, 'g', 3); };
    return Words::tr("day %1 to %2").arg(day(fromHour), day(toHour));
}
QString batches(int count) { return Words::tr("%Ln batch(es)", nullptr, count); }
QString cellsUnit() { return Words::tr("cells"); }
QString hours() { return Words::tr(" h"); }
QString days() { return Words::tr(" d"); }
QString day(Day day) { return Words::tr("%1 %2").arg(weekdayAndDay(day), yearNumber(day)); }
QString dayOff(Day from, Day until) {
    return from == until ? day(from) : Words::tr("%1 to %2").arg(day(from), day(until));
}

QString emptyIs(const Facts& facts, Fact fact) {
    const auto& entry = facts.entry(fact);
    const auto value = valueAndUnit(entry, facts[fact]);
    const auto rest = rangeAndSource(entry, facts[fact]);
    return facts.isOverridden(fact) ? Words::tr("Empty: %1, your own number (default %2; %3)")
                                          .arg(value, fact_text::value(entry, entry.value), rest)
                                    : Words::tr("Empty: %1, the default (%2)").arg(value, rest);
}
QString usual(const QString& what, const Facts& facts, Fact fact) {
    const auto& entry = facts.entry(fact);
    return Words::tr("%1 %2 (%3)")
        .arg(what, valueAndUnit(entry, facts[fact]), rangeAndSource(entry, facts[fact]));
}
QString emptyIsUnbounded() { return Words::tr("Empty: no bound"); }
QString frostHint() { return Words::tr("Month and day count, the year does not."); }
QString orderHint() { return Words::tr("0 is driven to first."); }
QString layoutHint() {
    return Words::tr("Frames of each side: 7 is one nuc, 3+3 two, 2+2+2 three.");
}
QString labelsHint(const QString& first, const QString& last) {
    return Words::tr("%1 to %2").arg(first, last);
}
QString moveHint() {
    return Words::tr(
        "Another yard is a move from this day on; the day alone puts a wrong day right.");
}
QString lineHint() { return Words::tr("A new name makes a new line."); }
QString emptyUntil() { return Words::tr("Empty: still there"); }
QString copyHint(int batches) {
    return batches == 1
               ? Words::tr(
                     "1 batch uses this method. With other steps it is kept as a copy under "
                     "a label of its own.")
               : Words::tr(
                     "%1 batches use this method. With other steps it is kept as a copy "
                     "under a label of its own.")
                     .arg(chart_text::number(batches));
}
QString starterStep() { return Words::tr("In a starter"); }
QString incubatorStep() { return Words::tr("To an incubator after"); }
QString ripeStep() { return Words::tr("Ripe after"); }

QString where() { return Words::tr("Where"); }
QString fromHour() { return Words::tr("From hour"); }
QString toHour() { return Words::tr("To hour"); }
QString rest() { return Words::tr("Rest after"); }
QString addStep() { return Words::tr("Add a s&tep"); }
QString dropStep() { return Words::tr("&Remove the last step"); }
QString stepNumber(int step) { return Words::tr("Step %1").arg(chart_text::number(step)); }

QString needed(const QString& field) { return Words::tr("%1: this is needed.").arg(field); }
QString wholeNumber(int low, int high) {
    return Words::tr("A whole number from %1 to %2 is needed.")
        .arg(chart_text::number(low), chart_text::number(high));
}
QString noDay(const QString& typed) {
    return Words::tr("\"%1\" is no day. Write it like 2027-05-01, or choose it from the calendar.")
        .arg(typed);
}
QString taken(const QString& label) {
    return Words::tr("\"%1\" is there already. Each label is used once.").arg(label);
}
QString endsTooEarly() { return Words::tr("This ends before it begins."); }
QString seasonTooLong(int most) {
    return Words::tr("A season lasts %Ln day(s) at most.", nullptr, most);
}
QString batchesOutside(int batches) {
    return Words::tr("%Ln batch(es) would stand in no season any more.", nullptr, batches);
}
QString count(int number) { return chart_text::number(number); }
QString noLayout(const QString& typed) {
    return Words::tr("\"%1\" is no layout. %2").arg(typed, layoutHint());
}
QString noNumberAtTheEnd() {
    return Words::tr("To count up, the first label must end in a number, such as Q1.");
}
QString stepsOverlap(int step) {
    return Words::tr("Step %1 begins before the one before it has ended.")
        .arg(chart_text::number(step));
}
QString yardNeeded() { return Words::tr("A yard is needed first: add one under \"Yards\"."); }

}  // namespace tenthday::setup_text
