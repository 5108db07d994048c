#include "screen_text/setup_text.h"

#include <QLocale>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
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

QString use(const Use& use) {
    const auto n = static_cast<int>(use.count);
    const auto is = [&](std::string_view table) { return use.table == table; };
    if (is("box_stay")) return Words::tr("%Ln stay(s) of boxes", nullptr, n);
    if (is("builder")) return Words::tr("%Ln builder(s)", nullptr, n);
    if (is("stocking")) return Words::tr("%Ln stocking(s)", nullptr, n);
    if (is("placement")) return Words::tr("%Ln cell(s)", nullptr, n);
    if (is("outcome")) return Words::tr("%Ln thing(s) seen or counted", nullptr, n);
    if (is("make_up")) return Words::tr("made up %Ln time(s)", nullptr, n);
    if (is("builder_note")) return Words::tr("%Ln look(s) or brood put in", nullptr, n);
    if (is("batch_load")) return Words::tr("%Ln bar(s) of batches", nullptr, n);
    if (is("batch_bar")) return Words::tr("%Ln bar(s) grafted", nullptr, n);
    if (is("batch_yard")) return Words::tr("%Ln batch(es) with cells for it", nullptr, n);
    if (is("batch")) return batches(n);
    if (is("queen")) return Words::tr("%Ln daughter(s)", nullptr, n);
    if (is("drone_sighting")) return Words::tr("drones seen %Ln time(s)", nullptr, n);
    if (is("yard_note")) return Words::tr("%Ln flow(s), dearth(s) or robbing(s)", nullptr, n);
    if (is("mating_stay")) return Words::tr("%Ln stay(s) for mating", nullptr, n);
    if (is("own_task")) return Words::tr("%Ln own task(s)", nullptr, n);
    return Words::tr("%Ln other record(s)", nullptr, n);
}

}  // namespace

QString kindName(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("Yards");
        case Kind::Boxes:
            return Words::tr("Nuc boxes");
        case Kind::Builders:
            return Words::tr("Builders");
        case Kind::Queens:
            return Words::tr("Breeder queens");
        case Kind::Methods:
            return Words::tr("Methods");
        case Kind::DaysOff:
            return Words::tr("Days off");
        case Kind::Seasons:
            return Words::tr("Seasons");
    }
    return {};
}

QString kindAndCount(Kind kind, int count) {
    return Words::tr("%1 (%2)").arg(kindName(kind), chart_text::number(count));
}

QString thing(Kind kind, const QString& label) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("yard %1").arg(label);
        case Kind::Boxes:
            return Words::tr("box %1").arg(label);
        case Kind::Builders:
            return Words::tr("builder %1").arg(label);
        case Kind::Queens:
            return Words::tr("queen %1").arg(label);
        case Kind::Methods:
            return Words::tr("method %1").arg(label);
        case Kind::DaysOff:
            return Words::tr("days off %1").arg(label);
        case Kind::Seasons:
            return Words::tr("season %1").arg(label);
    }
    return {};
}

QString atStart(const QString& text) { return QLocale().toUpper(text.left(1)) + text.mid(1); }

QString things(Kind kind, int count) {
    return kind == Kind::Boxes ? Words::tr("%Ln box(es)", nullptr, count)
                               : kindAndCount(kind, count);
}

QString newThing(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("New yard");
        case Kind::Boxes:
            return Words::tr("New boxes");
        case Kind::Builders:
            return Words::tr("New builder");
        case Kind::Queens:
            return Words::tr("New queen");
        case Kind::Methods:
            return Words::tr("New method");
        case Kind::DaysOff:
            return Words::tr("New days off");
        case Kind::Seasons:
            return Words::tr("New season");
    }
    return {};
}

QString begin(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr("No yard yet: add the first place where nuc boxes or builders stand.");
        case Kind::Boxes:
            return Words::tr("No nuc box yet: add a dozen at once, counted up from a first label.");
        case Kind::Builders:
            return Words::tr("No builder yet: add the box or colony that is to raise the cells.");
        case Kind::Queens:
            return Words::tr("No queen yet: add the breeder queens you graft from.");
        case Kind::Methods:
            return Words::tr("No method yet: add the steps by which you raise cells.");
        case Kind::DaysOff:
            return Words::tr("No days off yet: add days on which nobody works with the bees.");
        case Kind::Seasons:
            return Words::tr("No season yet: add the days between which you raise queens.");
    }
    return {};
}
QString nothingFound() { return Words::tr("Nothing here has these letters."); }

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
        case Name::BuilderKind:
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

QString head() { return Words::tr("Set-up"); }
QString find(Kind kind) { return Words::tr("Find in: %1").arg(kindName(kind)); }
QString shownOf(int shown, int all) {
    return shown == all ? QString()
                        : Words::tr("%1 of %2 shown")
                              .arg(chart_text::number(shown), chart_text::number(all));
}
QString add() { return Words::tr("&Add"); }
QString addTip() { return Words::tr("Add one (Insert)"); }
QString remove() { return Words::tr("&Delete"); }
QString removeTip() { return Words::tr("Delete what is chosen, or retire it (Del)"); }
QString save() { return Words::tr("&Save"); }
QString discard() { return Words::tr("Dis&card"); }
QString numbers() { return Words::tr("Trade nu&mbers"); }
QString calendar() { return Words::tr("Choose from a calendar (Alt+Down)"); }
QString notSavedYet() { return Words::tr("Not saved yet. Enter saves, Esc discards."); }
QString saved() { return Words::tr("Saved."); }
QString deleted(const QString& thing) {
    return Words::tr("Deleted: %1. Undo brings it back.").arg(thing);
}
QString retired(const QString& thing) {
    return Words::tr("Retired: %1. Undo takes that back.").arg(thing);
}
QString readOnly() { return Words::tr("This book is open for reading only."); }
QString chooseOne(Kind kind) {
    return kind == Kind::Boxes
               ? Words::tr("Choose a box to see it, several to move or divide them at once.")
               : Words::tr("Choose one in the list to see and change it.");
}

QString leaveHead() { return Words::tr("Not saved yet"); }
QString leaveText(const QString& thing) {
    return Words::tr("What you changed is not saved yet: %1.").arg(thing);
}
QString keepEditing() { return Words::tr("&Keep editing"); }

QString inUseHead() { return Words::tr("In use"); }
QString inUse(const QString& thing, const std::vector<Use>& uses) {
    QStringList parts;
    for (const auto& one : uses) parts += use(one);
    return Words::tr("%1 is in use: %2.").arg(atStart(thing), parts.join(QStringLiteral(", ")));
}
QString retireFrom() { return Words::tr("Retire it from"); }
QString retire() { return Words::tr("&Retire"); }
QString retireHint(Kind kind) {
    switch (kind) {
        case Kind::Boxes:
            return Words::tr(
                "A retired box stands nowhere from that day on; what happened in it "
                "stays in the book.");
        case Kind::Builders:
            return Words::tr(
                "A retired builder takes no cells from that day on; what happened in "
                "it stays in the book.");
        default:
            return Words::tr(
                "From that day on she is no breeder queen; her daughters and bars "
                "stay in the book.");
    }
}
QString cannotRetire(Kind kind) {
    switch (kind) {
        case Kind::Yards:
            return Words::tr(
                "A yard cannot be deleted while anything leads to it. Move its boxes "
                "and builders to another yard first; a yard with a history stays.");
        default:
            return Words::tr(
                "A method that batches used stays, so that their dates stay as they "
                "were.");
    }
}

}  // namespace tenthday::setup_text
