// Occupancy against a slow day-by-day simulation written apart: it walks the days, keeps what
// each nuc is, and knows nothing of stretches, sums or first differences.
#include <gtest/gtest.h>

#include <random>

#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

/// One nuc of the simulation.
struct SlowNuc {
    std::string label;
    std::string yard;
    Day stands;
    Day ends = kLastDay;  ///< last day of its layout
    std::vector<std::pair<Day, bool>> stockings;
    /// A cell put in and done; how it ended, if anyone saw.
    struct Round {
        Day in;
        Day catchDay;
        std::optional<Day> caught;
        std::optional<Day> found;  ///< looked, no queen
        Day lost;
    };
    std::vector<Round> rounds;
};

/// Walks from the nuc's first day to `asked` and says whether it is stocked, held, ready there.
struct SlowState {
    bool stands = false;
    bool stocked = false;
    bool held = false;
    bool ready = false;
    bool needsBrood = false;
    bool freeByPlan = false;
};
SlowState walk(const SlowNuc& nuc, Day asked, Day today) {
    SlowState state;
    if (asked < nuc.stands || asked > nuc.ends) return state;
    state.stands = true;
    Day queenlessSince = kLastDay;
    Day lastLife = kFirstDay;
    bool seen = true;
    const SlowNuc::Round* holding = nullptr;
    Day broodWhileHeld = kFirstDay;
    for (Day now = nuc.stands; now <= asked; now += Days{1}) {
        // In the evening of yesterday: who was caught, found missing, stocked?
        const Day eve = now - Days{1};
        if (holding != nullptr) {
            const bool caught = holding->caught == eve;
            const bool found = holding->found == eve;
            const bool planned =
                !holding->caught && !holding->found && std::max(holding->catchDay, today) == eve;
            if (caught || found || planned) {
                seen = !planned;
                queenlessSince = eve;
                lastLife = found ? std::min(holding->lost, eve) : eve + Days{9};
                lastLife = std::max(lastLife, broodWhileHeld);
                holding = nullptr;
            }
        }
        for (const auto& [stockedOn, openBrood] : nuc.stockings)
            if (stockedOn == eve && holding != nullptr) {
                if (openBrood) broodWhileHeld = eve + Days{9};
            } else if (stockedOn == eve) {
                if (!state.stocked) queenlessSince = eve, seen = true;
                state.stocked = true;
                lastLife = std::max(lastLife, eve + Days{openBrood ? 9 : 0});
            }
        for (const auto& round : nuc.rounds)
            if (round.in == now) holding = &round, state.stocked = true, broodWhileHeld = kFirstDay;
    }
    state.held = holding != nullptr;
    if (state.held || !state.stocked) return state;
    state.needsBrood = asked - lastLife >= Days{21};
    const bool free = asked > queenlessSince && !state.needsBrood;
    state.ready = free && seen;
    state.freeByPlan = free && !seen;
    return state;
}

struct Season {
    SeasonMaker maker{"2027-06-20"};
    std::vector<SlowNuc> nucs;
};

std::string text(int month, int dayOfMonth) {
    return toText(Day{date::local_days{date::year{2027} / month / dayOfMonth}});
}

/// Forty nucs in two yards with random stockings; done cells of three batches, some seen.
Season randomSeason(std::uint32_t seed) {
    std::mt19937 random(seed);
    const auto pick = [&](int low, int high) {
        return std::uniform_int_distribution<int>(low, high)(random);
    };
    Season season;
    auto& maker = season.maker;
    maker.yard("East", 0).yard("West", 1).builder("Box", "East");
    const std::vector<std::string> labels{"1", "2", "3"};
    const std::vector<std::string> grafts{text(5, 10), text(5, 24), text(6, 3)};
    for (std::size_t i = 0; i < 3; ++i)
        maker.batch(labels[i], grafts[i], 12, 30, "Box")
            .outcome(labels[i], OutcomeKind::Graft, grafts[i], 30);
    const auto plan = maker.outlook();
    for (int i = 1; i <= 40; ++i) {
        SlowNuc nuc;
        nuc.label = std::to_string(i);
        nuc.yard = pick(0, 1) == 0 ? "East" : "West";
        const auto from = text(4, pick(1, 28));
        nuc.stands = day(from);
        maker.box(nuc.label, nuc.yard, "7", from);
        const auto side = nuc.label + "/-";
        for (int n = pick(0, 2); n > 0; --n) {
            const auto on = text(5, pick(1, 31));
            const bool brood = pick(0, 1) == 1;
            nuc.stockings.emplace_back(day(on), brood);
            maker.stock(side, on, brood);
        }
        std::sort(nuc.stockings.begin(), nuc.stockings.end());
        const int chosen = pick(0, 4);
        const auto batch = static_cast<std::size_t>(chosen);
        if (batch < 3 && !nuc.stockings.empty()) {
            const auto& hold = plan->batches[batch]->timeline.hold;
            if (nuc.stockings.front().first < hold.transferDay) {
                SlowNuc::Round round{hold.transferDay, hold.catchDay, {}, {}, hold.lostDay};
                maker.place(labels[batch], side, toText(round.in), true);
                if (const int end = pick(0, 2); end == 1) {
                    round.caught = round.in + Days{pick(15, 30)};
                    maker.outcome(labels[batch], OutcomeKind::Catch, toText(*round.caught), {},
                                  side);
                } else if (end == 2) {
                    round.found = round.in + Days{pick(10, 20)};
                    maker.outcome(labels[batch], OutcomeKind::NoQueen, toText(*round.found), {},
                                  side);
                }
                nuc.rounds.push_back(round);
            }
        }
        season.nucs.push_back(nuc);
    }
    // No cell is left to be placed by plan: every batch's ripe cells are counted as placed.
    for (const auto& label : labels) maker.outcome(label, OutcomeKind::Ripe, text(6, 14), 0);
    return season;
}

