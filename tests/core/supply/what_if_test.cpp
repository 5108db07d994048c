/// What bad luck would do: nothing is kept, and it never helps.
#include "supply/what_if.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Two batches in a warm year after a warm year, with an order of each; today is 1 May.
class WhatIfTest : public ::testing::Test {
protected:
    WhatIfTest() {
        maker.yard("Mill").yard("Weir").builder("B1", "Mill").builder("B2", "Mill");
        maker.weather("2026-01-01", "2026-12-31", 24);
        maker.batch("1", "2027-05-10", 14, 30, "B1").batch("2", "2027-06-10", 14, 30, "B2");
    }
    void makeNucs(int count) {
        for (int i = 1; i <= count; ++i) {
            const auto box = std::to_string(i);
            maker.box(box, i % 2 == 0 ? "Weir" : "Mill", "7", "2027-04-01")
                .stock(box + "/-", "2027-05-12");
        }
    }
    [[nodiscard]] OutlookPtr outlook() const {
        return freshOutlook(
            with(maker.snapshot(), orderFor(1, 8, "2027-06-28"), orderFor(2, 10, "2027-07-31")));
    }
    [[nodiscard]] WhatIfAnswer ask(const WhatIf& what) const {
        const auto answer = whatIf(*outlook(), what);
        if (!answer) throw std::invalid_argument(answer.error().text);
        return answer.value();
    }

    SeasonMaker maker{"2027-05-01"};
};

TEST_F(WhatIfTest, NothingAskedChangesNothing) {
    const auto answer = ask({});
    ASSERT_EQ(answer.orders.size(), 2U);
    for (const auto& [before, after] : answer.orders) EXPECT_EQ(before.chance, after.chance);
    EXPECT_EQ(answer.queensBefore, answer.queensAfter);
    EXPECT_GT(answer.queensBefore, 20);
}

TEST_F(WhatIfTest, AColdWeekTakesFromTheBatchThatFliesInIt) {
    WhatIf what;
    what.cold = DayWindow{day("2027-05-25"), day("2027-06-15")};
    const auto answer = ask(what);
    EXPECT_LT(answer.orders[0].after.chance, answer.orders[0].before.chance - .2);
    EXPECT_LT(answer.queensAfter, answer.queensBefore - 5);
    EXPECT_GT(answer.queensAfter, 8);  // the second batch flies in July
    EXPECT_FALSE(answer.coldUnknown);
    what.cold = DayWindow{day("2027-09-20"), day("2027-09-26")};
    EXPECT_NEAR(ask(what).queensAfter, answer.queensBefore, 1e-6);
}

TEST_F(WhatIfTest, WithoutPastYearsNothingIsKnownOfColdDays) {
    SeasonMaker bare("2027-05-01");
    bare.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 30, "B1");
    WhatIf what;
    what.cold = DayWindow{day("2027-05-25"), day("2027-05-31")};
    EXPECT_TRUE(whatIf(*bare.outlook(), what).value().coldUnknown);
}

TEST_F(WhatIfTest, ABuilderLostTakesItsCells) {
    WhatIf what;
    what.builder = WhatIf::BuilderLost{maker.builderId("B2"), day("2027-05-01")};
    auto answer = ask(what);
    EXPECT_EQ(answer.orders[0].after.chance, answer.orders[0].before.chance);
    EXPECT_LT(answer.orders[1].after.chance, .5);
    EXPECT_NEAR(answer.queensAfter, answer.queensBefore / 2, .5);
    // From the day after its cells are out nothing is lost.
    what.builder->from = day("2027-06-21");
    EXPECT_EQ(ask(what).queensAfter, answer.queensBefore);
}

TEST_F(WhatIfTest, OfABatchInTwoBuildersOnlyTheBarsInItAreLost) {
    maker.bar("1", 2, 30, "B2");
    WhatIf what;
    what.builder = WhatIf::BuilderLost{maker.builderId("B2"), day("2027-05-01")};
    const auto answer = ask(what);
    EXPECT_NEAR(answer.queensAfter, answer.queensBefore / 3, .5);
    EXPECT_GT(answer.orders[0].after.chance, .5);
}

