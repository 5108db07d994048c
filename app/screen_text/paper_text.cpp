#include "screen_text/paper_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::paper_text {

QString kind(PaperKind kind) {
    switch (kind) {
        case PaperKind::Week:
            return Words::tr("Week sheet");
        case PaperKind::Clips:
            return Words::tr("Leaves for a clip");
        case PaperKind::Placements:
            return Words::tr("Placement list");
        case PaperKind::Catches:
            return Words::tr("Catch list");
        case PaperKind::Recells:
            return Words::tr("Recell list");
        case PaperKind::Stocking:
            return Words::tr("Stocking list");
        case PaperKind::Loading:
            return Words::tr("Loading list");
        case PaperKind::NucCards:
            return Words::tr("Nuc cards");
        case PaperKind::BatchCard:
            return Words::tr("Batch card");
        case PaperKind::Order:
            return Words::tr("Order confirmation");
        case PaperKind::Year:
            return Words::tr("Review of the season");
    }
    return {};
}

QString title(PaperKind of, Day day) { return Words::tr("%1 · %2").arg(kind(of), longDay(day)); }

QString none(PaperKind kind) {
    switch (kind) {
        case PaperKind::Catches:
            return Words::tr("No queens are to be caught by this day.");
        case PaperKind::Recells:
            return Words::tr("No nuc wants another cell.");
        case PaperKind::Stocking:
            return Words::tr("No nuc wants bees or brood for the cells of these seven days.");
        case PaperKind::Loading:
            return Words::tr("Nothing is to be taken along on this day.");
        case PaperKind::NucCards:
            return Words::tr("No nuc holds a cell or a queen on this day.");
        default:
            return Words::tr("Nothing to print for this day.");
    }
}

QString noYard() { return Words::tr("In no yard"); }

QString head(Head head) {
    switch (head) {
        case Head::Nuc:
            return Words::tr("Nuc");
        case Head::Batch:
            return Words::tr("Batch");
        case Head::Breeder:
            return Words::tr("Breeder queen");
        case Head::Number:
            return Words::tr("Number given");
        case Head::GoesTo:
            return Words::tr("Goes to");
        case Head::Why:
            return Words::tr("Why");
        case Head::Cell:
            return Words::tr("Gets the cell of");
        case Head::Bees:
            return Words::tr("Bees");
        case Head::Brood:
            return Words::tr("Open brood");
        case Head::Donor:
            return Words::tr("From");
        case Head::By:
            return Words::tr("By");
        case Head::Thing:
            return Words::tr("What");
        case Head::Amount:
            return Words::tr("How many");
        case Head::For:
            return Words::tr("For");
        case Head::Bar:
            return Words::tr("Bar");
        case Head::Grafts:
            return Words::tr("Grafts");
        case Head::Started:
            return Words::tr("Started");
        case Head::Sealed:
            return Words::tr("Sealed");
        case Head::Ripe:
            return Words::tr("Ripe");
        case Head::Event:
            return Words::tr("Event");
        case Head::When:
            return Words::tr("Reckoned");
        case Head::Seen:
            return Words::tr("Seen");
        case Head::Builder:
            return Words::tr("Builder");
        case Head::Days:
            return Words::tr("Days");
        case Head::What:
            return Words::tr("Ordered");
        case Head::Count:
            return Words::tr("Count");
        case Head::Due:
            return Words::tr("Due");
        case Head::Line:
            return Words::tr("Line");
        case Head::Stage:
            return Words::tr("Stage");
        case Head::Planned:
            return Words::tr("Planned");
        case Head::Happened:
            return Words::tr("Happened");
        case Head::Recorded:
            return Words::tr("Recorded of");
    }
    return {};
}

QString queens(int count) { return Words::tr("%Ln queen(s) to catch", nullptr, count); }
QString bees(int millilitres) { return Words::tr("%1 ml").arg(chart_text::number(millilitres)); }
QString openBrood(int frames) { return Words::tr("%Ln frame(s)", nullptr, frames); }
QString batch(const QString& label) { return Words::tr("batch %1").arg(label); }
QString cellOf(const QString& label, const QString& breeders) {
    return breeders.isEmpty() ? batch(label) : Words::tr("batch %1 (%2)").arg(label, breeders);
}
QString noCell() { return Words::tr("no cell is left"); }
QString cellsOn(Day day) { return Words::tr("Ripe cells come out on %1.").arg(longDay(day)); }
QString noCellsDay() { return Words::tr("No ripe cells come out on this day or later."); }
QString late() { return Words::tr("late"); }

