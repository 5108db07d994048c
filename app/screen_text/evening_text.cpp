#include "screen_text/evening_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/sheet_text.h"
#include "screen_text/week_text.h"
#include "screen_text/words.h"

namespace tenthday::evening_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

QString nucOf(const EveningRow& row) {
    return chart_text::nuc(plain(row.side->box->label), plain(row.side->side->side));
}

/// The day too, where it is not the page's.
QString onDay(const QString& what, Day seen, Day page) {
    return seen == page ? what : Words::tr("%1, %2").arg(what, weekdayAndDay(seen));
}

}  // namespace

QString pageEntry() { return Words::tr("&Evening"); }

QString head(Day day) { return Words::tr("%1: what was done and seen").arg(longDay(day)); }

QString summary(int filled, int rows, int late) {
    if (rows == 0) return empty();
    const auto text =
        Words::tr("%1 of %2 entered").arg(chart_text::number(filled), chart_text::number(rows));
    return late == 0 ? text
                     : Words::tr("%1  ·  %2").arg(text, Words::tr("%Ln late", nullptr, late));
}

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("No.");
        case 1:
            return Words::tr("What");
        case 2:
            return Words::tr("Expected");
        case 3:
            return Words::tr("Entered");
        case 4:
            return Words::tr("Hour");
        case 5:
            return Words::tr("Note");
        default:
            return {};
    }
}

QString what(const Outlook& outlook, const EveningRow& row) {
    if (row.isHead) {
        const auto task = sheet_text::what(outlook, row.task);
        const auto yard = row.task.yard ? outlook.snapshot.find(*row.task.yard) : nullptr;
        return yard ? Words::tr("%1 · %2").arg(task, plain(yard->label)) : task;
    }
    if (row.side) return nucOf(row);
    return Words::tr("bar %1").arg(chart_text::number(row.bar.value_or(1)));
}

QString name(const Outlook& outlook, const EveningRow& head) {
    const auto yard = head.task.yard ? outlook.snapshot.find(*head.task.yard) : nullptr;
    QStringList parts{week_text::task(outlook, head.task), week_text::subject(outlook, head.task),
                      yard ? plain(yard->label) : QString()};
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" \u00B7 "));
}

QString expected(const Outlook& outlook, const EveningRow& row) {
    if (row.late && row.isHead)
        return Words::tr("since %1: %2")
            .arg(weekdayAndDay(row.task.day),
                 lateAdvice(row.task.key.rule, outlook.snapshot.facts()));
    if (row.entry == EveningEntry::Count && row.expected) return chart_text::number(*row.expected);
    if (row.entry == EveningEntry::Tick) return week_text::when(row.task, false);
    if (row.entry == EveningEntry::None && row.isHead && row.task.count > 0)
        return chart_text::number(row.task.count);
    if (const auto found = row.lookBefore())
        return Words::tr("%1, %2").arg(look(*found), weekdayAndDay(row.before->day));
    if (row.entry == EveningEntry::Caught && !row.sure) return Words::tr("not seen laying");
    return {};
}

QString look(NucLook look) {
    switch (look) {
        case NucLook::Eggs:
            return Words::tr("eggs");
        case NucLook::Larvae:
            return Words::tr("larvae");
        case NucLook::SealedBrood:
            return Words::tr("sealed brood");
        case NucLook::VirginSeen:
            return Words::tr("virgin seen");
        case NucLook::NoneYet:
            return Words::tr("none yet");
        case NucLook::Gone:
            return Words::tr("gone");
    }
    return {};
}

QString seen(const EveningRow& row, Day day) {
    if (!row.isFilled()) return {};
    switch (row.entry) {
        case EveningEntry::Tick:
            return onDay(done(), *row.done, day);
        case EveningEntry::Count:
            return onDay(chart_text::number(row.seen->count ? row.seen->count->value : 0),
                         row.seen->day, day);
        case EveningEntry::Placed:
            return onDay(wentIn(), row.placed->day, day);
        case EveningEntry::Look:
            return onDay(look(row.look().value_or(NucLook::NoneYet)), row.seen->day, day);
        case EveningEntry::Caught:
            return onDay(caught(row), row.seen->day, day);
        case EveningEntry::None:
            break;
    }
    return {};
}

QString caught(const EveningRow& row) {
    if (row.stays())
        return row.queen ? Words::tr("stays for winter: %1").arg(plain(row.queen->label))
                         : staysForWinter();
    return row.queen ? Words::tr("caught: %1").arg(plain(row.queen->label)) : caught();
}

QString queenMoved(const QString& number) {
    return Words::tr(
               "Queen %1 was moved since, or has daughters. Delete her among the queens caught "
               "(set-up) first, then take the catch back.")
        .arg(number);
}

