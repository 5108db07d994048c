#include "screen_text/drone_text.h"

#include <cmath>

#include "screen_text/chart_text.h"
#include "screen_text/dates.h"
#include "screen_text/fact_text.h"
#include "screen_text/words.h"

namespace tenthday::drone_text {
namespace {

QString colonies(const DroneNeed& need) {
    const auto wanted = Words::tr("%Ln strong drone colony(ies) wanted", nullptr, need.wanted);
    if (!need.noted) return Words::tr("%1, none noted").arg(wanted);
    return Words::tr("%1, %2 noted").arg(wanted, chart_text::number(*need.noted));
}

QString need(const DroneNeed& need) {
    const auto virgins = static_cast<int>(std::lround(std::max(1.0, need.virgins)));
    const auto text =
        Words::tr("%1: about %2 virgins due to fly at one time on %3; %4.")
            .arg(QString::fromStdString(need.yard->label), chart_text::number(virgins),
                 weekdayAndDay(need.peak), colonies(need));
    const auto then = need.mature
                          ? Words::tr("Drones mature from %1.").arg(weekdayAndDay(*need.mature))
                          : Words::tr("Put drone comb in by %1, at the latest on %2.")
                                .arg(weekdayAndDay(need.combBy), weekdayAndDay(need.combLast));
    return text + u' ' + then;
}

}  // namespace

QStringList needs(const std::vector<DroneNeed>& drones) {
    QStringList lines;
    for (const auto& one : drones) lines += need(one);
    if (lines.isEmpty())
        lines += Words::tr("Drones: no virgin of this season flies from a yard yet.");
    return lines;
}

QString why(const Facts& facts) {
    QStringList lines;
    for (const auto fact : {Fact::DroneColoniesLeast, Fact::QueensPerDroneColony,
                            Fact::DroneCombBeforeD, Fact::DroneEmergenceD, Fact::DroneMatureD}) {
        const auto& entry = facts.entry(fact);
        lines += Words::tr("%1: %2 %3")
                     .arg(fact_text::name(fact), fact_text::value(entry, facts[fact]),
                          fact_text::unit(entry));
        lines += fact_text::sources(entry);
    }
    return lines.join(u'\n');
}

}  // namespace tenthday::drone_text