QString stockingWhy(const QString& token, const std::optional<Day>& cellsDay) {
    const auto why = token == QStringLiteral("planned")      ? Words::tr("planned")
                     : token == QStringLiteral("open_brood") ? Words::tr("wants open brood")
                                                             : Words::tr("a cell lacks a nuc");
    return cellsDay ? Words::tr("%1, cells on %2").arg(why, shortDay(*cellsDay)) : why;
}
QString withoutNuc(int cells) {
    return Words::tr("Even so, %Ln cell(s) find no nuc.", nullptr, cells);
}
QString markOf(Day day) {
    // International year marks (S105).
    switch (toQDate(day).year() % 5) {
        case 0:
            return Words::tr("Mark of the year: blue.");
        case 1:
            return Words::tr("Mark of the year: white.");
        case 2:
            return Words::tr("Mark of the year: yellow.");
        case 3:
            return Words::tr("Mark of the year: red.");
        default:
            return Words::tr("Mark of the year: green.");
    }
}

QString ripeCells() { return Words::tr("Ripe cells, upright, 32 to 35 °C"); }
QString larvaeCups() { return Words::tr("Cups to graft into"); }
QString queenCages() { return Words::tr("Queen cages"); }
QString shippingCages() { return Words::tr("Shipping cages with workers and candy"); }
QString beesToShake() { return Words::tr("Nucs to stock"); }
QString nucBoxes() { return Words::tr("Nucs, shut and aired, strapped"); }
QString droneCombs() { return Words::tr("Drone combs"); }
QString virgins() { return Words::tr("Virgins in cages"); }
QString forAll() { return Words::tr("Tools and boxes"); }

QString wentIn(const QString& label, const QString& breeders, Day day, bool done) {
    const auto cell = cellOf(label, breeders);
    return done ? Words::tr("Cell of %1, in on %2").arg(cell, weekdayAndDay(day))
                : Words::tr("Cell of %1, goes in on %2").arg(cell, weekdayAndDay(day));
}
QString outAbout(Day day) { return Words::tr("Queen out about %1").arg(weekdayAndDay(day)); }
QString leaveShut(Day from, Day until) {
    return Words::tr("Do not open from %1 to %2").arg(weekdayAndDay(from), weekdayAndDay(until));
}
QString shutHours(int from, int until) {
    return Words::tr("nor from %1:00 to %2:00 while virgins of the yard fly").arg(from).arg(until);
}
QString lookFrom(Day day) { return Words::tr("Look: from %1").arg(weekdayAndDay(day)); }
QString catchFrom(Day day) { return Words::tr("Catch: about %1").arg(weekdayAndDay(day)); }
QString seenOn() { return Words::tr("Seen: eggs ____  larvae ____  sealed ____"); }

QString batchTitle(const QString& label) { return Words::tr("Batch %1").arg(label); }
QString bars() { return Words::tr("Bars"); }
QString dates() { return Words::tr("Dates"); }
QString builders() { return Words::tr("Builders"); }
QString until(const QString& from, const QString& to) {
    return from == to ? from : Words::tr("%1 to %2").arg(from, to);
}

QString orderTitle(const QString& label) { return Words::tr("Order %1").arg(label); }
QString orderLead(Day written) {
    return Words::tr(
               "This is what we have noted, on %1. Please tell us at once if something is "
               "not as you meant it.")
        .arg(longDay(written));
}
QString ordered() { return Words::tr("Noted for you"); }
QString inParts() { return Words::tr("may come in parts"); }
QString whole() { return Words::tr("comes as a whole"); }
QString notBefore(Day day) { return Words::tr("not before %1").arg(weekdayAndDay(day)); }
QString anyLine() { return Words::tr("any"); }

