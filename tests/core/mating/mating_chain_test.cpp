/// The mating table made from a chain of flying days.
#include <gtest/gtest.h>

#include <array>
#include <numeric>

#include "core/weather/chain_runs.h"
#include "core/weather/seattle.h"
#include "mating/mating_table.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;

const DayWindow kYear{day("2027-03-01"), day("2027-11-30")};

std::shared_ptr<const FlyingChain> chainOf(std::vector<FlyingChainDay> days, double r = 0.4) {
    return std::make_shared<const FlyingChain>(kYear.first, std::move(days), r);
}

std::vector<FlyingChainDay> always(std::optional<double> chance) {
    return std::vector<FlyingChainDay>(static_cast<std::size_t>(kYear.size()), {chance, {}});
}

std::shared_ptr<const FlyingSeasons> alwaysFine() {
    std::vector<FlyingRecordDay> days;
    for (Day d = day("2026-01-01"); d <= day("2026-12-31"); d += Days{1}) days.push_back({d, true});
    return std::make_shared<const FlyingSeasons>(days, kYear, kYear, 0);
}

double sumOf(const EmergenceDay& ahead) {
    return std::accumulate(ahead.eggsAtAge.begin(), ahead.eggsAtAge.end(), ahead.neverMates);
}

TEST(MatingChain, FineWeatherIsThatOfTheSeasons) {
    const MatingTable chain(Facts(), chainOf(always(1)));
    const MatingTable seasons(Facts(), alwaysFine());
    for (Day d = kYear.first - Days{2}; d <= kYear.last + Days{2}; d += Days{1}) {
        ASSERT_EQ(chain.knowsWeather(d), seasons.knowsWeather(d)) << toText(d);
        if (!seasons.knowsWeather(d)) continue;
        EXPECT_EQ(chain.find(d)->neverMates, seasons.find(d)->neverMates);
        ASSERT_EQ(chain.find(d)->eggsAtAge.size(), seasons.find(d)->eggsAtAge.size());
        for (std::size_t age = 0; age < seasons.find(d)->eggsAtAge.size(); ++age)
            EXPECT_NEAR(chain.find(d)->eggsAtAge[age], seasons.find(d)->eggsAtAge[age], 1e-12);
    }
    const auto graft = moment("2027-06-11T15:00");
    const auto laying = chain.laying(Spread(294, 12, 8), graft);
    EXPECT_TRUE(laying.weather);
    EXPECT_EQ(laying.eggs.at(0.8), seasons.laying(Spread(294, 12, 8), graft).eggs.at(0.8));
}

/// A season whose days are all known is one possible season; so the possible seasons of Seattle
/// are the mean of as many chains.
TEST(MatingChain, OfKnownDaysIsThatSeason) {
    const auto seasons =
        std::make_shared<const FlyingSeasons>(test::seattleFlying({18, 6.7, 1}), kYear, kYear, 7);
    ASSERT_EQ(seasons->size(), 60U);
    const MatingTable table(Facts(), seasons);
    std::vector<EmergenceDay> mean(250, {0, std::vector<double>(25)});
    for (std::size_t s = 0; s < seasons->size(); ++s) {
        std::vector<FlyingChainDay> days;
        for (const auto flies : seasons->days(s)) days.push_back({{}, flies != 0});
        const MatingTable chain(Facts(), chainOf(days));
        for (std::size_t i = 0; i < mean.size(); ++i) {
            const auto& ahead = *chain.find(kYear.first + Days{static_cast<int>(i)});
            mean[i].neverMates += ahead.neverMates / 60;
            for (std::size_t age = 0; age < 25; ++age)
                mean[i].eggsAtAge[age] += ahead.eggsAtAge[age] / 60;
        }
    }
    for (std::size_t i = 0; i < mean.size(); ++i) {
        const auto& ahead = *table.find(kYear.first + Days{static_cast<int>(i)});
        EXPECT_NEAR(mean[i].neverMates, ahead.neverMates, 1e-12) << i;
        for (std::size_t age = 0; age < 25; ++age)
            EXPECT_NEAR(mean[i].eggsAtAge[age], ahead.eggsAtAge[age], 1e-12) << i;
    }
}

