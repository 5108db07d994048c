/// From a book with batches, nucs and weather to its orders.
#include "supply/season_supply.h"

#include <gtest/gtest.h>

#include "losses/batch_losses.h"
#include "outlook/supply_of.h"
#include "support/large_season.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

SeasonMaker yardAndBuilder(std::string_view today = "2027-04-01") {
    SeasonMaker maker(today);
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    return maker;
}
OrderOutlook only(const Snapshot& snapshot) {
    const auto outlook = freshOutlook(snapshot);
    auto supply = supplyOf(*outlook);
    return supply.orders().at(0);
}

// 34 to 45 % of about 31,000 grafts gave a queen, up to 55.8 % in the best weeks (S91).
TEST(SeasonSupply, AShareOfGraftsAsPublishedBecomesQueens) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 100, "B1");
    const auto outlook = maker.outlook();
    auto supply = supplyOf(*outlook);
    EXPECT_GT(supply.queensBy(day("2027-07-30")).mean(), 34);
    EXPECT_LT(supply.queensBy(day("2027-07-30")).mean(), 55.8);
}

// One past year was warm, the other so cold that no virgin flew.
TEST(SeasonSupply, ABadSeasonTakesFromAllBatchesAtOnce) {
    auto maker = yardAndBuilder();
    maker.weather("2025-01-01", "2025-12-31", 25).weather("2026-01-01", "2026-12-31", 10);
    maker.batch("1", "2027-05-10", 14, 40, "B1").batch("2", "2027-05-14", 14, 40, "B2");
    const auto order = only(with(maker.snapshot(), orderFor(1, 12, "2027-07-20")));
    const auto one = reached(standing(40), chainRates(Facts()), ChainPoint::Good);
    // Seasons alike but for shifts across the new year: half are warm.
    EXPECT_NEAR(order.chance, .5 * (one + one).atLeast(12), .001);
    EXPECT_EQ(order.fills.size(), 2U);
}

TEST(SeasonSupply, WithoutWeatherItIsTheChainOfLosses) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 40, "B1");
    const auto order = only(with(maker.snapshot(), orderFor(1, 15, "2027-08-20")));
    const auto chain = reached(standing(40), chainRates(Facts()), ChainPoint::Good);
    EXPECT_NEAR(order.chance, chain.atLeast(15), 1e-5);
}

TEST(SeasonSupply, CountsSeenReplaceWhatWasExpected) {
    auto maker = yardAndBuilder("2027-05-16");
    maker.batch("1", "2027-05-10", 14, 40, "B1");
    maker.outcome("1", OutcomeKind::Graft, "2027-05-10", 40)
        .outcome("1", OutcomeKind::TakeCount, "2027-05-12", 12);
    SeenCounts seen;
    seen.grafted = 40;
    seen.accepted = 12;
    const auto chain = reached(standing(40, seen), chainRates(Facts()), ChainPoint::Good);
    const auto order = only(with(maker.snapshot(), orderFor(1, 8, "2027-08-20")));
    EXPECT_NEAR(order.chance, chain.atLeast(8), 1e-5);
}

/// Eight cells in eight nucs.
SeasonMaker eightNucs(std::string_view today) {
    auto maker = yardAndBuilder(today);
    maker.batch("1", "2027-05-10", 14, 12, "B1");
    for (const std::string box : {"1", "2", "3", "4", "5", "6", "7", "8"})
        maker.box(box, "Mill", "7", "2027-04-01")
            .stock(box + "/-", "2027-05-15")
            .place("1", box + "/-", "2027-05-20", true);
    return maker;
}

TEST(SeasonSupply, WhatWasSeenInTheNucsIsCertain) {
    auto maker = eightNucs("2027-06-20");
    for (const std::string box : {"1", "2", "3"})
        maker.outcome("1", OutcomeKind::Catch, "2027-06-18", {}, box + "/-");
    for (const std::string box : {"4", "5", "6", "7"})
        maker.outcome("1", OutcomeKind::NoQueen, "2027-06-06", {}, box + "/-");
    const auto three = only(with(maker.snapshot(), orderFor(1, 3, "2027-06-18")));
    EXPECT_EQ(three.chance, 1);
    EXPECT_EQ(three.state, OrderState::Met);
    EXPECT_EQ(only(with(maker.snapshot(), orderFor(1, 1, "2027-06-17"))).chance, 0);
    // The eighth was not looked at: she may lay.
    const auto four = only(with(maker.snapshot(), orderFor(1, 4, "2027-07-20")));
    EXPECT_NEAR(four.chance, .88 * .8 * .92, 1e-4);
    EXPECT_EQ(only(with(maker.snapshot(), orderFor(1, 5, "2027-07-20"))).chance, 0);
}

TEST(SeasonSupply, ALayingQueenHasStillToBeJudged) {
    auto maker = eightNucs("2027-06-08");
    for (const std::string box : {"1", "2", "3", "4", "5", "6", "7"})
        maker.outcome("1", OutcomeKind::NoQueen, "2027-06-06", {}, box + "/-");
    maker.outcome("1", OutcomeKind::FirstEggs, "2027-06-06", {}, "8/-");
    EXPECT_EQ(only(with(maker.snapshot(), orderFor(1, 1, "2027-06-10"))).chance, 0);
    EXPECT_NEAR(only(with(maker.snapshot(), orderFor(1, 1, "2027-06-15"))).chance, .92, 1e-9);
}

