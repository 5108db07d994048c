// Why first eggs are awaited: the run of days without flying that past years, the record or the
// months speak of.
#include "timeline/flying_wait.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "outlook/sky.h"
#include "support/season_maker.h"

namespace tenthday {
namespace {

using test::day;
using test::SeasonMaker;

constexpr int kCold = 12;
constexpr int kFine = 22;

/// Grafted on 11 May 2027 at noon: queens out about 23 May, due to fly from 29 May on.
SeasonMaker season(std::string_view today = "2027-05-01") {
    SeasonMaker maker(today);
    maker.yard("Mill").builder("Box", "Mill");
    return maker.batch("1", "2027-05-11", 12, 20, "Box");
}

/// A year, fine but for a cold spell of its 29 May to `until`.
SeasonMaker& withSpell(SeasonMaker& maker, int year, int until) {
    const auto y = std::to_string(year);
    maker.weather(y + "-01-01", y + "-05-28", kFine);
    const auto last = toText(day(y + "-05-28") + Days{until});
    maker.weather(y + "-05-29", last, kCold);
    return maker.weather(toText(day(last) + Days{1}), y + "-12-31", kFine);
}

std::optional<FlyingWait> waitOf(const SeasonMaker& maker) {
    const auto outlook = maker.outlook();
    const auto years = pastYears(outlook->snapshot);
    return flyingWait(outlook->batches[0]->timeline, *outlook->mating, years.get(),
                      outlook->snapshot.facts());
}

TEST(FlyingWait, IsTheRunThatTheLevelDoesNotLeaveAside) {
    auto maker = season();
    for (int year = 2017; year <= 2026; ++year)
        withSpell(maker, year, year == 2020 ? 20 : year == 2022 ? 9 : year == 2025 ? 8 : 1);
    const auto wait = waitOf(maker);
    ASSERT_TRUE(wait);
    // At a level of 80 % a fifth is left aside: eggs by 4 June, so the last flight that counts is
    // on the 1st. Until then three years of ten are cold; the fine ones only on the first day.
    EXPECT_EQ(wait->days, (DayWindow{day("2027-05-29"), day("2027-06-01")}));
    EXPECT_EQ(wait->years, (OfYears{3, 10}));
    EXPECT_EQ(wait->known, 0);
}

TEST(FlyingWait, CountsEachPastYearOnceWhateverItsShifts) {
    auto maker = season();
    withSpell(withSpell(maker, 2025, 12), 2026, 12);
    ASSERT_EQ(maker.outlook()->mating->seasons()->size(), 30U);
    EXPECT_EQ(waitOf(maker)->years, (OfYears{2, 2}));
}

TEST(FlyingWait, FineYearsMakeNone) {
    auto maker = season();
    maker.weather("2025-01-01", "2026-12-31", kFine);
    EXPECT_FALSE(waitOf(maker));
    EXPECT_FALSE(waitOf(season())) << "no weather is reckoned with";
}

TEST(FlyingWait, RecordedAndForecastDaysStandInEveryYear) {
    auto maker = season("2027-06-01");
    maker.weather("2025-01-01", "2026-12-31", kFine);
    maker.weather("2027-05-20", "2027-05-28", kFine).weather("2027-05-29", "2027-06-05", kCold);
    const auto wait = waitOf(maker);
    ASSERT_TRUE(wait);
    EXPECT_EQ(wait->days.first, day("2027-05-29"));
    EXPECT_EQ(wait->days.last, day("2027-06-05"));
    EXPECT_TRUE(wait->isKnown());
    EXPECT_EQ(wait->chance, 1);
}

TEST(FlyingWait, GoesOnFromKnownDaysIntoThoseOfPastYears) {
    auto maker = season("2027-06-01");
    withSpell(withSpell(maker, 2025, 12), 2026, 1);
    maker.weather("2027-05-20", "2027-05-28", kFine).weather("2027-05-29", "2027-06-01", kCold);
    const auto wait = waitOf(maker);
    ASSERT_TRUE(wait);
    EXPECT_EQ(wait->known, 4);
    EXPECT_EQ(wait->days.first, day("2027-05-29"));
    EXPECT_EQ(wait->days.last, day("2027-06-08"))
        << "the spell of 2025, to the level's last flight";
    EXPECT_EQ(wait->years, (OfYears{1, 2}));
    EXPECT_FALSE(wait->isKnown());
}

TEST(FlyingWait, OfAChainIsItsChanceOfNoFlyingDay) {
    auto maker = season();
    withSpell(maker, 2026, 1);
    const auto outlook = maker.outlook();
    auto timeline = outlook->batches[0]->timeline;
    timeline.levelEggs = momentOf(day("2027-06-20"));
    constexpr double kP = 0.3;
    constexpr double kR = 0.4;
    const MatingTable mating(
        Facts(),
        std::make_shared<const FlyingChain>(
            day("2027-01-01"), std::vector<FlyingChainDay>(300, FlyingChainDay{kP, {}}), kR));
    const auto wait = flyingWait(timeline, mating, nullptr, Facts());
    ASSERT_TRUE(wait);
    // No flying day in n: (1 - p) (1 - p (1 - r))^(n - 1), 0.20 and more up to seven days.
    EXPECT_EQ(wait->days, (DayWindow{day("2027-05-29"), day("2027-06-04")}));
    EXPECT_NEAR(wait->chance, (1 - kP) * std::pow(1 - kP * (1 - kR), 6), 1e-12);
    EXPECT_LT((1 - kP) * std::pow(1 - kP * (1 - kR), 7), 0.2);
    EXPECT_FALSE(wait->years);
}

/// A slow count: every run of days in every year, by month and day.
struct Slow {
    DayWindow days{day("2027-01-02"), day("2027-01-01")};
    int with = 0;
};
Slow slowWait(const std::map<Day, bool>& flew, const DayWindow& within, int least) {
    Slow best;
    for (Day first = within.first; first <= within.last; first += Days{1})
        for (Day last = first + Days{1}; last <= within.last; last += Days{1}) {
            int with = 0;
            for (int year = 2016; year <= 2026; ++year) {
                bool none = true;
                for (Day d = first; d <= last; d += Days{1})
                    if (flew.at(day(std::to_string(year) + toText(d).substr(4)))) none = false;
                with += none ? 1 : 0;
            }
            const DayWindow days{first, last};
            if (with >= least && (days.size() > best.days.size() ||
                                  (days.size() == best.days.size() && with > best.with)))
                best = {days, with};
        }
    return best;
}

TEST(FlyingWait, AgreesWithASlowCountInChangingWeather) {
    std::uint32_t state = 11;
    const auto draw = [&] { return (state = state * 1'664'525U + 1'013'904'223U) >> 16U; };
    int found = 0;
    for (int run = 0; run < 6; ++run) {
        auto maker = season();
        std::map<Day, bool> flew;
        bool fine = true;
        for (Day d = day("2016-01-01"); d <= day("2026-12-31"); d += Days{1}) {
            if (draw() % 100 < 25U) fine = draw() % 100 < 25U;
            flew[d] = fine;
            const auto text = toText(d);
            maker.weather(text, text, fine ? kFine : kCold);
        }
        const auto outlook = maker.outlook();
        const auto& facts = outlook->snapshot.facts();
        const auto& timeline = outlook->batches[0]->timeline;
        const auto within = daysOfWaiting(timeline, facts);
        EXPECT_EQ(within.last, dayOf(timeline.levelEggs) - Days{3});
        const auto slow = slowWait(flew, within, 3);  // a fifth of eleven years, and more
        const auto wait = waitOf(maker);
        ASSERT_EQ(wait.has_value(), slow.with > 0);
        if (!wait) continue;
        ++found;
        EXPECT_EQ(wait->days, slow.days) << run;
        EXPECT_EQ(wait->years, (OfYears{slow.with, 11})) << run;
    }
    EXPECT_GE(found, 4);
}

/// Years that lose queens, and what a book of such a year alone, unshifted, reckons.
TEST(NeverMated, TellsTheYearsAndTheLeastShare) {
    const auto alone = [](int until) {
        auto maker = season();
        auto snapshot = withSpell(maker, 2026, until).snapshot();
        ChangeSet changes;
        changes.add(FactOverride{test::id<FactOverride>(90'000), 1, "season_shift_d", 0});
        OutlookMemo memo;
        return outlookOf(applied(snapshot, changes).value(), memo)->batches[0]->timeline.neverMates;
    };
    const double some = alone(15);
    ASSERT_GT(some, 0.05);
    ASSERT_LT(some, 0.95);
    auto maker = season();
    withSpell(maker, 2023, 1);
    withSpell(maker, 2024, 15);
    withSpell(maker, 2025, 1);
    withSpell(maker, 2026, 40);
    const auto outlook = maker.outlook();
    const auto never = neverMated(outlook->batches[0]->timeline, *pastYears(outlook->snapshot),
                                  outlook->snapshot.facts());
    ASSERT_TRUE(never);
    EXPECT_EQ(never->years, (OfYears{2, 4}));
    EXPECT_NEAR(never->least, some, 1e-9);
}

TEST(NeverMated, SaysNothingWhereNoYearLosesAnyOrAllIsKnown) {
    auto maker = season();
    withSpell(withSpell(maker, 2025, 3), 2026, 1);
    const auto of = [](const SeasonMaker& from) {
        const auto outlook = from.outlook();
        return neverMated(outlook->batches[0]->timeline, *pastYears(outlook->snapshot),
                          outlook->snapshot.facts());
    };
    EXPECT_FALSE(of(maker));
    maker.weather("2027-05-20", "2027-06-25", kCold);
    EXPECT_FALSE(of(maker)) << "lost in every year alike";
}

}  // namespace
}  // namespace tenthday
