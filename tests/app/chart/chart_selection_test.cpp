#include "chart/chart_selection.h"

#include <gtest/gtest.h>

#include "chart/magnet.h"
#include "support/days.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

TEST(ChartSelection, WalksLoadsInTime) {
    const auto season = sampleOutlook();
    std::optional<TargetKey> at = nextLoad(*season, {}, 1);
    ASSERT_TRUE(at);
    std::vector<Day> days;
    std::vector<TargetKey> keys;
    while (at) {
        days.push_back(*at->day);
        keys.push_back(*at);
        at = nextLoad(*season, *at, 1);
    }
    std::size_t loads = 0;
    for (const auto& batch : season->batches) loads += batch->timeline.loads.size();
    EXPECT_EQ(days.size(), loads);
    EXPECT_TRUE(std::is_sorted(days.begin(), days.end()));
    ASSERT_GE(keys.size(), 2U);
    EXPECT_EQ(nextLoad(*season, keys[1], -1), keys[0]);
    EXPECT_FALSE(nextLoad(*season, keys[0], -1));
}

TEST(ChartSelection, WalksYardsInDrivingOrder) {
    const auto season = sampleOutlook();
    std::vector<Id<Yard>> yards;
    for (auto at = nextYard(*season, {}, 1); at; at = nextYard(*season, *at, 1))
        yards.push_back(at->yard);
    ASSERT_EQ(yards.size(), season->nucs.yards.size());
    for (std::size_t i = 0; i < yards.size(); ++i)
        EXPECT_EQ(yards[i], season->nucs.yards[i].yard->id);
}

TEST(ChartSelection, GoesFromClashToClashAndBack) {
    const auto season = sampleOutlook();
    std::vector<int> met;
    Day from = season->season.first;
    int index = -1;
    while (const auto next = nextClash(*season, from, index, 1)) {
        met.push_back(*next);
        index = *next;
        from = season->findings[static_cast<std::size_t>(*next)].day;
    }
    const auto clashes = std::count_if(
        season->findings.begin(), season->findings.end(), [&](const Finding& finding) {
            return finding.severity != Severity::Note && finding.day > season->season.first;
        });
    EXPECT_EQ(static_cast<std::ptrdiff_t>(met.size()), clashes);
    ASSERT_GE(met.size(), 2U);
    EXPECT_EQ(nextClash(*season, from, met.back(), -1), met[met.size() - 2]);
}

TEST(ChartSelection, GoesToWorkThatMustBeDoneOnItsDay) {
    const auto season = sampleOutlook();
    const auto today = season->snapshot.today();
    const auto next = nextMust(*season, today, 1);
    ASSERT_TRUE(next);
    EXPECT_GT(*next, today);
    bool must = false;
    for (const auto& task : tasksOf(*season)) {
        must = must || (task.day == *next && task.must);
        if (task.must && !task.done && task.day > today) {
            EXPECT_GE(task.day, *next);
        }
    }
    EXPECT_TRUE(must);
}

struct DrawnCase {
    const char* name;
    double days;
    std::vector<int> clear;
    int expected;
};
void PrintTo(const DrawnCase& c, std::ostream* out) { *out << c.name; }
class DrawnTo : public ::testing::TestWithParam<DrawnCase> {};

TEST_P(DrawnTo, ClearDaysFromFurtherAway) {
    const auto& [name, days, clear, expected] = GetParam();
    const Day start = day("2027-06-10");
    std::vector<Day> all;
    for (const int by : clear) all.push_back(start + Days{by});
    EXPECT_EQ(drawnTo(start, days, all), Days{expected});
}
// clang-format off
INSTANTIATE_TEST_SUITE_P(Each, DrawnTo, ::testing::Values(
    DrawnCase{"NoClearDayIsRounded",     1.6, {},     2},
    DrawnCase{"NearlyAtAClearDay",       1.3, {2},    2},
    DrawnCase{"JustBeforeItLetsGo",      1.1, {2},    1},
    DrawnCase{"BetweenTwoTheNearer",     2.6, {2, 3}, 3},
    DrawnCase{"ADayBetweenCanBeReached", 3.1, {2, 4}, 3},
    DrawnCase{"Backwards",              -1.3, {-2},  -2}),
    [](const auto& test) { return std::string(test.param.name); });
// clang-format on

}  // namespace
}  // namespace tenthday::test
