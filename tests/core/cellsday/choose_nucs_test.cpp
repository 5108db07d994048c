// The choice of nucs against an optimum found apart: every set of nucs is tried.
#include "cellsday/choose_nucs.h"

#include <gtest/gtest.h>

#include <random>
#include <tuple>

#include "support/days.h"

namespace tenthday {
namespace {

using test::day;

/// What makes a choice good, the least is best: fewer sure ones, more yards, younger.
using Worth = std::tuple<std::size_t, std::size_t, std::int64_t>;

Worth worthOf(const std::vector<NucOffer>& offers, const std::vector<std::size_t>& chosen,
              const std::set<std::size_t>& used) {
    std::size_t planned = 0;
    std::int64_t days = 0;
    std::set<std::size_t> yards;
    for (const auto at : chosen) {
        planned += offers[at].certain ? 0 : 1;
        days += offers[at].since.time_since_epoch().count();
        if (!used.contains(offers[at].stop)) yards.insert(offers[at].stop);
    }
    return {planned, yards.size(), days};
}

Worth bestOfAll(const std::vector<NucOffer>& offers, std::size_t cells,
                const std::set<std::size_t>& used) {
    std::optional<Worth> best;
    const auto wanted = std::min(cells, offers.size());
    for (std::uint32_t set = 0; set < (1U << offers.size()); ++set) {
        std::vector<std::size_t> chosen;
        for (std::size_t i = 0; i < offers.size(); ++i)
            if (set >> i & 1U) chosen.push_back(i);
        if (chosen.size() != wanted) continue;
        const auto worth = worthOf(offers, chosen, used);
        if (!best || worth < *best) best = worth;
    }
    return *best;
}

TEST(ChooseNucs, IsAsGoodAsTheBestOfAllSets) {
    std::mt19937 random(2027);
    const auto below = [&](unsigned n) { return static_cast<int>(random() % n); };
    for (int round = 0; round < 400; ++round) {
        std::vector<NucOffer> offers;
        const int count = 1 + below(11);
        const int yards = 1 + below(5);
        const int sure = below(4);  // of four: so many surely ready
        for (int i = 0; i < count; ++i)
            offers.push_back({static_cast<std::size_t>(i),
                              static_cast<std::size_t>(below(static_cast<unsigned>(yards))),
                              day("2027-06-01") + Days{below(15)}, below(4) < sure});
        std::set<std::size_t> used;
        if (below(3) == 0) used.insert(static_cast<std::size_t>(below(5)));
        const auto cells = static_cast<std::size_t>(below(13));
        const auto chosen = chooseNucs(offers, cells, used);
        ASSERT_EQ(chosen.size(), std::min(cells, offers.size()));
        ASSERT_EQ(std::set(chosen.begin(), chosen.end()).size(), chosen.size()) << "one twice";
        auto worth = worthOf(offers, chosen, used);
        auto best = bestOfAll(offers, cells, used);
        const bool mixed = std::get<0>(best) > 0 && std::get<0>(best) < chosen.size();
        ASSERT_EQ(worth, best) << "round " << round << (mixed ? ", sure and planned" : "");
    }
}

TEST(ChooseNucs, TakesOneYardRatherThanTheLongestReady) {
    const std::vector<NucOffer> offers{{0, 0, day("2027-06-01"), true},
                                       {1, 1, day("2027-06-10"), true},
                                       {2, 1, day("2027-06-12"), true}};
    EXPECT_EQ(chooseNucs(offers, 2, {}), (std::vector<std::size_t>{1, 2}));
    EXPECT_EQ(chooseNucs(offers, 1, {}), (std::vector<std::size_t>{0}));
    EXPECT_EQ(chooseNucs(offers, 1, {1}), (std::vector<std::size_t>{1}))
        << "he drives there anyway";
    EXPECT_EQ(chooseNucs(offers, 9, {}).size(), 3U);
    EXPECT_TRUE(chooseNucs(offers, 0, {}).empty());
}

TEST(ChooseNucs, OfEqualsTheYardEarlierOnTheRound) {
    const std::vector<NucOffer> offers{{0, 5, day("2027-06-01"), true},
                                       {1, 2, day("2027-06-01"), true},
                                       {2, 3, day("2027-06-01"), true}};
    EXPECT_EQ(chooseNucs(offers, 1, {}), (std::vector<std::size_t>{1}));
}

TEST(ChooseNucs, ManyYardsAreStillFewest) {
    std::vector<NucOffer> offers;
    for (std::size_t yard = 0; yard < 30; ++yard)
        for (std::size_t i = 0; i <= yard; ++i)
            offers.push_back({offers.size(), yard, day("2027-06-01"), true});
    const auto chosen = chooseNucs(offers, 85, {});  // 30 + 29 + 26 or more: three yards
    std::set<std::size_t> yards;
    for (const auto at : chosen) yards.insert(offers[at].stop);
    EXPECT_EQ(chosen.size(), 85U);
    EXPECT_EQ(yards.size(), 3U);
}

}  // namespace
}  // namespace tenthday
