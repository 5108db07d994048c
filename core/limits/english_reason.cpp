#include "calendar/plain_words.h"
#include "limits/season_limits.h"

namespace tenthday {
namespace {

std::string at(const SeasonLimit& limit) {
    return plainDay(*limit.cause) + (limit.yard ? " in " + limit.yard->label : std::string());
}
std::string days(const SeasonLimit& limit) {
    return std::to_string(limit.days) + (limit.days == 1 ? " day" : " days");
}

std::string unknown(Limit limit) {
    switch (limit) {
        case Limit::DronesReady:
            return "not known: no drones or drone comb of this season are noted";
        case Limit::DronesOut:
            return "not known: no mating yard says when its drones are thrown out";
        case Limit::FlyingWeatherFrom:
        case Limit::FlyingWeatherUntil:
            return "not known: there is no weather of past years that lets virgins out in time";
        case Limit::WinterBeesTwoRounds:
        case Limit::WinterBeesOneRound:
            return "not known: no yard has a day of hard frost";
    }
    return {};
}

}  // namespace

std::string englishReason(const SeasonLimit& limit) {
    if (limit.open) return "none: virgins of every graft find flying weather in time";
    if (!limit.day) return unknown(limit.limit);
    switch (limit.limit) {
        case Limit::DronesReady:
            return "drones are mature from " + at(limit) + "; first flights are " + days(limit) +
                   " after the graft";
        case Limit::FlyingWeatherFrom:
            return "the first graft whose virgins find flying weather in time";
        case Limit::DronesOut:
            return "drones are thrown out about " + at(limit) + "; queens fly up to " +
                   days(limit) + " after the graft";
        case Limit::FlyingWeatherUntil:
            return "the last graft whose virgins find flying weather in time";
        case Limit::WinterBeesTwoRounds:
            return "hard frost about " + at(limit) + "; two rounds of her own bees take " +
                   days(limit) + " from the graft";
        case Limit::WinterBeesOneRound:
            return "hard frost about " + at(limit) + "; one round of her own bees, the last " +
                   "chance, takes " + days(limit) + " from the graft";
    }
    return {};
}

}  // namespace tenthday
