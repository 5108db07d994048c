#include "screen_text/upkeep_text.h"

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/nuc_text.h"
#include "screen_text/words.h"

namespace tenthday::upkeep_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }
QString number(int count) { return chart_text::number(count); }
int whole(const Facts& facts, Fact fact) { return static_cast<int>(facts[fact]); }

QString millilitres(int ml) { return Words::tr("%1 ml").arg(number(ml)); }
QString roundsOf(int rounds) { return Words::tr("%Ln round(s)", nullptr, rounds); }

}  // namespace

QString what(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("Stock");
        case 1:
            return Words::tr("Boost");
        case 2:
            return Words::tr("Thin out");
        case 3:
            return Words::tr("Brood in");
        case 4:
            return Words::tr("Feed");
        case kTakeBack:
            return Words::tr("Take upkeep back");
        default:
            return {};
    }
}

QString whatHead() { return Words::tr("What"); }

QString enter(NucCareKind kind, int nucs, Day day) {
    const auto on = weekdayAndDay(day);
    switch (kind) {
        case NucCareKind::Boost:
            return Words::tr("Boost %Ln nuc(s) on %1", nullptr, nucs).arg(on);
        case NucCareKind::Thin:
            return Words::tr("Thin out %Ln nuc(s) on %1", nullptr, nucs).arg(on);
        case NucCareKind::BroodIn:
            return Words::tr("Brood into %Ln nuc(s) on %1", nullptr, nucs).arg(on);
        case NucCareKind::Feed:
            return Words::tr("Feed %Ln nuc(s) on %1", nullptr, nucs).arg(on);
    }
    return {};
}

QString takeBack(int nucs, Day day) {
    return Words::tr("Take back upkeep of %Ln nuc(s) on %1", nullptr, nucs).arg(weekdayAndDay(day));
}

QString whatHint(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("Bees for a nuc that has none.");
        case 1:
            return Words::tr("Bees, and brood if you like, for a nuc that is weak or worn.");
        case 2:
            return Words::tr("Bees or brood taken out of a nuc that is too strong.");
        case 3:
            return Words::tr(
                "A frame of brood. With eggs or larvae a queenless nuc takes a cell again, and its "
                "bees can begin wild cells of their own.");
        case 4:
            return Words::tr("Feed in the evening: robbing starts easily at nucs.");
        case kTakeBack:
            return Words::tr("What was noted of these nucs on the day shown, by mistake.");
        default:
            return {};
    }
}

QString beesHead() { return Words::tr("Bees"); }

QString strength(const NucStrength& strength) {
    if (!strength.freshOn) return {};
    const auto rounds = roundsOf(strength.rounds);
    if (strength.isWorn()) return Words::tr("worn: %1").arg(rounds);
    return strength.isCounted ? Words::tr("%1, %2").arg(millilitres(strength.beesMl), rounds)
                              : rounds;
}

QString whyStrength(const NucStrength& strength) {
    if (!strength.freshOn) return {};
    auto text = Words::tr("Fresh bees on %1; %2 since.")
                    .arg(weekdayAndDay(*strength.freshOn), roundsOf(strength.rounds));
    if (strength.isCounted)
        text += u' ' + Words::tr("Put in less taken out: %1. What a round costs is not counted.")
                           .arg(millilitres(strength.beesMl));
    if (strength.lastCare)
        text += u' ' + Words::tr("Upkeep last on %1.").arg(weekdayAndDay(*strength.lastCare));
    const auto rule = Words::tr("After %1 rounds the bees of a nuc are worn (common practice).")
                          .arg(number(strength.most));
    text += u' ' + rule;
    if (strength.isWorn())
        text += u' ' + Words::tr("Boost it with young bees, or unite it and stock anew.");
    return text;
}

QString wornFilter() { return Words::tr("Bees worn"); }

QString stockingButton() { return Words::tr("Stockin&g list ..."); }
QString stockingTitle(const DayWindow& days) {
    return Words::tr("Nucs to stock, %1 to %2")
        .arg(weekdayAndDay(days.first), weekdayAndDay(days.last));
}

QString stockingHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("By");
        case 1:
            return Words::tr("Yard");
        case 2:
            return Words::tr("Nuc");
        case 3:
            return Words::tr("Bees");
        case 4:
            return Words::tr("Brood frames");
        case 5:
            return Words::tr("Donor");
        case 6:
            return Words::tr("Why");
        default:
            return {};
    }
}

QString by(const StockingNeed& need) {
    return need.late ? Words::tr("%1: late").arg(weekdayAndDay(need.dayBy))
                     : weekdayAndDay(need.dayBy);
}
QString bees(const StockingNeed& need) {
    return need.bees ? millilitres(need.bees->value) : QString();
}
QString frames(const StockingNeed& need) {
    return need.brood ? number(need.brood->value) : QString();
}
QString donor(const StockingNeed& need) { return plain(need.donor); }

QString why(const StockingNeed& need) {
    switch (need.why) {
        case StockingWhy::Planned:
            return Words::tr("planned");
        case StockingWhy::CellsDay:
            return Words::tr("cells of %1").arg(weekdayAndDay(*need.cellsDay));
        case StockingWhy::OpenBrood:
            return Words::tr("cells of %1; wants open brood first")
                .arg(weekdayAndDay(*need.cellsDay));
    }
    return {};
}

