#include "screen_text/virgin_text.h"

#include <QLocale>
#include <QStringList>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/nuc_text.h"
#include "screen_text/words.h"

namespace tenthday::virgin_text {
namespace {

QString behind(const WaitingVirgins& virgins) {
    if (virgins.idleDays > 0 && virgins.lastFlying)
        return Words::tr("No flying day since %1.").arg(weekdayAndDay(*virgins.lastFlying));
    if (virgins.idleDays > 0)
        return Words::tr("No flying day on the %Ln day(s) before.", nullptr, virgins.idleDays);
    if (virgins.lastFlying) return Words::tr("The day before was a flying day.");
    return Words::tr("Of the day before no weather is known.");
}

QString ahead(const WaitingVirgins& virgins) {
    if (!virgins.nextFlying) return {};
    return *virgins.nextFlying == virgins.day ? Words::tr("This day is a flying day.")
                                              : Words::tr("The next flying day known is %1.")
                                                    .arg(weekdayAndDay(*virgins.nextFlying));
}

QString waiting(const WaitingVirgins& virgins) {
    if (!virgins.firstLastDay) return Words::tr("No virgin waits for a flying day.");
    const auto all = Words::tr("%Ln virgin(s) wait(s) for a flying day.", nullptr, virgins.waiting);
    const auto day = weekdayAndDay(*virgins.firstLastDay);
    return all + u' ' +
           Words::tr("For %Ln of them the last useful day is %1.", nullptr, virgins.untilThen)
               .arg(day);
}

}  // namespace

QString pageEntry() { return Words::tr("&Virgins"); }
QString head(Day day) { return Words::tr("Virgins on %1 %2").arg(longDay(day), yearNumber(day)); }

QString columnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Yard");
        case 1:
            return Words::tr("Nuc");
        case 2:
            return Words::tr("Batch");
        case 3:
            return Words::tr("Age, days");
        case 4:
            return Words::tr("Flying days");
        case 5:
            return Words::tr("Last useful day");
        case 6:
            return Words::tr("Mated");
        case 7:
            return Words::tr("Still can");
        case 8:
            return Words::tr("Next look");
        default:
            return Words::tr("What to do");
    }
}

QString groupColumnHead(int column) {
    switch (column) {
        case 0:
            return Words::tr("Batch");
        case 1:
            return Words::tr("Yard");
        case 2:
            return Words::tr("Nucs");
        case 3:
            return Words::tr("Age, days");
        case 4:
            return Words::tr("Flying days");
        case 5:
            return Words::tr("Mated");
        case 6:
            return Words::tr("Still can");
        default:
            return Words::tr("What to do");
    }
}

QString sentence(const WaitingVirgins& virgins) {
    QStringList parts{behind(virgins), waiting(virgins)};
    if (const auto next = ahead(virgins); !next.isEmpty()) parts += next;
    return parts.join(u' ');
}

QString advised(const std::array<std::int32_t, kTokenCount<VirginAdvice>>& advised) {
    QStringList parts;
    for (std::size_t i = 0; i < advised.size(); ++i)
        if (advised[i] > 0)
            parts += Words::tr("%1: %2").arg(word(static_cast<VirginAdvice>(i)),
                                             chart_text::number(advised[i]));
    return parts.join(QStringLiteral(", "));
}

QString age(std::int32_t days) { return days < 0 ? Words::tr("cell") : chart_text::number(days); }

QString ages(std::int32_t youngest, std::int32_t oldest) {
    return age(youngest) == age(oldest) ? age(oldest)
                                        : Words::tr("%1 to %2").arg(age(youngest), age(oldest));
}

QString flown(const WaitingVirgin& virgin) {
    const int all = virgin.flew + virgin.idle + virgin.unknown;
    if (all == 0) return Words::tr("none yet");
    if (!virgin.flown()) return Words::tr("not known");
    if (virgin.unknown > 0)
        return Words::tr("about %1 of %2").arg(meanFlown(virgin.flown()), chart_text::number(all));
    return Words::tr("%1 of %2").arg(chart_text::number(virgin.flew), chart_text::number(all));
}

QString meanFlown(std::optional<double> days) {
    return days ? QLocale().toString(*days, 'f', 1) : Words::tr("not known");
}

QString chance(std::optional<double> chance) {
    return chance ? nuc_text::percent(*chance) : Words::tr("not known");
}

QString nextLook(const WaitingVirgin& virgin) {
    return virgin.look ? weekdayAndDay(*virgin.look) : Words::tr("none");
}

QString advice(const WaitingVirgin& virgin) {
    switch (virgin.advice) {
        case VirginAdvice::Wait:
            return Words::tr("wait");
        case VirginAdvice::Look:
            return Words::tr("look %1").arg(weekdayAndDay(*virgin.look));
        case VirginAdvice::Recell:
            return Words::tr("recell %1").arg(weekdayAndDay(*virgin.cellDay));
        case VirginAdvice::Combine:
            return Words::tr("combine");
    }
    return {};
}

QString word(VirginAdvice advice) {
    switch (advice) {
        case VirginAdvice::Wait:
            return Words::tr("wait");
        case VirginAdvice::Look:
            return Words::tr("look");
        case VirginAdvice::Recell:
            return Words::tr("recell");
        default:
            return Words::tr("combine");
    }
}

QString filter(int entry) {
    switch (entry) {
        case 0:
            return Words::tr("All virgins");
        case 1:
            return Words::tr("Wait");
        case 2:
            return Words::tr("Look");
        case 3:
            return Words::tr("Recell");
        default:
            return Words::tr("Combine");
    }
}

QString byBatch() { return Words::tr("By yard and batch"); }
QString groupMeans() {
    return Words::tr(
        "Flying days and chances are the mean of the nucs of this batch in this yard; the list "
        "of nucs tells where each comes from. Double-click to change the batch.");
}
QString goToNuc() { return Words::tr("Go to the &nuc"); }
QString changeBatch() { return Words::tr("Change the &batch"); }
QString noVirgins() {
    return Words::tr(
        "No nuc holds a virgin on this day. Nucs stand here from two days before their cell "
        "emerges until their queen is seen laying.");
}
QString leaveShut(const Facts& facts) {
    return Words::tr("On a flying day leave the nucs alone from %1 to %2 h: virgins are out then.")
        .arg(fact_text::value(facts.entry(Fact::FlightFromH), facts[Fact::FlightFromH]),
             fact_text::value(facts.entry(Fact::FlightToH), facts[Fact::FlightToH]));
}

}  // namespace tenthday::virgin_text
