#include "limits/season_limits.h"

#include <gtest/gtest.h>

#include "outlook/sky.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::id;
using test::SeasonMaker;

/// A book of one mating yard with what is known of it; more by hand.
struct Place {
    const char* frost = nullptr;
    const char* dronesOut = nullptr;
    Snapshot snapshot = SeasonMaker("2027-03-01").yard("Heath").snapshot();

    Id<Yard> yard() const { return (*snapshot.all<Yard>().begin())->id; }
    void change(const ChangeSet& changes) { snapshot = applied(snapshot, changes).value(); }
    Place& know(const char* frostDay, const char* dronesOutDay) {
        const auto before = snapshot.find(yard());
        Yard after = *before;
        if (frostDay) after.frostDay = day(frostDay);
        if (dronesOutDay) after.dronesOutDay = day(dronesOutDay);
        ChangeSet changes;
        changes.edit(before, after);
        change(changes);
        return *this;
    }
    Place& see(DroneStage stage, const char* on) {
        ChangeSet changes;
        changes.add(DroneSighting{id<DroneSighting>(++seen), 1, yard(), day(on), stage, {}, {}});
        change(changes);
        return *this;
    }
    Place& setFact(Fact fact, double value) {
        ChangeSet changes;
        changes.add(FactOverride{id<FactOverride>(++seen), 1, std::string(token(fact)),
                                 static_cast<std::int32_t>(value * 1000)});
        change(changes);
        return *this;
    }
    SeasonLimits limits() const { return seasonLimits(snapshot, *matingTable(snapshot)); }
    std::uint64_t seen = 900'000;
};

std::vector<std::string> binding(const SeasonLimits& limits) {
    std::vector<std::string> names;
    for (const auto& limit : limits.all)
        if (limit.binds) names.emplace_back(token(limit.limit));
    return names;
}

// facts.md section 7 [D] and the worked case: hard frost 15 October, drones out 25 August.
TEST(LastGraft, DronesThatGoInAugustBind) {
    const auto limits = Place{}.know("2027-10-15", "2027-08-25").limits();
    EXPECT_EQ(limits[Limit::WinterBeesTwoRounds].day, day("2027-08-08"));
    EXPECT_EQ(limits[Limit::WinterBeesOneRound].day, day("2027-08-29"));
    EXPECT_EQ(limits.lastGraft(), day("2027-08-01"));
    EXPECT_EQ(binding(limits), std::vector<std::string>{"drones_out"});
    EXPECT_FALSE(limits.firstGraft());
}

TEST(LastGraft, ForQueensThatFlyAtEightDaysItIsFourDaysLater) {
    const auto limits =
        Place{}.know("2027-10-15", "2027-08-25").setFact(Fact::DronesBeforeOutD, 20).limits();
    EXPECT_EQ(limits.lastGraft(), day("2027-08-05"));
}

TEST(LastGraft, TheLastChanceTakesDronesThatStay) {
    auto place = Place{}.know("2027-10-15", "2027-09-22");
    auto limits = place.limits();
    EXPECT_EQ(limits[Limit::DronesOut].day, day("2027-08-29"));
    EXPECT_EQ(limits[Limit::DronesOut].day, limits[Limit::WinterBeesOneRound].day);
    EXPECT_EQ(limits.lastGraft(), day("2027-08-08")) << "two rounds bind then";
    EXPECT_EQ(binding(limits), std::vector<std::string>{"winter_bees_two_rounds"});
    place.setFact(Fact::DronesBeforeOutD, 20).know(nullptr, "2027-09-18");
    EXPECT_EQ(place.limits()[Limit::DronesOut].day, day("2027-08-29"));
}

TEST(FirstGraft, WaitsForMatureDrones) {
    // S57 with S53: purple-eyed pupae are 3 to 4 days late for first flights on day 18.
    const auto limits = Place{}.see(DroneStage::PurpleEyes, "2027-05-01").limits();
    EXPECT_EQ(limits[Limit::DronesReady].cause, day("2027-05-23"));
    EXPECT_EQ(limits.firstGraft(), day("2027-05-05"));
    // The earliest of what was seen counts; last year's drones do not.
    EXPECT_EQ(Place{}
                  .see(DroneStage::PurpleEyes, "2027-05-01")
                  .see(DroneStage::Emerging, "2027-04-28")
                  .see(DroneStage::Flying, "2026-06-01")
                  .limits()
                  .firstGraft(),
              day("2027-04-26"));
}

TEST(FirstGraft, DroneCombGoesInTwoMonthsBeforeTheFlights) {
    // S18: graft -42, since first flights are on day 18.
    EXPECT_EQ(droneCombBy(day("2027-05-30"), Facts()), day("2027-04-18"));
}

