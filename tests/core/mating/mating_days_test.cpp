#include "mating/mating_days.h"

#include <gtest/gtest.h>

#include <map>
#include <numeric>

#include "core/weather/chain_runs.h"
#include "core/weather/seattle.h"

namespace tenthday {
namespace {

using test::day;
using test::moment;

const DayWindow kYear{day("2027-03-01"), day("2027-11-30")};

/// The day on which one virgin has flown as often as she needs, walked day by day.
template <class Flies>
std::optional<Day> matesOn(Day out, int firstFlight, int flightsNeeded, const Flies& flies) {
    for (int age = firstFlight; age <= 21; ++age)
        if (flies(out + Days{age}) && --flightsNeeded == 0) return out + Days{age};
    return std::nullopt;
}

/// Chance to mate on each day, of never at no day: the plain slow way, added for one weather.
template <class Flies>
void addSlowly(std::map<std::optional<Day>, double>& chances, Day out, double weight,
               const Flies& flies) {
    for (const auto& [firstFlight, share] : {std::pair{6, .3}, {7, .4}, {8, .3}})
        for (const auto& [flights, part] : {std::pair{1, .7}, {2, .3}})
            chances[matesOn(out, firstFlight, flights, flies)] += weight * share * part;
}

/// What would have given eggs by that day is struck out, and the rest made whole.
/// @return what was left of the whole
double strikeOut(std::map<std::optional<Day>, double>& chances, Day noEggsOn) {
    std::erase_if(
        chances, [&](const auto& item) { return item.first && *item.first + Days{3} <= noEggsOn; });
    double left = 0;
    for (const auto& [on, chance] : chances) left += chance;
    for (auto& [on, chance] : chances) chance /= left;
    return left;
}

void expectAgree(const MatingDays& days, const std::map<std::optional<Day>, double>& slow,
                 const DayWindow& asked) {
    for (Day d = asked.first; d <= asked.last; d += Days{1}) {
        double before = 0;
        double from = 0;
        double never = 0;
        for (const auto& [on, chance] : slow) (!on ? never : *on < d ? before : from) += chance;
        EXPECT_NEAR(days.before(d), before, 1e-9) << toText(d);
        EXPECT_NEAR(days.from(d), from, 1e-9) << toText(d);
        EXPECT_NEAR(days.never(), never, 1e-9) << toText(d);
    }
}

/// A table of one season in which every day is known: these flew.
MatingTable knownSeason(const std::vector<Day>& flying) {
    std::vector<FlyingChainDay> days;
    for (Day d = kYear.first; d <= kYear.last; d += Days{1})
        days.push_back({{}, std::find(flying.begin(), flying.end(), d) != flying.end()});
    return MatingTable(Facts(), std::make_shared<const FlyingChain>(kYear.first, days, 0.4));
}

std::vector<EmergenceShare> outOn(Day day) { return {{day, 1}}; }

TEST(EmergenceShares, AreThoseOfTheSpreadDayByDay) {
    const Spread emerged(294, 12, 8);
    const auto graft = moment("2027-05-03T15:00");
    const auto shares = emergenceShares(emerged, graft);
    double sum = 0;
    for (const auto& [on, share] : shares) {
        sum += share;
        EXPECT_NEAR(sum, emerged.by(hoursBetween(graft, Moment{on + Days{1}})), 2e-6);
    }
    EXPECT_NEAR(sum, 1, 1e-12);
    const auto fixed = emergenceShares(Spread(300), graft);
    ASSERT_EQ(fixed.size(), 1U);
    EXPECT_EQ(fixed[0].day, day("2027-05-16"));
    EXPECT_EQ(fixed[0].share, 1);
}

/// Rules of facts 26 to 31 (S47, S52, S58; shares from memory): flights from 6 to 8 d, one flying
/// day for 70 %, two for 30 %, eggs 3 d later.
TEST(MatingDays, ThreeFineDaysAtEightToTenDaysOfAge) {
    const Day out = day("2027-05-16");
    const auto table = knownSeason({out + Days{8}, out + Days{9}, out + Days{10}});
    const auto days = matingDays(table, outOn(out), Facts());
    ASSERT_TRUE(days);
    EXPECT_EQ(days->before(out + Days{8}), 0);
    EXPECT_NEAR(days->from(out + Days{8}), 1, 1e-12);
    EXPECT_NEAR(days->before(out + Days{9}), 0.7, 1e-12) << "all flew, 30 % need another day";
    EXPECT_NEAR(days->from(out + Days{9}), 0.3, 1e-12);
    EXPECT_NEAR(days->before(out + Days{10}), 1, 1e-12);
    EXPECT_NEAR(days->never(), 0, 1e-12);
    EXPECT_EQ(days->eggsBy(0.7), out + Days{11});
    EXPECT_EQ(days->eggsBy(0.8), out + Days{12});
}

TEST(MatingDays, SeenWithoutEggsOnlyTheLateOnesAreLeft) {
    const Day out = day("2027-05-16");
    const auto table = knownSeason({out + Days{8}, out + Days{9}, out + Days{10}});
    const auto days = matingDays(table, outOn(out), Facts(), out + Days{11});
    ASSERT_TRUE(days);
    EXPECT_EQ(days->before(out + Days{9}), 0);
    EXPECT_NEAR(days->before(out + Days{10}), 1, 1e-12);
    EXPECT_EQ(days->eggsBy(0.5), out + Days{12});
    EXPECT_FALSE(matingDays(table, outOn(out), Facts(), out + Days{12})) << "none are left";
    const auto early = matingDays(table, outOn(out), Facts(), out + Days{10});
    EXPECT_NEAR(early->before(out + Days{9}), 0.7, 1e-12) << "eggs were not due yet";
}

TEST(MatingDays, WithoutAFlyingDayUntilTheLastItIsNever) {
    const Day out = day("2027-05-16");
    const auto none = matingDays(knownSeason({out + Days{5}, out + Days{22}}), outOn(out), Facts());
    ASSERT_TRUE(none);
    EXPECT_EQ(none->never(), 1);
    EXPECT_EQ(none->before(out + Days{40}), 0);
    EXPECT_EQ(none->from(out), 0);
    EXPECT_FALSE(none->eggsBy(0.8));
    const auto last = matingDays(knownSeason({out + Days{21}}), outOn(out), Facts());
    EXPECT_NEAR(last->from(out + Days{21}), 0.7, 1e-12) << "the last day counts";
    EXPECT_NEAR(last->never(), 0.3, 1e-12);
}

TEST(MatingDays, WhereNoWeatherIsKnownThereAreNone) {
    EXPECT_FALSE(matingDays(MatingTable(Facts()), outOn(day("2027-05-16")), Facts()));
    EXPECT_FALSE(matingDays(knownSeason({}), outOn(day("2027-11-20")), Facts()))
        << "her age reaches beyond the known days";
}

/// Possible seasons, a batch that comes out over days, with and without a look.
TEST(MatingDays, AgreeWithTheSlowWayOnSeattle) {
    const auto seasons =
        std::make_shared<const FlyingSeasons>(test::seattleFlying({18, 6.7, 1}), kYear, kYear, 7);
    ASSERT_EQ(seasons->size(), 60U);
    const MatingTable table(Facts(), seasons);
    int compared = 0;
    for (const auto* graft : {"2027-04-06T15:00", "2027-05-03T15:00", "2027-08-30T15:00"}) {
        const auto out = emergenceShares(Spread(294, 12, 8), moment(graft));
        const Day first = out.front().day;
        for (const auto seen : {std::optional<Day>(), std::optional(first + Days{15}),
                                std::optional(first + Days{22})}) {
            std::map<std::optional<Day>, double> slow;
            for (std::size_t s = 0; s < seasons->size(); ++s)
                for (const auto& [on, share] : out)
                    addSlowly(slow, on, share / 60, [&](Day d) { return seasons->flies(s, d); });
            const double left = seen ? strikeOut(slow, *seen) : 1;
            const auto days = matingDays(table, out, Facts(), seen);
            if (left < 1e-12) {
                EXPECT_FALSE(days) << graft;
            }
            if (left < 1e-5) continue;  // a quotient of next to nothing
            ASSERT_TRUE(days) << graft;
            expectAgree(*days, slow, {first, first + Days{30}});
            ++compared;
        }
    }
    EXPECT_GE(compared, 5) << "the rest by the rules had surely laid";
}

/// Every run of weather that a chain can take over her flying age, each with its chance.
TEST(MatingDays, AgreeWithEveryWeatherOfAChain) {
    test::Draws draw(20270603);
    for (int climate = 0; climate < 4; ++climate) {
        const auto some = test::someChain(draw, 40);
        const auto chain = some.chain();
        const MatingTable table(Facts(), std::make_shared<const FlyingChain>(chain));
        const Day out = some.first + Days{10};
        std::map<std::optional<Day>, double> slow;
        for (unsigned run = 0; run < 1U << 16; ++run) {  // ages 6 to 21, a bit each
            const auto flies = [&](Day d) { return (run >> ((d - out).count() - 6) & 1) != 0; };
            double chance = 1;
            for (int age = 6; age <= 21 && chance > 0; ++age) {
                const auto& is = some.days[static_cast<std::size_t>(10 + age)];
                double toFly = *chain.chance(out + Days{age});
                if (is.known)
                    toFly = *is.known ? 1 : 0;
                else if (age > 6)
                    toFly = flies(out + Days{age - 1})
                                ? *is.chance + some.persistence * (1 - *is.chance)
                                : *is.chance * (1 - some.persistence);
                chance *= flies(out + Days{age}) ? toFly : 1 - toFly;
            }
            if (chance > 0) addSlowly(slow, out, chance, flies);
        }
        for (const auto seen : {std::optional<Day>(), std::optional(out + Days{13})}) {
            auto expected = slow;
            if (seen && strikeOut(expected, *seen) < 1e-5) continue;
            const auto days = matingDays(table, outOn(out), Facts(), seen);
            ASSERT_TRUE(days);
            expectAgree(*days, expected, {out, out + Days{26}});
        }
    }
}

}  // namespace
}  // namespace tenthday