/// One virgin's age at first eggs in drawn weather; 0 when she never mates.
std::size_t eggsAt(const std::vector<bool>& flies, std::size_t emergence, test::Draws& draw) {
    const double due = draw();
    std::size_t age = due < 0.3 ? 6 : due < 0.7 ? 7 : 8;
    int flights = draw() < 0.3 ? 2 : 1;
    for (; age <= 21; ++age)
        if (flies[emergence + age] && --flights == 0) return age + 3;
    return 0;
}

TEST(MatingChain, AgreesWithVirginsInDrawnWeather) {
    constexpr int kRuns = 20'000;
    constexpr std::size_t kEmergence = 10;
    test::Draws draw(20270610);
    int losing = 0;
    for (int climate = 0; climate < 20; ++climate) {
        const auto some = test::someChain(draw, 40);
        std::array<int, 25> counted{};
        for (int run = 0; run < kRuns; ++run)
            ++counted[eggsAt(test::weatherOf(some, draw), kEmergence, draw)];
        const MatingTable table(Facts(), std::make_shared<const FlyingChain>(some.chain()));
        const auto* ahead = table.find(some.first + Days{kEmergence});
        ASSERT_NE(ahead, nullptr);
        ASSERT_EQ(ahead->eggsAtAge.size(), counted.size());
        EXPECT_NEAR(sumOf(*ahead), 1, 1e-12);
        for (std::size_t age = 0; age < counted.size(); ++age) {
            const double q = age == 0 ? ahead->neverMates : ahead->eggsAtAge[age];
            EXPECT_NEAR(counted[age] / double{kRuns}, q, test::tolerance(q, kRuns))
                << climate << ' ' << age;
        }
        losing += ahead->neverMates > 0.01 && ahead->neverMates < 0.99 ? 1 : 0;
    }
    EXPECT_GE(losing, 5) << "climates in which some mate and some do not";
}

/// Twelve means stand in for the record they are made from. Where flying days are many they do so
/// within a day; in a cool spring the record of four years is too short to say more.
TEST(MatingChain, OfSeattlesMeansIsNearItsRecord) {
    const Facts facts;
    const auto limits = flyingLimits(facts);
    std::vector<FlyingChainDay> days;
    for (const auto& chance :
         flyingChances(test::seattleClimate(), kYear, limits, facts[Fact::TmaxSdC]))
        days.push_back({chance, {}});
    const MatingTable chain(facts, chainOf(days, facts[Fact::FlyPersistence]));
    const MatingTable record(
        facts, std::make_shared<const FlyingSeasons>(test::seattleFlying(limits), kYear, kYear, 7));
    const auto meanAge = [](const EmergenceDay& ahead) {
        double sum = 0;
        for (std::size_t age = 0; age < ahead.eggsAtAge.size(); ++age)
            sum += static_cast<double>(age) * ahead.eggsAtAge[age];
        return sum / (1 - ahead.neverMates);
    };
    for (Day d = day("2027-05-15"); d <= day("2027-09-15"); d += Days{1}) {
        EXPECT_NEAR(meanAge(*chain.find(d)), meanAge(*record.find(d)), 1) << toText(d);
        EXPECT_NEAR(chain.find(d)->neverMates, record.find(d)->neverMates, 0.05) << toText(d);
    }
}

TEST(MatingChain, LastingBadWeatherLosesMoreThanTheSameScattered) {
    const auto lost = [](double r) {
        return MatingTable(Facts(), chainOf(always(0.3), r)).find(day("2027-06-01"))->neverMates;
    };
    EXPECT_GT(lost(0.4), 2 * lost(0));
}

TEST(MatingChain, AForecastMovesTheFirstEggs) {
    auto days = always(0.5);
    const auto at = [](std::string_view on) {
        return static_cast<std::size_t>((day(on) - kYear.first).count());
    };
    for (auto i = at("2027-06-07"); i <= at("2027-06-10"); ++i) days[i].known = false;
    const MatingTable table(Facts(), chainOf(days));
    const auto& ahead = *table.find(day("2027-06-01"));
    for (std::size_t age = 0; age <= 9 + 3; ++age) EXPECT_EQ(ahead.eggsAtAge[age], 0) << age;
    EXPECT_NEAR(ahead.eggsAtAge[10 + 3], 0.7 * 0.3, 1e-12) << "one flight, at 0.5 (1 - 0.4)";
}

