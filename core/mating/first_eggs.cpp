#include "mating/first_eggs.h"

namespace tenthday {

MatingTable::MatingTable(const Facts& facts)
    : fixed_{0, facts[Fact::FirstEggsD] * 24, facts[Fact::FirstEggsSdD] * 24},
      flightShares_{facts[Fact::FlightShare1], facts[Fact::FlightShare2],
                    facts[Fact::FlightShare3]} {
    for (std::size_t i = 0; i < flightHours_.size(); ++i)
        flightHours_[i] = (facts[Fact::FirstFlightD] + static_cast<double>(i)) * 24;
}

LayingDelay MatingTable::forEmergence(Day /*day*/) const { return fixed_; }

Spread MatingTable::dueToFly(const Spread& emerged) const {
    return emerged.plusOneOf(flightHours_, flightShares_);
}

Spread MatingTable::firstEggs(const Spread& emerged, Day emergence) const {
    const auto delay = forEmergence(emergence);
    return emerged.plusNormal(delay.meanH, delay.sdH);
}

}  // namespace tenthday