TEST_F(WhatIfTest, NucsRobbedOutLeaveCellsWithoutAPlace) {
    makeNucs(20);
    WhatIf what;
    what.nucs = WhatIf::NucsRobbed{10, day("2027-05-15"), {}};
    const auto answer = ask(what);
    EXPECT_LT(answer.queensAfter, answer.queensBefore * .8);
    EXPECT_GT(answer.queensAfter, answer.queensBefore * .3);
    what.nucs->count = 21;
    EXPECT_EQ(whatIf(*outlook(), what).error().text,
              "only 20 nucs with bees stand there on 2027-05-15");
    what.nucs = WhatIf::NucsRobbed{11, day("2027-05-15"), maker.yardId("Weir")};
    EXPECT_EQ(whatIf(*outlook(), what).error().text,
              "only 10 nucs with bees stand there on 2027-05-15");
}

TEST_F(WhatIfTest, EmptyNucsAreRobbedBeforeThoseWithAQueen) {
    makeNucs(6);
    for (const std::string box : {"1", "2", "3"}) maker.place("1", box + "/-", "2027-05-20", false);
    const auto queens = [&](int count) {
        WhatIf what;
        what.nucs = WhatIf::NucsRobbed{count, day("2027-06-01"), maker.yardId("Mill")};
        return ask(what);
    };
    // Of the three in this yard one is named; first fit fills the others.
    const auto one = queens(1);
    const auto all = queens(3);
    EXPECT_LE(all.queensAfter, one.queensAfter);
    EXPECT_LT(all.queensAfter, all.queensBefore);
}

TEST_F(WhatIfTest, AQueenInARobbedNucIsLostAndTheOneCaughtBeforeIsNot) {
    SeasonMaker made("2027-06-25");
    made.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 4, "B1");
    for (const std::string box : {"1", "2"})
        made.box(box, "Mill", "7", "2027-04-01")
            .stock(box + "/-", "2027-05-15")
            .place("1", box + "/-", "2027-05-20", true);
    made.outcome("1", OutcomeKind::Catch, "2027-06-18", {}, "1/-")
        .outcome("1", OutcomeKind::JudgedGood, "2027-06-20", {}, "2/-");
    WhatIf what;
    what.nucs = WhatIf::NucsRobbed{1, day("2027-06-25"), {}};
    const auto empty = whatIf(*made.outlook(), what).value();
    EXPECT_EQ(empty.queensBefore, 2);
    EXPECT_EQ(empty.queensAfter, 2);  // the nuc of the caught one is empty: it goes first
    what.nucs->count = 2;
    EXPECT_EQ(whatIf(*made.outlook(), what).value().queensAfter, 1);
}

TEST_F(WhatIfTest, APoorTakeLeavesFewerQueens) {
    WhatIf what;
    what.take = .375;
    const auto answer = ask(what);
    EXPECT_NEAR(answer.queensAfter, answer.queensBefore / 2, .2);  // of .75 by the facts
    for (const auto& [before, after] : answer.orders) EXPECT_LT(after.chance, before.chance);
    what.take = 1.5;
    EXPECT_FALSE(whatIf(*outlook(), what));
}

TEST_F(WhatIfTest, BadLuckTogetherIsNoBetterThanAlone) {
    makeNucs(20);
    WhatIf what;
    what.take = .5;
    const auto alone = ask(what);
    what.cold = DayWindow{day("2027-05-25"), day("2027-06-05")};
    what.builder = WhatIf::BuilderLost{maker.builderId("B2"), day("2027-05-20")};
    what.nucs = WhatIf::NucsRobbed{5, day("2027-05-28"), {}};
    const auto together = ask(what);
    EXPECT_LT(together.queensAfter, alone.queensAfter);
    for (std::size_t i = 0; i < 2; ++i)
        EXPECT_LE(together.orders[i].after.chance, alone.orders[i].after.chance + 1e-9);
}

}  // namespace
}  // namespace tenthday::test
