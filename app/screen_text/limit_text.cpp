#include "screen_text/limit_text.h"

#include "screen_text/dates.h"
#include "screen_text/words.h"

namespace tenthday::limit_text {
namespace {

/// The day of the cause, and where it is so.
QString at(const SeasonLimit& limit) {
    const auto day = shortDay(limit.cause.value_or(*limit.day));
    return limit.yard ? Words::tr("%1 in %2").arg(day, QString::fromStdString(limit.yard->label))
                      : day;
}

QString unknown(Limit limit) {
    switch (limit) {
        case Limit::DronesReady:
            return Words::tr("not known: no drones or drone comb of this season are noted");
        case Limit::DronesOut:
            return Words::tr("not known: no mating yard says when its drones are thrown out");
        case Limit::FlyingWeatherFrom:
        case Limit::FlyingWeatherUntil:
            return Words::tr(
                "not known: there is no weather of past years that lets virgins out in time");
        case Limit::WinterBeesTwoRounds:
        case Limit::WinterBeesOneRound:
            return Words::tr("not known: no yard has a day of hard frost");
    }
    return {};
}

}  // namespace

QString reason(const SeasonLimit& limit) {
    if (limit.open) return Words::tr("none: virgins of every graft find flying weather in time");
    if (!limit.day) return unknown(limit.limit);
    switch (limit.limit) {
        case Limit::DronesReady:
            return Words::tr(
                       "drones are mature from %1; first flights are %Ln day(s) after the graft",
                       nullptr, limit.days)
                .arg(at(limit));
        case Limit::FlyingWeatherFrom:
            return Words::tr("the first graft whose virgins find flying weather in time");
        case Limit::DronesOut:
            return Words::tr(
                       "drones are thrown out about %1; queens fly up to %Ln day(s) after the "
                       "graft",
                       nullptr, limit.days)
                .arg(at(limit));
        case Limit::FlyingWeatherUntil:
            return Words::tr("the last graft whose virgins find flying weather in time");
        case Limit::WinterBeesTwoRounds:
            return Words::tr(
                       "hard frost about %1; two rounds of her own bees take %Ln day(s) from the "
                       "graft",
                       nullptr, limit.days)
                .arg(at(limit));
        case Limit::WinterBeesOneRound:
            return Words::tr(
                       "hard frost about %1; one round of her own bees, the last chance, takes "
                       "%Ln day(s) from the graft",
                       nullptr, limit.days)
                .arg(at(limit));
    }
    return {};
}

CardText outside(const SeasonLimits& limits, Day day) {
    const auto first = limits.firstGraft();
    const auto last = limits.lastGraft();
    const bool isBefore = first && day < *first;
    if (!isBefore && !(last && day > *last)) return {};
    CardText card;
    card.title = isBefore ? Words::tr("%1: before the first graft").arg(weekdayAndDay(day))
                          : Words::tr("%1: after the last graft").arg(weekdayAndDay(day));
    for (const auto& limit : limits.all)
        if (limit.binds && isFirst(limit.limit) == isBefore)
            card.lines.push_back({isBefore ? Words::tr("first graft") : Words::tr("last graft"),
                                  weekdayAndDay(*limit.day), reason(limit)});
    return card;
}

}  // namespace tenthday::limit_text
