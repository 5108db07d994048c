#include "screen_text/why_rules.h"

#include <QLocale>
#include <cmath>

#include "screen_text/waiting_text.h"
#include "screen_text/words.h"
#include "weather/record_only.h"

namespace tenthday::why_text {
namespace {

using Kind = Reason::Kind;

QString entered(const Told& told) {
    switch (told.reason.event) {
        case Event::Confine:
            return Words::tr("The day on which the breeder queen is confined is the one you set.");
        case Event::Emergence:
            return Words::tr("They came as virgins, so they count as out on the day you set.");
        default:
            return Words::tr(
                "The graft is on the day you set; every other day is counted from "
                "it.");
    }
}

QString reckonedBack(const Told& told) {
    switch (told.start()) {
        case Start::SealedFound:
            return Words::
                tr("The cells were found sealed, so their age is not known: the middle between "
                   "sealing and emergence is taken, and the graft reckoned back from there by %1.")
                    .arg(hours(told.reason.hours));
        case Start::Ripe:
            return Words::tr("The cells came ripe; the graft is reckoned back by %1.")
                .arg(hours(told.reason.hours));
        default:
            return Words::tr("They came as virgins; the graft is reckoned back by %1.")
                .arg(hours(told.reason.hours));
    }
}

QString early(const Told& told) {
    const auto span = hours(told.reason.hours);
    switch (told.reason.event) {
        case Event::Confine:
            return Words::tr(
                       "The breeder queen is confined to a comb %1 before the graft, so "
                       "that there are larvae of one known age.")
                .arg(span);
        case Event::FreeBreeder:
            return Words::tr("She is freed %1 after she was confined.").arg(span);
        case Event::MakeUpBuilder:
            return Words::tr(
                       "The builder is made up %1 before the graft, so that it is queenless "
                       "by then.")
                .arg(span);
        case Event::Graft:
            return Words::tr("Grafted %1 after the breeder queen was confined.").arg(span);
        case Event::TakeCount:
            return Words::tr("Started cells can be counted from %1 to %2 after the graft.")
                .arg(span, hours(told.fact(Fact::TakeCountToH)));
        case Event::TopUp:
            return Words::tr(
                       "A bar can be topped up until %1 after the graft, once the started "
                       "cells are counted.")
                .arg(span);
        case Event::Sealed:
            return Words::tr(
                       "Cells are sealed %1 after the egg is laid; with these larvae, on "
                       "average %2 after the graft.")
                .arg(hours(told.fact(Fact::SealingH)), span);
        case Event::FragileFrom:
            return Words::tr("From %1 after the graft the cells must not be shaken.").arg(span);
        case Event::FragileUntil:
            return Words::tr("Until %1 after the graft the cells must not be shaken.").arg(span);
        case Event::CageFrom:
            return Words::tr(
                       "Nursery cages can go over the cells where they hang from %1 after "
                       "the graft.")
                .arg(span);
        default:
            return Words::tr("Cells are ripe and can travel from %1 after the graft.").arg(span);
    }
}

QString late(const Told& told) {
    const auto span = hours(told.reason.hours);
    switch (told.reason.event) {
        case Event::Emergence:
            return Words::tr(
                       "Queens come out %1 after the egg is laid; with these larvae, on "
                       "average %2 after the graft.")
                .arg(hours(told.fact(Fact::EmergenceH)), span);
        case Event::Mature:
            return Words::tr("A virgin is mature %1 after she came out.").arg(span);
        case Event::DueToFly:
            return Words::tr(
                       "Virgins first fly at %1 to %2 days of age, not all on the same day; "
                       "on average %3 after they came out.")
                .arg(decimal(told.fact(Fact::FirstFlightD)),
                     decimal(told.fact(Fact::FirstFlightD) + 2), span);
        case Event::FirstEggs:
            return Words::tr("Queens lay their first eggs %1 days after they came out, on average.")
                .arg(decimal(told.fact(Fact::FirstEggsD)));
        case Event::FirstLook:
            return Words::tr(
                       "The first look is %1 days after the queens came out; by then %2 of "
                       "those that will lay have eggs.")
                .arg(decimal(told.fact(Fact::FirstLookD)), percent(told.fact(Fact::LikelyLevel)));
        case Event::SealedBrood:
            return Words::tr("Worker brood is sealed %1 days after the first eggs.")
                .arg(decimal(told.fact(Fact::EggsToSealedD)));
        case Event::Catch:
            return told.reason.fact == Fact::CatchAgeD
                       ? Words::tr("Queens are caught %1 days after they came out.")
                             .arg(decimal(told.fact(Fact::CatchAgeD)))
                       : Words::tr("Queens are caught on eggs: at the first look.");
        default:
            return early(told);
    }
}

QString firstOfMany(const Told& told) {
    const auto cells = decimal(std::round(told.reason.hours * 10) / 10);
    return told.reason.event == Event::LatestMove
               ? Words::tr(
                     "Until here the risk that the first of %1 queens in one box is out "
                     "stays below %2. The more cells in a box, the earlier.")
                     .arg(cells, percent(told.fact(Fact::FirstOutRisk)))
               : Words::tr(
                     "The first of %1 queens in one box to come out. The more cells in a "
                     "box, the earlier, for the quickest of them counts.")
                     .arg(cells);
}

QString laterOf(const Told& told) {
    if (told.reason.event == Event::FirstLook)
        return Words::tr(
                   "By then %1 of the queens that will lay have eggs; this is later than "
                   "%2 days after they came out.")
            .arg(percent(told.fact(Fact::LikelyLevel)), decimal(told.fact(Fact::FirstLookD)));
    if (told.batch.timeline.weather)
        return Words::tr(
                   "Queens are caught when %1 of those that will lay have sealed brood, and not "
                   "before the first look: the later of the two counts.")
            .arg(percent(told.fact(Fact::LikelyLevel)));
    return Words::tr(
        "Queens are caught on sealed brood, and not before the first look: the "
        "later of the two counts.");
}

/// "2012 to 2015"; one year alone stands by itself.
QString years(const std::vector<int>& years) {
    const auto text = [](int year) { return QString::number(year); };
    return years.size() == 1 ? text(years.front())
                             : Words::tr("%1 to %2").arg(text(years.front()), text(years.back()));
}

/// What the flying days were counted in.
QString skyOf(const MatingTable& mating) {
    if (!mating.seasons() && !mating.chain())
        return Words::tr("No weather is known: every day there is taken as one. ");
    if (mating.chain() && isRecordOnly(*mating.chain()))
        return Words::tr(
            "Reckoned from the days recorded and forecast in your book; there is no past year. ");
    if (!mating.seasons())
        return Words::tr(
            "Reckoned from the weather by month in your book, with warm days more often than not "
            "in a row. ");
    const auto& seasons = *mating.seasons();
    return Words::tr("Counted in %1 possible seasons, made from your record of %2. ")
        .arg(QLocale().toString(static_cast<int>(seasons.size())), years(seasons.years()));
}

QString weather(const Told& told) {
    const auto rule =
        Words::tr(
            "Half of the queens that will lay have eggs by then. A virgin first flies at %1 to %2 "
            "days of age and waits for a flying day; %3 need a second one; eggs come %4 days "
            "after the last.")
            .arg(decimal(told.fact(Fact::FirstFlightD)), decimal(told.fact(Fact::FirstFlightD) + 2),
                 percent(told.fact(Fact::SecondFlightShare)),
                 decimal(told.fact(Fact::EggsAfterFlightD)));
    const auto never =
        Words::tr("There %1 of the virgins find no flying day while they can still mate.")
            .arg(percent(std::round(told.batch.timeline.neverMates * 1000) / 1000));
    return rule + u' ' + skyOf(*told.outlook.mating) + never + u' ' +
           waiting_text::sentence(told.outlook, told.batch);
}

QString noteOf(EventNote note) {
    switch (note) {
        case EventNote::HeatClamped:
            return Words::tr(
                "The temperature is outside what was measured; the nearest measured "
                "one was used.");
        case EventNote::QueenMayBeOut:
            return Words::tr("As the age is not known, a queen may be out at once.");
        case EventNote::NotEvenRipeSafe:
            return Words::tr(
                "Not even the day the cells are ripe is safe: cage them in place, or "
                "move them earlier.");
        case EventNote::CagesInPlaceOnly:
            return Words::tr("Only where they hang; cells leave the box once they are ripe.");
        default:
            return {};
    }
}

QString sentence(const Told& told) {
    switch (told.reason.kind) {
        case Kind::Entered:
            return entered(told);
        case Kind::Observed:
            return Words::tr(
                "This was seen and recorded; it stands in place of what was "
                "reckoned.");
        case Kind::Rule:
            return late(told);
        case Kind::Method:
            return Words::tr("The method moves the cells on %1 after the graft.")
                .arg(hours(told.reason.hours));
        case Kind::FirstOfMany:
            return firstOfMany(told);
        case Kind::LaterOf:
            return laterOf(told);
        case Kind::ReckonedBack:
            return reckonedBack(told);
        case Kind::Station:
            return Words::tr(
                       "Her nuc stands at a mating station, and she flies on the days there "
                       "only.") +
                   u' ' + weather(told);
        case Kind::Inseminated:
            return Words::tr(
                       "She is inseminated on the last day given for it, else at %1 days of age; "
                       "eggs come %2 days after. Weather does not count.")
                .arg(decimal(told.fact(Fact::InseminationAgeD)),
                     decimal(told.fact(Fact::EggsAfterFlightD)));
        case Kind::Weather:
            return weather(told);
    }
    return {};
}

}  // namespace

QString ruleOf(const Told& told) {
    const auto* dates = told.batch.timeline.find(told.reason.event);
    const auto note = dates ? noteOf(dates->note) : QString();
    return note.isEmpty() ? sentence(told) : sentence(told) + u' ' + note;
}

QString decimal(double value) { return QLocale().toString(value, 'g', 4); }
QString hours(double value) { return Words::tr("%1 h").arg(decimal(std::abs(value))); }
QString percent(double share) { return Words::tr("%1 %").arg(decimal(share * 100)); }

}  // namespace tenthday::why_text