TEST(SeasonSupply, AVirginThatHadTimeToLayIsLessLikelyTo) {
    const auto chance = [](std::string_view seen) {
        auto maker = eightNucs("2027-06-25");
        maker.weather("2025-01-01", "2027-06-30", 25);
        for (const std::string box : {"1", "2", "3", "4", "5", "6", "7"})
            maker.outcome("1", OutcomeKind::NoQueen, "2027-06-06", {}, box + "/-");
        maker.outcome("1", OutcomeKind::Emergence, seen, {}, "8/-");
        return only(with(maker.snapshot(), orderFor(1, 1, "2027-08-20"))).chance;
    };
    EXPECT_NEAR(chance("2027-05-24"), .8 * .92, .001);  // no eggs could be yet
    EXPECT_LT(chance("2027-06-03"), .6);
    EXPECT_LT(chance("2027-06-12"), .01);  // flew every day, and has not laid
}

TEST(SeasonSupply, CellsWithoutANucGiveNoQueen) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 40, "B1");
    maker.box("1", "Mill", "7", "2027-04-01").stock("1/-", "2027-05-15");
    const auto snapshot = maker.snapshot();
    const auto outlook = freshOutlook(snapshot);
    auto supply = supplyOf(*outlook);
    EXPECT_LE(supply.queensBy(day("2027-08-20")).last(), 1);
    // One that stands there unstocked can be stocked.
    maker.box("2", "Mill", "7", "2027-04-01");
    const auto more = maker.outlook();
    EXPECT_EQ(supplyOf(*more).queensBy(day("2027-08-20")).last(), 2);
}

TEST(SeasonSupply, ALineIsThatOfTheBarsBreeder) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 30, "B1").bar("1", 2, 20, "B1");
    auto snapshot = maker.snapshot();
    Line line{id<Line>(1), 1, "Amber"};
    Queen breeder;
    breeder.id = id<Queen>(1);
    breeder.label = "Amber 1";
    breeder.line = line.id;
    snapshot = with(snapshot, line, breeder);
    ChangeSet changes;
    for (const auto& bar : snapshot.all<BatchBar>())
        if (bar->bar == 2) {
            auto edited = *bar;
            edited.breeder = breeder.id;
            changes.edit(bar, edited);
        }
    snapshot = applied(snapshot, changes).value();
    auto order = orderFor(1, 8, "2027-08-20");
    order.line = line.id;
    const auto chain = reached(standing(20), chainRates(Facts()), ChainPoint::Good);
    EXPECT_NEAR(only(with(snapshot, order)).chance, chain.atLeast(8), 1e-5);
}

TEST(SeasonSupply, ABatchGivenUpGivesNothing) {
    auto maker = yardAndBuilder("2027-05-15");
    maker.batch("1", "2027-05-10", 14, 40, "B1").outcome("1", OutcomeKind::Spent, "2027-05-14");
    EXPECT_EQ(only(with(maker.snapshot(), orderFor(1, 1, "2027-08-20"))).chance, 0);
}

TEST(SeasonSupply, ListsOrdersOfAllKindsInTheOrderOfFilling) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 40, "B1");
    const auto outlook = freshOutlook(
        with(maker.snapshot(), orderFor(1, 4, "2027-05-24", OrderKind::Virgin),
             orderFor(2, 4, "2027-05-20", OrderKind::RipeCell),
             orderFor(3, 2, "2027-07-01", OrderKind::Own), orderFor(4, 2, "2027-06-28")));
    std::string order;
    for (const auto& standing : supplyOf(*outlook).orders()) {
        order += standing.order->label.back();
        EXPECT_EQ(standing.state, OrderState::Met) << standing.order->label;
    }
    EXPECT_EQ(order, "2143");
}

TEST(SeasonSupply, SellingCellsNeverHelpsAnOrderForQueens) {
    auto maker = yardAndBuilder();
    maker.batch("1", "2027-05-10", 14, 40, "B1");
    const auto snapshot = with(maker.snapshot(), orderFor(1, 12, "2027-07-20"));
    double before = only(snapshot).chance;
    for (int cells = 1; cells < 30; cells += 6) {
        const auto outlook =
            freshOutlook(with(snapshot, orderFor(2, cells, "2027-05-20", OrderKind::RipeCell)));
        const double after = supplyOf(*outlook).orders().at(1).chance;
        EXPECT_LT(after, before) << cells;
        before = after;
    }
    EXPECT_LT(before, .1);
}

TEST(SeasonSupply, ALargeSeasonAddsUp) {
    const auto outlook = freshOutlook(largeSeason({60, 900, 6}));
    auto supply = supplyOf(*outlook);
    std::int32_t before = 0;
    for (Day on = day("2027-05-01"); on < day("2027-10-20"); on += Days{10}) {
        const auto ready = supply.queensBy(on).reachedWith(.9);
        EXPECT_GE(ready, before) << toText(on);
        before = ready;
    }
    EXPECT_GT(before, 100);
}

}  // namespace
}  // namespace tenthday::test
