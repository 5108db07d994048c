#include "weather/flying_day.h"

#include <gtest/gtest.h>

#include <array>
#include <cstdio>
#include <locale>
#include <map>
#include <sstream>

#include "core/weather/seattle.h"

namespace tenthday {
namespace {

constexpr FlyingLimits kUsual{18, 6.7, 1};

struct DayCase {
    const char* name;
    DayWeather day;
    std::optional<bool> flying;
};
void PrintTo(const DayCase& c, std::ostream* out) { *out << c.name; }
class FlyingDay : public ::testing::TestWithParam<DayCase> {};

TEST_P(FlyingDay, IsTold) { EXPECT_EQ(isFlyingDay(GetParam().day, kUsual), GetParam().flying); }

// clang-format off
INSTANTIATE_TEST_SUITE_P(Limits, FlyingDay, ::testing::Values(
    DayCase{"JustWarm",       {18.0, 0.0, 2.0, {}},       true},
    DayCase{"NotQuite",       {17.9, 0.0, 2.0, {}},       false},
    DayCase{"JustCalm",       {25.0, 0.0, 6.7, {}},       true},
    DayCase{"TooWindy",       {25.0, 0.0, 6.8, {}},       false},
    DayCase{"AlmostDry",      {25.0, 0.9, 2.0, {}},       true},
    DayCase{"Wet",            {25.0, 1.0, 2.0, {}},       false},
    DayCase{"OnlyTheMaximum", {18.0, {}, {}, {}},         true},
    DayCase{"NoMaximum",      {{}, 0.0, 2.0, {}},         std::nullopt},
    DayCase{"Nothing",        {{}, {}, {}, {}},           std::nullopt},
    DayCase{"FlewAllTheSame", {12.0, 5.0, 9.0, true},     true},
    DayCase{"StayedIn",       {25.0, 0.0, 2.0, false},    false}),
    [](const auto& test) { return std::string(test.param.name); });
// clang-format on

TEST(FlyingLimits, AreTheFacts) {
    Facts facts;
    EXPECT_EQ(flyingLimits(facts).tmaxC, 18);
    EXPECT_EQ(flyingLimits(facts).windMs, 6.7);
    EXPECT_EQ(flyingLimits(facts).rainMm, 1);
    ASSERT_TRUE(facts.set(Fact::FlyTmaxC, 20));
    EXPECT_EQ(flyingLimits(facts).tmaxC, 20);
}

/// "2013-05" -> flying days, counted by awk.
std::map<std::string, int> countedByAwk(const FlyingLimits& limits) {
    std::ostringstream command;
    command.imbue(std::locale::classic());  // no decimal comma, wherever the suite runs
    command << "LC_ALL=C awk -F, 'NR > 1 && $3 >= " << limits.tmaxC << " && $5 <= " << limits.windMs
            << " && $2 < " << limits.rainMm
            << " {n[substr($1, 1, 7)]++} END {for (m in n) print m, n[m]}' '" << test::seattleFile()
            << "'";
    std::map<std::string, int> counts;
    FILE* pipe = popen(command.str().c_str(), "r");
    std::array<char, 16> month{};
    int count = 0;
    while (pipe != nullptr && std::fscanf(pipe, "%15s %d", month.data(), &count) == 2)
        counts[month.data()] = count;
    EXPECT_EQ(pipe == nullptr ? -1 : pclose(pipe), 0);
    return counts;
}

class SeattleFlyingDays : public ::testing::TestWithParam<FlyingLimits> {};

TEST_P(SeattleFlyingDays, AgreeWithAnIndependentCount) {
    std::map<std::string, int> counts;
    for (const auto& [day, flying] : test::seattleFlying(GetParam()))
        if (flying) ++counts[toText(day).substr(0, 7)];
    EXPECT_GT(counts.size(), 20U);
    EXPECT_EQ(counts, countedByAwk(GetParam()));
}

// The usual limits, the strict temperature (S55), and limits at which wind and rain decide.
INSTANTIATE_TEST_SUITE_P(Limits, SeattleFlyingDays,
                         ::testing::Values(kUsual, FlyingLimits{20, 6.7, 1}, FlyingLimits{18, 3, 1},
                                           FlyingLimits{18, 6.7, 0.1}, FlyingLimits{14, 2.5, 0.1}));

}  // namespace
}  // namespace tenthday
