#include "screen_text/flying_text.h"

#include <cmath>

#include "screen_text/because.h"
#include "screen_text/dates.h"
#include "screen_text/words.h"
#include "timeline/late.h"
#include "weather/record_only.h"

namespace tenthday::flying_text {
namespace {

/// What the chance is counted from.
QString countedFrom(const MatingTable& mating) {
    if (!mating.seasons()) return Words::tr("counted from the months' weather");
    const auto years = static_cast<int>(mating.seasons()->years().size());
    return Words::tr("counted from %Ln past year(s)", nullptr, years);
}

QString seen(bool flying, bool isPast) {
    if (isPast) return flying ? Words::tr("a flying day") : Words::tr("no flying day");
    return flying ? Words::tr("likely a flying day") : Words::tr("likely no flying day");
}

/// Of this year's days alone, those that are not known.
void addUnknown(const Outlook& outlook, CardText& card) {
    if (!isThisYearOnly(outlook)) return;
    card.lines.push_back({Words::tr("weather not known"),
                          {},
                          Words::tr("no past year and no usual weather of the months to go by")});
    card.lines.push_back({Words::tr("first eggs"), Words::tr("at a fixed figure"),
                          because::days(outlook.snapshot.facts(), Fact::FirstEggsD,
                                        Words::tr("after emergence, whatever the weather"))});
}

void addWeather(const Outlook& outlook, Day day, CardText& card) {
    const auto& mating = outlook.mating;
    if (!mating) return;
    if (const auto known = mating->knownToFly(day)) {
        const bool isPast = day <= outlook.snapshot.today();
        card.lines.push_back({seen(*known, isPast),
                              {},
                              isPast ? Words::tr("by the weather recorded for it")
                                     : Words::tr("by the weather forecast for it")});
        return;
    }
    const auto chance = mating->chanceToFly(day);
    if (!chance) return addUnknown(outlook, card);
    const auto percent = QString::number(static_cast<int>(std::lround(*chance * 100)));
    card.lines.push_back({Words::tr("chance of a flying day"), Words::tr("%1 %").arg(percent),
                          countedFrom(*mating)});
}

QString place(const SeasonLimit& limit) {
    return limit.yard ? Words::tr("in %1").arg(QString::fromStdString(limit.yard->label))
                      : QString();
}

void addDrones(const Outlook& outlook, CardText& card) {
    for (const auto& limit : outlook.limits.all) {
        if (!limit.cause) continue;
        if (limit.limit == Limit::DronesReady)
            card.lines.push_back(
                {Words::tr("drones mature from"), weekdayAndDay(*limit.cause), place(limit)});
        if (limit.limit == Limit::DronesOut)
            card.lines.push_back(
                {Words::tr("drones thrown out about"), weekdayAndDay(*limit.cause), place(limit)});
    }
}

}  // namespace

QString flyingDays() { return Words::tr("Flying days"); }
QString drones() { return Words::tr("Drones"); }
QString dronesMature() { return Words::tr("drones mature"); }
QString dronesUntil(Day day) { return Words::tr("drones until %1").arg(shortDay(day)); }

bool isThisYearOnly(const Outlook& outlook) {
    return outlook.mating && outlook.mating->chain() && isRecordOnly(*outlook.mating->chain());
}
QString thisYearOnly() {
    return Words::tr("no past year to reckon with: first eggs at a fixed figure");
}

QString late(const Outlook& outlook, const BatchOutlook& batch) {
    // At a station it is the stay that counts, not the weather at home.
    if (!outlook.mating || batch.batch->mating != Mating::Open) return {};
    const auto days = lateByWeather(batch.timeline, *outlook.mating, outlook.snapshot.facts());
    return days > 0 ? Words::tr("late: %Ln day(s) without flying", nullptr, days) : QString();
}

CardText card(const Outlook& outlook, Day day) {
    CardText card;
    card.title = weekdayAndDay(day);
    addWeather(outlook, day, card);
    addDrones(outlook, card);
    return card.lines.empty() ? CardText{} : card;
}

}  // namespace tenthday::flying_text
