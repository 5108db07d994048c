/// Seasons that stand for a chain of flying days.
#include "weather/chain_seasons.h"

#include <gtest/gtest.h>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

FlyingChain chainOf(double chance, double persistence) {
    std::vector<FlyingChainDay> days(60, {chance, {}});
    days[20].known = true;
    days[30].known = false;
    days[40].chance.reset();
    return {day("2027-05-01"), std::move(days), persistence};
}

TEST(ChainSeasons, EachDayFliesInItsShareOfSeasons) {
    for (const double chance : {.2, .5, .9}) {
        const auto chain = chainOf(chance, .4);
        const auto seasons = chainSeasons(chain);
        ASSERT_EQ(seasons.size(), kChainSeasons);
        for (int i = 0; i < 60; ++i) {
            double share = 0;
            for (const auto& season : seasons) share += season[static_cast<std::size_t>(i)];
            share /= static_cast<double>(seasons.size());
            const auto expected = chain.chance(chain.window().first + Days{i}).value_or(0);
            EXPECT_NEAR(share, expected, .006) << chance << ' ' << i;
        }
    }
}

TEST(ChainSeasons, GoodDaysFollowGoodOnes) {
    const auto chain = chainOf(.5, .4);
    int flew = 0;
    int again = 0;
    for (const auto& season : chainSeasons(chain))
        for (std::size_t i = 1; i < 20; ++i) {
            flew += season[i - 1];
            again += season[i - 1] & season[i];
        }
    EXPECT_NEAR(static_cast<double>(again) / flew, .5 + .4 * .5, .02);
}

TEST(ChainSeasons, AreTheSameAtEveryCall) {
    const auto chain = chainOf(.5, .4);
    EXPECT_EQ(chainSeasons(chain), chainSeasons(chain));
    EXPECT_NE(chainSeasons(chain)[0], chainSeasons(chain)[1]);
}

}  // namespace
}  // namespace tenthday