class OccupancySimulation : public ::testing::TestWithParam<std::uint32_t> {};

TEST_P(OccupancySimulation, EverySideOnEveryDay) {
    const auto season = randomSeason(GetParam());
    const auto outlook = season.maker.outlook();
    const Day today = day("2027-06-20");
    for (const auto& nuc : season.nucs) {
        const auto side =
            std::find_if(outlook->nucs.sides.begin(), outlook->nucs.sides.end(),
                         [&](const SideOutlook& s) { return s.box->label == nuc.label; });
        ASSERT_NE(side, outlook->nucs.sides.end());
        for (Day now = day("2027-04-01"); now <= day("2027-08-31"); now += Days{1}) {
            const auto slow = walk(nuc, now, today);
            const auto fast = sideOn(*side, now, today);
            const auto where = nuc.label + " on " + toText(now);
            EXPECT_EQ(fast.ready, slow.ready) << where;
            EXPECT_EQ(fast.needsBrood, slow.needsBrood) << where;
            if (slow.freeByPlan) {
                EXPECT_EQ(fast.likely, 1) << where;
            }
            if (!slow.stands || !slow.stocked) {
                EXPECT_EQ(slow.held ? NucState::Cell : NucState::NotStocked, fast.state) << where;
            }
            float sum = 0;
            for (const auto share : fast.shares) sum += share;
            EXPECT_NEAR(sum, 1, 1e-4) << where;
        }
    }
}

TEST_P(OccupancySimulation, YardsAddUpTheirSides) {
    const auto season = randomSeason(GetParam());
    const auto outlook = season.maker.outlook();
    const Day today = day("2027-06-20");
    for (const auto& yard : outlook->nucs.yards)
        for (std::size_t i = 0; i < yard.days.size(); ++i) {
            const Day now = outlook->season.first + Days{static_cast<int>(i)};
            ReadyNumbers slow;
            int sides = 0;
            int notStocked = 0;
            for (const auto& nuc : season.nucs) {
                if (nuc.yard != yard.yard->label) continue;
                const auto state = walk(nuc, now, today);
                sides += state.stands;
                slow.ready += state.ready;
                slow.needsBrood += state.needsBrood;
                notStocked += state.stands && !state.stocked && !state.held;
                slow.canStock += state.stands && !state.stocked && now > today && now > nuc.stands;
            }
            const auto& fast = yard.days[i];
            const auto where = yard.yard->label + " on " + toText(now);
            EXPECT_EQ(fast.sides, sides) << where;
            EXPECT_EQ(fast.numbers.ready, slow.ready) << where;
            EXPECT_EQ(fast.numbers.needsBrood, slow.needsBrood) << where;
            EXPECT_EQ(fast.numbers.canStock, slow.canStock) << where;
            EXPECT_EQ(fast.stack[0], notStocked) << where;
            int stack = 0;
            for (const auto n : fast.stack) stack += n;
            EXPECT_EQ(stack, sides) << where;
        }
}
INSTANTIATE_TEST_SUITE_P(Seeds, OccupancySimulation, ::testing::Range(1U, 13U));

TEST(BoxLaidOutAnew, CountsAreRightAroundTheDay) {
    SeasonMaker maker("2027-05-01");
    maker.yard("East").box("1", "East", "7", "2027-04-01").layOut("1", "3+3", "2027-05-20");
    const auto outlook = maker.outlook();
    const auto sides = [&](const char* on) {
        return outlook->nucs.yards[0]
            .days[static_cast<std::size_t>((day(on) - outlook->season.first).count())]
            .sides;
    };
    EXPECT_EQ(sides("2027-05-19"), 1);
    EXPECT_EQ(sides("2027-05-20"), 2);
    EXPECT_EQ(sides("2027-05-21"), 2);
}

TEST(PlannedCells, FillTheNamedYardThenWhatIsSurelyReady) {
    SeasonMaker maker("2027-05-20");
    maker.yard("East", 0).yard("West", 1).builder("Box", "East");
    for (int i = 1; i <= 20; ++i) {
        const auto label = std::to_string(i);
        maker.box(label, i <= 10 ? "East" : "West", "7", "2027-04-01");
        maker.stock(label + "/-", "2027-06-01");
    }
    maker.batch("1", "2027-05-25", 12, 20, "Box").share("1", "West", 6);
    const auto outlook = maker.outlook();
    ASSERT_EQ(outlook->nucs.cellsDays.size(), 1U);
    EXPECT_EQ(outlook->nucs.cellsDays[0].ripe, 14);  // 20 x .75 x .95 = 14.25
    EXPECT_EQ(outlook->nucs.cellsDays[0].placed, 14);
    EXPECT_EQ(outlook->nucs.yards[1].blocks[0].cells, 6);
    EXPECT_EQ(outlook->nucs.yards[0].blocks[0].cells, 8);
}

}  // namespace
}  // namespace tenthday
