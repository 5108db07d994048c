#include "biology/drones.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

TEST(Drones, AreMatureFortyDaysFromTheEgg) {
    EXPECT_EQ(droneMatureAge(Facts()), 40);  // S1, S18, S53
    EXPECT_EQ(dronesMatureBy(DroneStage::Eggs, day("2027-04-01"), Facts()), day("2027-05-11"));
    EXPECT_EQ(dronesMatureBy(DroneStage::CombIn, day("2027-04-01"), Facts()), day("2027-05-11"));
    EXPECT_EQ(dronesMatureBy(DroneStage::Emerging, day("2027-04-01"), Facts()), day("2027-04-17"));
    EXPECT_EQ(dronesMatureBy(DroneStage::Flying, day("2027-04-01"), Facts()), day("2027-04-01"));
}

TEST(Drones, PurpleEyesAreThreeToFourDaysLateForTheEarliestFlights) {
    // A graft on the day they are seen has its first flights on day 18 (S57; derived).
    const auto age = droneAge(DroneStage::PurpleEyes, Facts());
    EXPECT_EQ(droneMatureAge(Facts()) - age.oldest - 18, 3);
    EXPECT_EQ(droneMatureAge(Facts()) - age.youngest - 18, 4);
}

TEST(Drones, OlderStagesAreMatureSooner) {
    for (std::size_t i = 1; i < kTokenCount<DroneStage>; ++i) {
        const auto younger = static_cast<DroneStage>(i - 1);
        const auto older = static_cast<DroneStage>(i);
        EXPECT_LE(dronesMatureBy(older, day("2027-04-01"), Facts()),
                  dronesMatureBy(younger, day("2027-04-01"), Facts()));
        const auto age = droneAge(older, Facts());
        EXPECT_LE(age.youngest, age.oldest);
    }
}

TEST(DroneColonies, AreEightAtLeastAndOneForTwentyFiveQueens) {
    const std::pair<double, int> cases[] = {{0, 0},   {1, 8},   {200, 8},  // S16 [D]
                                            {201, 9}, {225, 9}, {300, 12}};
    for (const auto& [virgins, colonies] : cases)
        EXPECT_EQ(droneColoniesFor(virgins, Facts()), colonies) << virgins;
}

}  // namespace
}  // namespace tenthday
