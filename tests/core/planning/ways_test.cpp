/// Ways to fix a shortfall: each fixes it when it is done in the book, and one less does not.
#include "planning/ways.h"

#include <gtest/gtest.h>

#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// What a season to be planned has.
struct Ground {
    int builders = 2;
    int nucs = 0;  ///< none: the book keeps none, and there are enough
    int count = 30;
    std::string due = "2027-07-31";
    std::string from = "2027-05-10";
    std::string until = "2027-05-20";
};

Snapshot bookOf(const Ground& ground) {
    SeasonMaker maker("2027-04-01");
    maker.yard("Mill");
    for (int i = 1; i <= ground.builders; ++i) maker.builder("B" + std::to_string(i), "Mill");
    for (int i = 1; i <= ground.nucs; ++i)
        maker.box("N" + std::to_string(i), "Mill", "7", "2027-01-01");
    return with(maker.snapshot(), orderFor(1, ground.count, ground.due));
}
PlanQuestion questionOf(const Ground& ground) {
    PlanQuestion question;
    question.grafts = {day(ground.from), day(ground.until)};
    return question;
}
bool isMet(const Ground& ground) {
    const auto answer = planSeason(*freshOutlook(bookOf(ground)), questionOf(ground));
    EXPECT_TRUE(answer) << answer.error().text;
    return answer.value().shortOf.empty();
}
std::vector<WayToFix> waysFor(const Ground& ground) {
    const auto ways = waysToFix(*freshOutlook(bookOf(ground)), questionOf(ground));
    EXPECT_TRUE(ways) << ways.error().text;
    return ways.value();
}
const WayToFix* wayBy(const std::vector<WayToFix>& ways, WayKind kind) {
    for (const auto& way : ways)
        if (way.parts.size() == 1 && way.parts.front().kind == kind) return &way;
    return nullptr;
}
std::string iso(Day day, int by) { return toText(day + Days{by}); }

TEST(WaysToFix, NothingShortNeedsNoWay) { EXPECT_TRUE(waysFor({}).empty()); }

TEST(WaysToFix, NucsAreTheLeastThatDo) {
    Ground ground;
    ground.nucs = 12;
    const auto ways = waysFor(ground);
    const auto* builders = wayBy(ways, WayKind::MoreBuilders);
    ASSERT_NE(builders, nullptr);
    EXPECT_FALSE(builders->fixes) << "no builder helps where nucs lack";
    const auto* nucs = wayBy(ways, WayKind::MoreNucs);
    ASSERT_TRUE(nucs != nullptr && nucs->fixes);
    ASSERT_TRUE(nucs->parts.front().from);
    ground.nucs += nucs->parts.front().amount;
    EXPECT_TRUE(isMet(ground));
    --ground.nucs;
    EXPECT_FALSE(isMet(ground)) << "one less fails";
}

TEST(WaysToFix, BuildersAreTheLeastThatDo) {
    Ground ground;
    ground.builders = 1;
    ground.count = 60;
    const auto ways = waysFor(ground);
    const auto* builders = wayBy(ways, WayKind::MoreBuilders);
    ASSERT_TRUE(builders != nullptr && builders->fixes);
    ground.builders += builders->parts.front().amount;
    EXPECT_TRUE(isMet(ground));
    --ground.builders;
    EXPECT_FALSE(isMet(ground)) << "one less fails";
}

TEST(WaysToFix, GraftingEarlierIsTheLeastThatDoes) {
    Ground ground;
    ground.due = "2027-07-01";  // too soon for what is grafted from 20 May on
    ground.from = "2027-06-01";
    ground.until = "2027-06-10";
    const auto ways = waysFor(ground);
    const auto* earlier = wayBy(ways, WayKind::EarlierGrafts);
    ASSERT_TRUE(earlier != nullptr && earlier->fixes);
    const auto from = day(ground.from);
    const int amount = earlier->parts.front().amount;
    EXPECT_EQ(earlier->parts.front().from, from - Days{amount});
    ground.from = iso(from, -amount);
    EXPECT_TRUE(isMet(ground));
    ground.from = iso(from, 1 - amount);
    EXPECT_FALSE(isMet(ground)) << "one day less fails";
}

TEST(WaysToFix, ALaterDueDayIsTheLeastThatDoes) {
    Ground ground;
    ground.due = "2027-06-05";  // before the first queens are ready
    const auto ways = waysFor(ground);
    const auto* later = wayBy(ways, WayKind::LaterDue);
    ASSERT_TRUE(later != nullptr && later->fixes);
    const auto due = day(ground.due);
    const int amount = later->parts.front().amount;
    EXPECT_EQ(later->parts.front().due, due + Days{amount});
    ground.due = iso(due, amount);
    EXPECT_TRUE(isMet(ground));
    ground.due = iso(due, amount - 1);
    EXPECT_FALSE(isMet(ground)) << "one day less fails";
}

TEST(WaysToFix, TwoTogetherWhereNoneDoesAlone) {
    Ground ground;
    ground.builders = 1;
    ground.nucs = 10;
    ground.count = 60;
    ground.from = "2027-05-10";
    ground.until = "2027-05-12";
    const auto ways = waysFor(ground);
    int together = 0;
    for (const auto& way : ways) {
        if (way.parts.size() == 1) {
            EXPECT_FALSE(way.fixes) << token(way.parts.front().kind);
            continue;
        }
        if (way.parts[0].kind != WayKind::MoreNucs || way.parts[1].kind != WayKind::MoreBuilders)
            continue;
        ++together;
        auto more = ground;
        more.nucs += way.parts[0].amount;
        more.builders += way.parts[1].amount;
        EXPECT_TRUE(isMet(more));
        --more.nucs;
        EXPECT_FALSE(isMet(more)) << "one nuc less fails";
        ++more.nucs;
        --more.builders;
        EXPECT_FALSE(isMet(more)) << "one builder less fails";
    }
    EXPECT_EQ(together, 1) << "nucs and builders do together";
}

}  // namespace
}  // namespace tenthday::test