TEST(SeasonLimits, AreUnknownInABareBookAndSaySo) {
    const auto limits = Place{}.limits();
    ASSERT_EQ(limits.all.size(), kTokenCount<Limit>);
    for (const auto& limit : limits.all) {
        EXPECT_FALSE(limit.day);
        EXPECT_FALSE(limit.binds);
        EXPECT_TRUE(englishReason(limit).starts_with("not known"));
    }
}

TEST(SeasonLimits, AnotherYearsDatesCountByMonthAndDay) {
    const auto limits = Place{}.know("2019-10-15", "2031-08-25").limits();
    EXPECT_EQ(limits.lastGraft(), day("2027-08-01"));
    const DayWindow south{day("2026-09-01"), day("2027-04-30")};
    EXPECT_EQ(inSeason(day("2027-04-01"), south), day("2027-04-01"));
    EXPECT_EQ(inSeason(day("2020-04-01"), south), day("2027-04-01"));
    EXPECT_EQ(inSeason(day("2020-10-15"), south), day("2026-10-15"));
    EXPECT_EQ(inSeason(day("2024-02-29"), south), day("2027-02-28"));
}

TEST(SeasonLimits, OfYardsTheLongestSeasonStands) {
    SeasonMaker maker("2027-03-01");
    auto snapshot = maker.yard("Early").yard("Late").yard("Home").snapshot();
    ChangeSet changes;
    const auto give = [&](const char* label, const char* roles, const char* dronesOut) {
        const auto before = snapshot.find(maker.yardId(label));
        Yard after = *before;
        after.roles = roles;
        after.dronesOutDay = day(dronesOut);
        changes.edit(before, after);
    };
    give("Early", "mating", "2027-08-01");
    give("Late", "drone mating", "2027-08-20");
    give("Home", "builder", "2027-09-20");  // no mating there
    snapshot = applied(snapshot, changes).value();
    const auto limit = seasonLimits(snapshot, *matingTable(snapshot))[Limit::DronesOut];
    EXPECT_EQ(limit.cause, day("2027-08-20"));
    EXPECT_EQ(limit.yard->label, "Late");
    EXPECT_NE(englishReason(limit).find("Late"), std::string::npos);
}

TEST(SeasonLimits, WeatherThatIsFineAllThroughIsNoLimit) {
    SeasonMaker maker("2027-03-01");
    maker.yard("Heath").weather("2025-01-01", "2026-12-31", 25);
    const auto snapshot = maker.snapshot();
    const auto limits = seasonLimits(snapshot, *matingTable(snapshot));
    for (const auto limit : {Limit::FlyingWeatherFrom, Limit::FlyingWeatherUntil}) {
        EXPECT_FALSE(limits[limit].day);
        EXPECT_FALSE(limits[limit].binds);
        EXPECT_TRUE(englishReason(limits[limit]).starts_with("none"));
    }
}

/// Flying days from 1 May to 31 August of a past year, none else.
TEST(SeasonLimits, WeatherSetsFirstAndLastGraft) {
    SeasonMaker maker("2027-03-01");
    maker.yard("Heath")
        .weather("2025-01-01", "2025-04-30", 10)
        .weather("2025-05-01", "2025-08-31", 22);
    maker.weather("2025-09-01", "2025-12-31", 10);
    auto snapshot = maker.snapshot();
    Place place;
    place.snapshot = snapshot;
    place.setFact(Fact::SeasonShiftD, 0);
    const auto limits = place.limits();
    // Virgins of a graft on 30 March are out on 11 April and 21 days old on 2 May: two flying days
    // for those who need a second. Of 11 August all fly from the 29th to the 31st, and 9 % miss
    // one.
    ASSERT_TRUE(limits[Limit::FlyingWeatherFrom].day);
    const Day first = *limits[Limit::FlyingWeatherFrom].day;
    const Day last = *limits[Limit::FlyingWeatherUntil].day;
    const auto mating = matingTable(place.snapshot);
    const auto mates = [&](Day graft) { return 1 - mating->find(graft + Days{12})->neverMates; };
    EXPECT_GE(mates(first), 0.8);
    EXPECT_LT(mates(first - Days{1}), 0.8);
    EXPECT_GE(mates(last), 0.8);
    EXPECT_LT(mates(last + Days{1}), 0.8);
    EXPECT_EQ(first, day("2027-03-30"));
    EXPECT_EQ(last, day("2027-08-11"));
    EXPECT_EQ(binding(limits),
              (std::vector<std::string>{"flying_weather_from", "flying_weather_until"}));
}

}  // namespace
}  // namespace tenthday
