#include "biology/drones.h"

#include <algorithm>
#include <cmath>

namespace tenthday {
namespace {

constexpr double kPurpleFrom = 18;  // d from the egg (derived, S57)
constexpr double kPurpleTo = 19;

}  // namespace

DroneAge droneAge(DroneStage stage, const Facts& facts) {
    const double hatched = facts[Fact::EggH] / 24;
    const double sealed = facts[Fact::DroneSealingD];
    const double out = facts[Fact::DroneEmergenceD];
    switch (stage) {
        case DroneStage::CombIn:
            return {0, 0};
        case DroneStage::Eggs:
            return {0, hatched};
        case DroneStage::Larvae:
            return {hatched, sealed};
        case DroneStage::Sealed:
            return {sealed, out};
        case DroneStage::PurpleEyes:
            return {kPurpleFrom, kPurpleTo};
        case DroneStage::Emerging:
            return {out, out};
        case DroneStage::Flying:
            return {droneMatureAge(facts), droneMatureAge(facts)};
    }
    return {0, 0};
}

double droneMatureAge(const Facts& facts) {
    return facts[Fact::DroneEmergenceD] + facts[Fact::DroneMatureD];
}

Day dronesMatureBy(DroneStage stage, Day day, const Facts& facts) {
    const double wait = droneMatureAge(facts) - droneAge(stage, facts).youngest;
    return day + Days{static_cast<int>(std::ceil(std::max(wait, 0.0)))};
}

std::int32_t droneColoniesFor(double virgins, const Facts& facts) {
    if (virgins <= 0) return 0;
    const double share = std::ceil(virgins / facts[Fact::QueensPerDroneColony] - 1e-9);
    return static_cast<std::int32_t>(std::max(share, facts[Fact::DroneColoniesLeast]));
}

}  // namespace tenthday
