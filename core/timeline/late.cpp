#include "timeline/late.h"

namespace tenthday {
namespace {

constexpr std::int32_t kLeastDays = 3;

double meanFlightDays(const Facts& facts) {
    const double second = facts[Fact::FlightShare2];
    const double third = facts[Fact::FlightShare3];
    const double all = facts[Fact::FlightShare1] + second + third;
    return facts[Fact::FirstFlightD] + (all > 0 ? (second + 2 * third) / all : 1);
}

std::int32_t daysWithoutFlying(const DayWindow& days, const MatingTable& mating) {
    std::int32_t count = 0;
    for (Day day = days.first; day <= days.last; day += Days{1})
        if (mating.knownToFly(day) == false) ++count;
    return count;
}

}  // namespace

Moment fairFirstEggs(const BatchTimeline& timeline, const Facts& facts) {
    const auto* emergence = timeline.find(Event::Emergence);
    const double days = meanFlightDays(facts) + facts[Fact::EggsAfterFlightD];
    return hoursAfter(emergence ? emergence->likely : timeline.graft, days * 24);
}

std::int32_t lateByWeather(const BatchTimeline& timeline, const MatingTable& mating,
                           const Facts& facts) {
    const auto* due = timeline.find(Event::DueToFly);
    if (!timeline.weather || due == nullptr) return 0;
    const auto behind = dayOf(timeline.levelEggs) - dayOf(fairFirstEggs(timeline, facts));
    if (behind.count() < kLeastDays) return 0;
    const DayWindow wait{dayOf(due->earliest), timeline.hold.lookDay};
    const auto days = daysWithoutFlying(wait, mating);
    return days < kLeastDays ? 0 : days;
}

}  // namespace tenthday
