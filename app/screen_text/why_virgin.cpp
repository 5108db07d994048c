#include "screen_text/why_virgin.h"

#include <algorithm>

#include "screen_text/dates.h"
#include "screen_text/nuc_text.h"
#include "screen_text/virgin_text.h"
#include "screen_text/weather_text.h"
#include "screen_text/words.h"

namespace tenthday::why_text {
namespace {

QString plain(const std::string& text) { return QString::fromStdString(text); }

Input reckoned(const QString& name, const QString& value) {
    return {name, value, Words::tr("reckoned"), {}};
}

void addFacts(const Outlook& outlook, Link& link, std::initializer_list<Fact> facts) {
    for (const auto fact : facts) link.inputs.push_back(number(outlook.snapshot.facts(), fact));
}

QString days(int count) { return Words::tr("%Ln day(s)", nullptr, count); }

QString labelOf(const Outlook& outlook, Id<Batch> id) {
    const auto* batch = outlook.find(id);
    return batch ? plain(batch->batch->label) : QString();
}

void addSeen(const WaitingVirgin& virgin, Link& link) {
    if (virgin.seen)
        link.inputs.push_back(seen(Words::tr("Seen without eggs"), weekdayAndDay(*virgin.seen)));
}

QString ruleOf(const WaitingVirgin& virgin) {
    switch (virgin.reason) {
        case VirginReason::LookNotDue:
            return Words::tr("Her first look is not due yet.");
        case VirginReason::EggsDue:
            return Words::tr(
                "By then enough queens of her age and flying days have eggs to be worth a look.");
        case VirginReason::FewFlyingDays:
            return Words::tr(
                "There were too few flying days: sooner, a look would find too many queens that "
                "only need more time.");
        case VirginReason::WeatherUnknown:
            return Words::tr("No weather is known of her flying days, so her age alone decides.");
        case VirginReason::SeenAgainstRule:
            return Words::tr(
                "After these flying days she should have laid when she was seen. The rules cannot "
                "say how she goes on: look again, at the latest when eggs of her last useful day "
                "are due.");
        case VirginReason::SmallChance:
            return Words::tr(
                "She has had hardly any chance to mate and has hardly any left: she is given up.");
        case VirginReason::TooOld:
            return Words::tr(
                "She is too old to mate and has hardly had a chance to: unmated she would lay "
                "drones only. She is given up.");
    }
    return {};
}

/// What becomes of a nuc whose virgin is given up.
QString endOf(const WaitingVirgin& virgin) {
    if (virgin.advice == VirginAdvice::Recell)
        return Words::tr(
            "Take her out the day before and give a ripe cell: her bees can still take one.");
    if (virgin.advice != VirginAdvice::Combine) return {};
    return virgin.cellDay ? Words::tr(
                                "The next ripe cells come too late for her bees, who have been too "
                                "long without brood: unite them with a nuc that has a queen.")
                          : Words::tr(
                                "No ripe cells are planned: unite her bees with a nuc that has a "
                                "queen.");
}

void addEnd(const Outlook& outlook, const WaitingVirgin& virgin, Link& link) {
    if (virgin.cellDay)
        link.inputs.push_back(
            reckoned(Words::tr("Next ripe cells, batch %1").arg(labelOf(outlook, virgin.cellBatch)),
                     weekdayAndDay(*virgin.cellDay)));
    link.inputs.push_back(reckoned(Words::tr("Her bees take no cell without brood from"),
                                   weekdayAndDay(virgin.needsBroodFrom)));
    addFacts(outlook, link,
             {Fact::GiveUpChance, Fact::NoBroodD, Fact::OpenBroodD, Fact::LostVirginD});
}

}  // namespace

Link virginAdvice(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = virgin_text::word(virgin.advice);
    link.rule = ruleOf(virgin);
    addSeen(virgin, link);
    if (virgin.look) {
        link.when = weekdayAndDay(*virgin.look);
        addFacts(outlook, link, {Fact::FirstLookD, Fact::LikelyLevel, Fact::GiveUpChance});
        return link;
    }
    link.rule += u' ' + endOf(virgin);
    addEnd(outlook, virgin, link);
    return link;
}

Link virginAge(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = Words::tr("Age");
    link.when = virgin.age < 0 ? Words::tr("in her cell") : days(virgin.age);
    const auto out = weekdayAndDay(virgin.outLikely);
    link.rule = virgin.outSeen
                    ? Words::tr("Counted from the day on which she was seen to come out.")
                    : Words::tr("Counted from the day on which half of her batch are out.");
    link.inputs.push_back(virgin.outSeen ? seen(Words::tr("Came out"), out)
                                         : reckoned(Words::tr("Came out"), out));
    if (virgin.outEarliest != virgin.outLatest)
        link.inputs.push_back(
            reckoned(Words::tr("Nine of ten came out from"),
                     Words::tr("%1 to %2")
                         .arg(weekdayAndDay(virgin.outEarliest), weekdayAndDay(virgin.outLatest))));
    if (!virgin.outSeen) addFacts(outlook, link, {Fact::EmergenceH, Fact::EmergenceSdH});
    return link;
}

Link virginFlights(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = Words::tr("Flying days");
    link.when = virgin_text::flown(virgin);
    link.rule = Words::tr(
        "Days from the first on which she could fly to the day before this one, at the latest to "
        "her last useful day. Recorded and forecast days count by their weather or by what was "
        "seen, others by their chance.");
    link.inputs.push_back(reckoned(Words::tr("Could fly from"), weekdayAndDay(virgin.dueDay)));
    link.inputs.push_back(reckoned(Words::tr("Days with flying"), days(virgin.flew)));
    link.inputs.push_back(reckoned(Words::tr("Days without flying"), days(virgin.idle)));
    if (virgin.unknown > 0)
        link.inputs.push_back(reckoned(Words::tr("Days not known"), days(virgin.unknown)));
    addFacts(outlook, link, {Fact::FirstFlightD, Fact::FlyTmaxC, Fact::FlyWindMs, Fact::FlyRainMm});
    return link;
}

Link virginLastDay(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = Words::tr("Last useful day");
    link.when = weekdayAndDay(virgin.lastDay);
    link.rule = Words::tr("A virgin that has not mated by this age will lay drones only.");
    link.inputs.push_back(reckoned(Words::tr("Came out"), weekdayAndDay(virgin.outLikely)));
    addFacts(outlook, link, {Fact::LastMatingD});
    return link;
}

Link virginChances(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = Words::tr("Chance to mate");
    if (!virgin.mated) {
        link.when = Words::tr("not known");
        link.rule = ruleOf(virgin);
        return link;
    }
    link.when = Words::tr("%1 by now, %2 from now on")
                    .arg(nuc_text::percent(*virgin.mated), nuc_text::percent(*virgin.still));
    link.rule =
        Words::tr(
            "For weather alone: that enough flying days lie behind her, and that enough come "
            "before her last useful day. Cells that did not emerge and virgins lost on their "
            "flights are not in it.") +
        u' ' + weather_text::source(*outlook.mating);
    link.inputs.push_back(
        reckoned(Words::tr("Never, for weather"),
                 nuc_text::percent(std::max(1 - *virgin.mated - *virgin.still, 0.0))));
    addSeen(virgin, link);
    addFacts(outlook, link,
             {Fact::FlightShare1, Fact::FlightShare2, Fact::FlightShare3, Fact::SecondFlightShare,
              Fact::LastMatingD});
    return link;
}

Link virginLook(const Outlook& outlook, const WaitingVirgin& virgin) {
    Link link;
    link.what = Words::tr("Next look");
    if (!virgin.look) {
        link.rule = Words::tr("None: she is given up.");
        return link;
    }
    link.when = weekdayAndDay(*virgin.look);
    link.rule = Words::tr(
        "The later of the first look by her age and the day by which enough of those that will lay "
        "have eggs; never before this day.");
    link.inputs.push_back(
        reckoned(Words::tr("First look by her age"), weekdayAndDay(virgin.firstLook)));
    addSeen(virgin, link);
    addFacts(outlook, link, {Fact::FirstLookD, Fact::LikelyLevel, Fact::EggsAfterFlightD});
    return link;
}

std::vector<Link> virgin(const Outlook& outlook, const WaitingVirgin& virgin) {
    return {virginAdvice(outlook, virgin), virginFlights(outlook, virgin),
            virginChances(outlook, virgin), virginLastDay(outlook, virgin),
            virginAge(outlook, virgin)};
}

}  // namespace tenthday::why_text