QString lateAdvice(TaskRule rule, const Facts& facts) {
    switch (rule) {
        case TaskRule::CellsOut:
            return Words::tr("cage them in place now; a queen can be out");
        case TaskRule::CellsIn:
            return Words::tr("give them today, or cage them");
        case TaskRule::CageCells:
            return Words::tr("cage them now");
        case TaskRule::FreeBreeder:
            return Words::tr("free her now; graft from the youngest larvae");
        case TaskRule::Graft:
            return Words::tr("graft today if the larvae are young enough, or move the batch");
        case TaskRule::FirstWildLook:
        case TaskRule::SecondWildLook:
            return Words::tr("look today: every comb");
        case TaskRule::FirstLook:
            return Words::tr("look on the next warm day, before %1 or after %2 o'clock")
                .arg(fact_text::value(facts.entry(Fact::FlightFromH), facts[Fact::FlightFromH]),
                     fact_text::value(facts.entry(Fact::FlightToH), facts[Fact::FlightToH]));
        case TaskRule::CatchQueens:
            return Words::tr("catch her, or her nuc is not free");
        case TaskRule::Feed:
            return Words::tr("feed this evening");
        default:
            return Words::tr("do it, or move it");
    }
}

QString keys(const EveningRow& row) {
    switch (row.entry) {
        case EveningEntry::Count:
            return Words::tr("Type the number; Enter alone: as expected; Delete takes it back.");
        case EveningEntry::Look:
            return Words::tr(
                "E eggs, L larvae, S sealed brood, V virgin seen, N none yet, X gone; Delete takes "
                "it back.");
        case EveningEntry::Placed:
            return Words::tr("Space or Enter: it went in; Delete takes it back.");
        case EveningEntry::Caught:
            return Words::tr(
                "Space or Enter: caught; W: she stays here for the winter; Delete takes it back.");
        case EveningEntry::Tick:
            return Words::tr("Space or Enter: done; Delete takes it back.");
        case EveningEntry::None:
            return Words::tr("A key on this line is for all lines under it that are still empty.");
    }
    return {};
}

QString filledHint() {
    return Words::tr(
        "This is entered. Another key corrects it, Delete takes it back, Ctrl+Z undoes.");
}

QString refusal(const Refusal& refusal) {
    const auto day = weekdayAndDay(refusal.day);
    const auto count = chart_text::number(refusal.count);
    switch (refusal.why) {
        case Impossible::AfterToday:
            return Words::tr("That day is still to come: enter it when it is done.");
        case Impossible::OutOfRange:
            return Words::tr("A number from 0 to %1 is needed.").arg(count);
        case Impossible::BeforeGraft:
            return Words::tr("That cannot be: the batch was grafted only on %1.").arg(day);
        case Impossible::MoreThanBefore:
            return Words::tr("That cannot be: there were only %1 before.").arg(count);
        case Impossible::FewerThanAfter:
            return Words::tr("That cannot be: %1 were counted later.").arg(count);
        case Impossible::BeforePlaced:
            return Words::tr("That cannot be: the cell went in on %1.").arg(day);
        case Impossible::BeforeEmergence:
            return Words::tr("That cannot be: no queen of this batch is out before %1.").arg(day);
        case Impossible::TooYoung:
            return Words::tr(
                       "That cannot be: no queen of this batch has flown before %1. Is it "
                       "another queen?")
                .arg(day);
        case Impossible::NucHeld:
            return Words::tr(
                       "That cannot be: the nuc holds another batch's cell or queen since %1. "
                       "Enter first what became of her.")
                .arg(day);
        case Impossible::QueenStays:
            return Words::tr(
                       "That cannot be: queen %1 stays in this nuc since %2. Enter first where "
                       "she is now, or that she is lost: Set-up, Queens caught.")
                .arg(QString::fromStdString(refusal.queen), day);
    }
    return {};
}

QString cannotSave() { return Words::tr("This could not be saved."); }
QString readOnly() {
    return Words::tr("The book is open for reading only: nothing can be entered.");
}
QString badHour() { return Words::tr("An hour is a whole number from 0 to 23."); }
QString badCount() { return Words::tr("A whole number is needed."); }

QString wentIn() { return Words::tr("in"); }
QString done() { return Words::tr("done"); }
QString caught() { return Words::tr("caught"); }
QString staysForWinter() { return Words::tr("stays for winter"); }
QString part() { return Words::tr("Bar or nuc"); }
QString pastedName(Day day) { return Words::tr("entries of %1").arg(longDay(day)); }
QString noHourHere() { return Words::tr("No hour is kept here."); }
QString noNoteHere() { return Words::tr("No note is kept here."); }

QString cause(LossCause cause) {
    switch (cause) {
        case LossCause::NotKnown:
            return Words::tr("not known");
        case LossCause::Flight:
            return Words::tr("did not come back from her flight");
        case LossCause::Killed:
            return Words::tr("killed by the bees");
        case LossCause::DeadCell:
            return Words::tr("cell dead or never left");
        case LossCause::BeesGone:
            return Words::tr("bees gone or robbed out");
        case LossCause::ByHand:
            return Words::tr("lost by the beekeeper's hand");
    }
    return {};
}

QString note(const EveningRow& row) {
    if (row.stays()) return {};
    const auto& text = row.seen->note;
    const auto known = fromToken<LossCause>(text);
    return known && !text.empty() && row.look() == NucLook::Gone ? cause(*known) : plain(text);
}

QString causeHead() { return Words::tr("Why is she gone?"); }

QString empty() { return Words::tr("Nothing was planned for this day, and nothing is late."); }
QString takeBackButton() { return Words::tr("&Take back"); }
QString asPlannedButton() { return Words::tr("As &expected"); }
QString printHint() { return Words::tr("Numbers and order are those of the week sheet."); }

}  // namespace tenthday::evening_text