QString whyBy(const StockingNeed& need, const Facts& facts) {
    if (need.why == StockingWhy::Planned) return Words::tr("As it stands in the book.");
    auto text = need.why == StockingWhy::OpenBrood
                    ? Words::tr("The brood goes in the day before the cell at the latest.")
                    : Words::tr(
                          "Queenless for %1 h before the cell (trade numbers; 3 days are best, "
                          "S85). Better sooner: shut, cool and dark for 1 to 3 days, set out at "
                          "dusk (S11).")
                          .arg(number(whole(facts, Fact::NucQueenlessH)));
    if (need.late)
        text += u' ' + Words::tr("That day is over: the cell comes sooner than is good.");
    return text;
}

QString nothingToStock() {
    return Words::tr(
        "No nuc has to be stocked: the cells of these days find ready nucs, or none "
        "come out.");
}

QString stockingSum(const StockingList& list) {
    int ml = 0;
    for (const auto& need : list.needs) ml += need.bees.value_or(BeesMl{0}).value;
    auto text = Words::tr("%Ln nuc(s)", nullptr, static_cast<int>(list.needs.size()));
    if (ml > 0) text = Words::tr("%1, %2 of bees").arg(text, millilitres(ml));
    if (list.withoutNuc > 0)
        text += QStringLiteral("  ·  ") +
                Words::tr("cells without a nuc even so: %1").arg(number(list.withoutNuc));
    return text;
}

QString donorsHead() { return Words::tr("Donors, those that gave least first"); }

QString gifts(const DonorGifts& donor, const Facts& facts) {
    const auto name = plain(donor.donor);
    if (!donor.mayGive())
        return Words::tr("%1: nothing may leave, disease until %2")
            .arg(name, weekdayAndDay(donor.hold->until));
    const auto days = number(whole(facts, Fact::WorkerD));
    const auto left = mayStillGive(donor, facts);
    const auto still = Words::tr("%1 of bees, brood frames: %2")
                           .arg(millilitres(left.bees.value), number(left.brood.value));
    const auto may = donor.isYard ? Words::tr("each of its colonies may give %1").arg(still)
                                  : Words::tr("may still give %1").arg(still);
    if (donor.beesMl == 0 && donor.broodFrames == 0)
        return Words::tr("%1: nothing taken in %2 days; %3").arg(name, days, may);
    return Words::tr("%1: %2 and brood frames: %3, in %4 days; %5")
        .arg(name, millilitres(donor.beesMl), number(donor.broodFrames), days, may);
}

QString whyMayGive(const Facts& facts) {
    return Words::tr(
               "A strong colony gives at most %1 of bees and %2 brood frames within %3 days, the "
               "time a worker takes from the egg (common practice). Change it among the trade "
               "numbers.")
        .arg(millilitres(whole(facts, Fact::DonorBeesMl)), number(whole(facts, Fact::DonorFrames)),
             number(whole(facts, Fact::WorkerD)));
}

QString stockingCaution() {
    return Words::tr(
        "How strong a donor is you see at the hive: take brood and bees only from strong, healthy "
        "colonies, never the queen. Bees of the nuc's own yard fly back, so none is named from "
        "there. Boxes weigh 20 to 40 kg: two people. On moving bees ask your bee inspector.");
}

QString copy() { return Words::tr("&Copy"); }
QString copied() { return Words::tr("Copied: it can be pasted as a table."); }

QString mitesButton() { return Words::tr("&Mite work ..."); }
QString mitesTitle() { return Words::tr("Days without open brood, for work against mites"); }

QString mitesHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Nuc or builder");
        case 1:
            return Words::tr("Yard");
        case 2:
            return Words::tr("From");
        case 3:
            return Words::tr("Until");
        case 4:
            return Words::tr("No brood at all from");
        case 5:
            return Words::tr("Done");
        default:
            return {};
    }
}

QString until(const MiteSpan& span) {
    if (span.outside) return {};
    return span.span.until ? weekdayAndDay(*span.span.until) : Words::tr("new brood");
}
QString noBrood(const MiteSpan& span) {
    return span.span.noneFrom ? weekdayAndDay(*span.span.noneFrom) : QString();
}

QString done(const MiteSpan& span) {
    if (span.work.empty()) return Words::tr("none");
    QStringList parts;
    for (const auto& work : span.work) {
        auto one = Words::tr("%1, %2").arg(plain(work->what), weekdayAndDay(work->day));
        if (!work->note.empty()) one = Words::tr("%1 (%2)").arg(one, plain(work->note));
        parts += one;
    }
    return parts.join(QStringLiteral("; "));
}

QString whySpan(const MiteSpan& span, const Facts& facts) {
    if (span.outside)
        return Words::tr(
            "Done on a day with open brood, as far as is known: mites in sealed brood "
            "are not reached.");
    return Words::tr(
               "All open brood is sealed by the ninth day after the last eggs (S1, S2, S27), all "
               "workers are out after %1. New brood: brood put in, or the first day on which a "
               "queen of the batch can lay. What was not noted is not known.")
        .arg(number(whole(facts, Fact::WorkerD)));
}

QString allOfSeason() { return Words::tr("&All of the season"); }
QString noSpans() {
    return Words::tr(
        "No nuc and no builder is without open brood in these days, as far as is "
        "noted.");
}
QString day() { return Words::tr("Day"); }
QString whatWasDone() { return Words::tr("What was done"); }
QString note() { return Words::tr("Note"); }
QString enterWork(int places) { return Words::tr("Enter for %Ln place(s)", nullptr, places); }
QString takeBackWork() { return Words::tr("&Take back"); }
QString chooseSpans() { return Words::tr("Choose the nucs and builders in the list."); }
QString mitesCaution() {
    return Words::tr(
        "Follow the label and the local rules (S117): what is allowed, when, at what warmth, with "
        "cells or virgins in the box, and what to wear. Ask your bee inspector.");
}

}  // namespace tenthday::upkeep_text