TEST(MatingChain, KnowsAsFarAsItsDaysReach) {
    auto days = always(0.5);
    const auto gap = day("2027-07-01");
    days[static_cast<std::size_t>((gap - kYear.first).count())] = {};
    const MatingTable table(Facts(), chainOf(days));
    EXPECT_FALSE(table.knowsWeather(kYear.first - Days{1}));
    EXPECT_TRUE(table.knowsWeather(kYear.first));
    EXPECT_TRUE(table.knowsWeather(kYear.last - Days{21}));
    EXPECT_FALSE(table.knowsWeather(kYear.last - Days{20}));
    EXPECT_TRUE(table.knowsWeather(gap - Days{22}));
    EXPECT_FALSE(table.knowsWeather(gap - Days{21}));
    EXPECT_FALSE(table.knowsWeather(gap - Days{6}));
    EXPECT_TRUE(table.knowsWeather(gap - Days{5})) << "too young to fly in the gap";
    const auto weather = [&](Day emerged) {
        return table.laying(Spread(0, 0, 8), momentOf(emerged)).weather;
    };
    EXPECT_TRUE(weather(gap - Days{30}));
    EXPECT_FALSE(weather(gap - Days{14}));
    EXPECT_FALSE(weather(gap - Days{22})) << "some come out a day later";
    EXPECT_TRUE(weather(gap));
}

TEST(MatingChain, BehindACertainFlyingDayNothingHasToBeKnown) {
    // Out on 1 June: first flights on 7, 8 or 9 June, the second flying day at the latest on the
    // 11th; the days from 12 June on are not known.
    auto days = always({});
    const auto at = [](std::string_view on) {
        return static_cast<std::size_t>((day(on) - kYear.first).count());
    };
    for (auto i = at("2027-06-07"); i <= at("2027-06-11"); ++i) days[i].known = true;
    days[at("2027-06-08")].known = days[at("2027-06-10")].known = false;
    auto full = days;
    for (auto i = at("2027-06-12"); i <= at("2027-06-22"); ++i) full[i].known = false;
    const MatingTable table(Facts(), chainOf(days));
    const MatingTable whole(Facts(), chainOf(full));
    ASSERT_NE(table.find(day("2027-06-01")), nullptr);
    EXPECT_EQ(table.find(day("2027-06-01"))->eggsAtAge, whole.find(day("2027-06-01"))->eggsAtAge);
    EXPECT_EQ(table.find(day("2027-06-01"))->neverMates, 0);
    days[at("2027-06-11")].known = {};
    EXPECT_FALSE(MatingTable(Facts(), chainOf(days)).knowsWeather(day("2027-06-01")))
        << "some still wait for their second";
}

TEST(MatingChain, WithoutDaysItIsTheFixedFigure) {
    const auto graft = moment("2027-06-11T15:00");
    for (const auto& chain :
         {std::shared_ptr<const FlyingChain>(), chainOf({}), chainOf(always({}))}) {
        const MatingTable table(Facts(), chain);
        EXPECT_EQ(table.chain(), chain);
        EXPECT_FALSE(table.knowsWeather(day("2027-06-24")));
        const auto laying = table.laying(Spread(294, 0, 8), graft);
        EXPECT_FALSE(laying.weather);
        EXPECT_NEAR(laying.eggs.at(0.5), 294 + 10.6 * 24, 1e-6);
    }
}

TEST(MatingChain, OddAgesAreReckonedWith) {
    Facts facts;
    ASSERT_TRUE(facts.set(Fact::LastMatingD, 7));
    const auto chain = chainOf(always(1));
    EXPECT_NEAR(MatingTable(facts, chain).find(kYear.first)->neverMates, 0.3 + 0.4 * 0.3, 1e-12);
    ASSERT_TRUE(facts.set(Fact::FirstFlightD, 9));
    EXPECT_NEAR(MatingTable(facts, chain).find(kYear.first)->neverMates, 1, 1e-12);
}

}  // namespace
}  // namespace tenthday
