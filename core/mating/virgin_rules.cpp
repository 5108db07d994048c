#include "mating/virgin_rules.h"

#include <cmath>

namespace tenthday {

VirginRules virginRules(const Facts& facts) {
    VirginRules rules{
        static_cast<std::int32_t>(std::lround(facts[Fact::FirstFlightD])),
        {facts[Fact::FlightShare1], facts[Fact::FlightShare2], facts[Fact::FlightShare3]},
        facts[Fact::SecondFlightShare],
        static_cast<std::int32_t>(std::lround(facts[Fact::EggsAfterFlightD])),
        static_cast<std::int32_t>(std::lround(facts[Fact::LastMatingD]))};
    const double sum = rules.flightShares[0] + rules.flightShares[1] + rules.flightShares[2];
    for (auto& share : rules.flightShares) share = sum > 0 ? share / sum : 1.0 / 3;
    return rules;
}

NextFlight::NextFlight(std::span<const std::uint8_t> days) : next_(days.size() + 1) {
    next_.back() = kNever;
    for (auto i = days.size(); i-- > 0;)
        next_[i] = days[i] != 0 ? static_cast<std::int32_t>(i) : next_[i + 1];
}

void addSeason(EmergenceDay& day, std::int32_t emergence, const NextFlight& next,
               const VirginRules& rules, double weight) {
    const std::int32_t last = emergence + rules.lastAge;
    for (std::size_t i = 0; i < rules.flightShares.size(); ++i) {
        const double share = rules.flightShares[i] * weight;
        const auto first = next.from(emergence + rules.firstFlight + static_cast<std::int32_t>(i));
        if (first > last) {
            day.neverMates += share;
            continue;
        }
        const auto at = [&](std::int32_t flight) -> double& {
            const std::int32_t age = flight - emergence + rules.eggsAfter;
            return day.eggsAtAge[static_cast<std::size_t>(age)];
        };
        at(first) += share * (1 - rules.secondShare);
        const auto second = next.from(first + 1);
        (second > last ? day.neverMates : at(second)) += share * rules.secondShare;
    }
}

}  // namespace tenthday
