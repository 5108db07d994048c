/// The orders of a season as a picture shows them, and what an order being entered would be like.
#include "outlook/season_orders.h"

#include <gtest/gtest.h>

#include "outlook/order_prospect.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Two batches of 40 grafts, their queens caught from mid June on.
SeasonMaker twoBatches() {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
    maker.batch("1", "2027-05-10", 14, 40, "B1").batch("2", "2027-05-20", 14, 40, "B2");
    return maker;
}

std::size_t at(const SeasonOrders& orders, std::string_view on) {
    return static_cast<std::size_t>((day(on) - orders.days.first).count());
}

TEST(SeasonOrders, QueensInHandRiseWithEachBatchAndFallWhenAnOrderGoes) {
    const auto outlook = freshOutlook(with(twoBatches().snapshot(), orderFor(1, 8, "2027-07-20")));
    const auto orders = seasonOrdersOf(*outlook);
    ASSERT_EQ(orders->inHand.size(), static_cast<std::size_t>(orders->days.size()));
    EXPECT_EQ(orders->inHand[at(*orders, "2027-06-01")], QueensInHand{});
    const auto before = orders->inHand[at(*orders, "2027-07-18")];
    const auto after = orders->inHand[at(*orders, "2027-07-20")];
    EXPECT_LT(before.low, before.likely);
    EXPECT_LT(before.likely, before.high);
    EXPECT_EQ(before.likely - after.likely, 8);
    EXPECT_EQ(orders->owed[at(*orders, "2027-07-18")], 0);
    EXPECT_EQ(orders->owed[at(*orders, "2027-07-20")], 8);
}

TEST(SeasonOrders, NeverFewerThanNone) {
    const auto outlook =
        freshOutlook(with(twoBatches().snapshot(), orderFor(1, 500, "2027-06-20")));
    const auto orders = seasonOrdersOf(*outlook);
    for (const auto& day : orders->inHand) EXPECT_GE(day.low, 0);
}

TEST(SeasonOrders, TheWeekOfADayIsFound) {
    const auto outlook = twoBatches().outlook();
    const auto orders = seasonOrdersOf(*outlook);
    const auto* week = orders->weekOf(day("2027-07-22"));
    ASSERT_NE(week, nullptr);
    EXPECT_EQ(toText(week->week), "2027-W29");
    EXPECT_GT(week->canPromise, 0);
    EXPECT_EQ(orders->weekOf(day("2029-07-22")), nullptr);
}

TEST(SeasonOrders, ThereIsSomethingToShowOnceThereIsABatchOrAnOrder) {
    const SeasonMaker bare("2027-05-01");
    EXPECT_FALSE(hasQueensOrOrders(*bare.outlook()));
    EXPECT_TRUE(hasQueensOrOrders(*twoBatches().outlook()));
    EXPECT_TRUE(
        hasQueensOrOrders(*freshOutlook(with(bare.snapshot(), orderFor(1, 5, "2027-06-20")))));
}

OrderWords wordsFor(int n, int count, std::string_view due) {
    OrderWords words;
    words.order = orderFor(n, count, due);
    return words;
}

TEST(OrderProspect, IsWhatTheOrderIsOnceKept) {
    const auto outlook = twoBatches().outlook();
    const auto words = wordsFor(1, 18, "2027-07-20");
    const auto found = prospectOf(*outlook, words);
    ASSERT_TRUE(found.ok()) << found.error().text;
    ASSERT_TRUE(found.value().outlook);
    const auto kept = freshOutlook(with(outlook->snapshot, words.order));
    auto supply = supplyOf(*kept);
    const auto order = supply.orders().at(0);
    EXPECT_DOUBLE_EQ(found.value().outlook->chance, order.chance);
    EXPECT_EQ(found.value().outlook->state, order.state);
}

TEST(OrderProspect, ItsFirstDayIsTheFirstOnWhichItIsSureEnough) {
    const auto outlook = twoBatches().outlook();
    const auto words = wordsFor(1, 10, "2027-06-10");
    const auto found = prospectOf(*outlook, words);
    ASSERT_TRUE(found.ok()) << found.error().text;
    EXPECT_EQ(found.value().outlook->state, OrderState::Short) << "nothing is caught by then";
    ASSERT_TRUE(found.value().first);
    const auto chanceOn = [&](Day due) {
        auto moved = words;
        moved.order.due = due;
        return prospectOf(*outlook, moved).value().outlook->chance;
    };
    EXPECT_GE(chanceOn(*found.value().first), 0.9);
    EXPECT_LT(chanceOn(*found.value().first - Days{1}), 0.9);
    // A queen is caught on eggs before her brood is sealed, and before she is 28 days old.
    const auto& days = found.value().byRule;
    ASSERT_TRUE(days[0] && days[1] && days[2]);
    EXPECT_LT(*days[0], *days[1]);
    EXPECT_EQ(*days[1], *found.value().first) << "the book's own rule";
}

TEST(OrderProspect, TellsWhomItWouldHarm) {
    const auto book = with(twoBatches().snapshot(), orderFor(1, 15, "2027-07-25"));
    const auto outlook = freshOutlook(book);
    EXPECT_EQ(prospectOf(*outlook, wordsFor(2, 1, "2027-07-20")).value().harmed, 0);
    EXPECT_EQ(prospectOf(*outlook, wordsFor(2, 15, "2027-07-20")).value().harmed, 1);
}

TEST(OrderProspect, OfAnOrderThatIsThereItCountsOnce) {
    const auto book = with(twoBatches().snapshot(), orderFor(1, 15, "2027-07-25"));
    const auto outlook = freshOutlook(book);
    const auto words = wordsOf(book, id<Order>(1));
    const auto found = prospectOf(*outlook, words);
    ASSERT_TRUE(found.ok()) << found.error().text;
    auto supply = supplyOf(*outlook);
    EXPECT_DOUBLE_EQ(found.value().outlook->chance, supply.orders().at(0).chance);
    EXPECT_EQ(found.value().harmed, 0);
}

TEST(OrderProspect, WhatCannotBeKeptIsRefused) {
    const auto outlook = twoBatches().outlook();
    auto words = wordsFor(1, 10, "2027-06-10");
    words.order.count = 0;
    EXPECT_FALSE(prospectOf(*outlook, words).ok());
}

TEST(OrderProspect, OnTheWaitingListItTakesNothing) {
    const auto outlook = twoBatches().outlook();
    auto words = wordsFor(1, 10, "2027-07-20");
    words.standing = OrderStanding::Waiting;
    const auto found = prospectOf(*outlook, words);
    ASSERT_TRUE(found.ok()) << found.error().text;
    EXPECT_FALSE(found.value().outlook);
    EXPECT_TRUE(found.value().first);
}

}  // namespace
}  // namespace tenthday::test