QStringList orderNotes(bool queens) {
    QStringList notes{
        Words::tr("Queen rearing hangs on weather and bees: days and numbers are planned, not "
                  "sure. We tell you when something changes."),
        Words::tr("Moving and selling bees and queens: the rules of your country and region "
                  "hold, with the papers they want; ask your bee inspector before anything "
                  "travels. Nothing leaves a yard under a disease hold.")};
    notes += queens ? Words::tr(
                          "Keep caged queens in the shade, aired, at 15 to 38 °C, with a drop of "
                          "water, and give them to their colonies soon.")
                    : Words::tr(
                          "Keep ripe cells upright at 32 to 35 °C, never shake or chill them, "
                          "and give them to their colonies the same day.");
    notes += Words::tr(
        "Work with veil and smoker at hand. Trouble breathing, faintness or a rash after a sting "
        "is an emergency: call the emergency number.");
    return notes;
}

QString yearTitle(const DayWindow& season) {
    return Words::tr("Season %1 to %2 %3")
        .arg(shortDay(season.first), shortDay(season.last), yearNumber(season.last));
}
QString yearLead(int batches, Day until) {
    return Words::tr("%Ln batch(es) until %1.", nullptr, batches).arg(longDay(until));
}
QString yearStages() { return Words::tr("Planned and happened"); }
QString yearWhy() { return Words::tr("Why"); }
QString stage(int stage) {
    switch (stage) {
        case 0:
            return Words::tr("Larvae grafted");
        case 1:
            return Words::tr("Cells started");
        case 2:
            return Words::tr("Cells sealed");
        case 3:
            return Words::tr("Ripe cells");
        case 4:
            return Words::tr("Laying queens");
        default:
            return Words::tr("Queens caught");
    }
}
QString recorded(int batches, int missing) {
    return Words::tr("%1 of %Ln batch(es)", nullptr, batches + missing)
        .arg(chart_text::number(batches));
}
QString whole(double number) { return chart_text::number(static_cast<int>(number + 0.5)); }
QString take() { return Words::tr("Take"); }
QString takePlannedSeen(double planned, double seen) {
    return Words::tr("%1 % planned, %2 % counted").arg(whole(planned * 100), whole(seen * 100));
}
QString dearth(int batches) {
    return Words::tr("%Ln batch(es) grafted in a dearth", nullptr, batches);
}
QString weather() { return Words::tr("Weather"); }
QString flying(int days, int grounded) {
    return Words::tr("%1 flying days and %2 without flying are recorded")
        .arg(chart_text::number(days), chart_text::number(grounded));
}
QString lateBatches(int batches, int days) {
    return Words::tr("%Ln batch(es) late by weather", nullptr, batches) + QStringLiteral("; ") +
           Words::tr("%Ln day(s) without flying behind them", nullptr, days);
}
QString nucs() { return Words::tr("Nucs"); }
QString nucTrouble(int withoutNuc, int noQueen, int droneLayer) {
    return Words::tr("%Ln cell(s) found no nuc", nullptr, withoutNuc) + QStringLiteral("; ") +
           Words::tr("%Ln nuc(s) without a queen", nullptr, noQueen) + QStringLiteral("; ") +
           Words::tr("%Ln drone layer(s)", nullptr, droneLayer);
}
QString orders() { return Words::tr("Orders"); }
QString deliveredOf(int delivered, int replaced) {
    return Words::tr("%Ln delivered", nullptr, delivered) + QStringLiteral("; ") +
           Words::tr("%Ln to be replaced", nullptr, replaced);
}
QString yearNote() {
    return Words::tr(
        "Each line compares the batches of which that stage is recorded with what "
        "was planned for these same batches. What nobody wrote down is not guessed.");
}

QStringList workNotes() {
    return {Words::tr("Stings: trouble breathing, faintness or a rash within minutes is an "
                      "emergency. Do not work alone. Full boxes: two people. Smoker: never on dry "
                      "grass."),
            Words::tr("Before bees or queens are moved or sold: local rules, and the bee "
                      "inspector.")};
}
QString stockingNote() {
    return Words::tr(
        "Bees of the yard a nuc stands in fly back: take them from elsewhere. None "
        "from a yard under a disease hold.");
}

}  // namespace tenthday::paper_text
