/// Orders for queens: filled in turn, sure or short.
#include "supply/order_states.h"

#include <gtest/gtest.h>

#include <map>
#include <numeric>
#include <random>

#include "losses/batch_losses.h"
#include "support/season_maker.h"
#include "support/stock_maker.h"

namespace tenthday::test {
namespace {

CountSpread planned(int grafts) {
    return matedInFairWeather(standing(grafts), chainRates(Facts()));
}

TEST(OrderStates, QueensInHandFillTheFirstDueAndShortenTheNext) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders =
        filled(stock, {shared(orderFor(1, 6, "2027-06-12")), shared(orderFor(2, 5, "2027-06-20"))});
    EXPECT_EQ(orders[0].state, OrderState::Met);
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[0].lacking, 0);
    EXPECT_EQ(orders[1].state, OrderState::Short);
    EXPECT_EQ(orders[1].chance, 0);
    EXPECT_EQ(orders[1].lacking, 1);
    ASSERT_EQ(orders[1].fills.size(), 1U);
    EXPECT_EQ(orders[1].fills[0].count, 4);
}

TEST(OrderStates, AnOrderDueBeforeTheCatchGetsNothing) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders = filled(stock, {shared(orderFor(1, 6, "2027-06-09"))});
    EXPECT_EQ(orders[0].lacking, 6);
    EXPECT_TRUE(orders[0].fills.empty());
}

TEST(OrderStates, WhatIsLackingStaysOwed) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders =
        filled(stock, {shared(orderFor(1, 6, "2027-06-09")), shared(orderFor(2, 5, "2027-06-20"))});
    EXPECT_EQ(orders[1].lacking, 1);
    EXPECT_EQ(orders[1].owedDue, 11);
}

TEST(OrderStates, AtRiskLiesBetweenMetAndShort) {
    const QueenStock stock{
        10, {queens(1, CountSpread(8), "2027-06-10", {1, 1, 1, 1, 1, 1, 1, 0, 0, 0})}};
    auto order = orderFor(1, 8, "2027-06-20");
    auto standing = filled(stock, {shared(order)})[0];
    EXPECT_EQ(standing.state, OrderState::AtRisk);
    EXPECT_NEAR(standing.chance, .7, 1e-12);
    EXPECT_EQ(standing.lacking, 8);  // in three seasons of ten there is none
    order.sure = Tenths{700};
    EXPECT_EQ(filled(stock, {shared(order)})[0].state, OrderState::Met);
}

TEST(OrderStates, AProvenQueenFillsAMatedOrderAndNoOtherAProvenOne) {
    const QueenStock stock{
        1, {caughtQueens(1, 4, "2027-06-10", true), caughtQueens(2, 4, "2027-06-10", false)}};
    const auto mated = shared(orderFor(1, 6, "2027-06-12"));
    const auto two = shared(orderFor(2, 2, "2027-06-14", OrderKind::Proven));
    const auto three = shared(orderFor(2, 3, "2027-06-14", OrderKind::Proven));
    EXPECT_EQ(filled(stock, {mated})[0].state, OrderState::Met);
    EXPECT_EQ(filled(stock, {mated, two})[1].state, OrderState::Met);
    EXPECT_EQ(filled(stock, {mated, three})[1].lacking, 1);  // nine wanted, eight there
    EXPECT_EQ(filled(stock, {shared(orderFor(3, 5, "2027-06-14", OrderKind::Proven))})[0].lacking,
              1);
    // The mated order takes those first that nobody asks for by name.
    const auto fills = filled(stock, {mated, two})[0].fills;
    ASSERT_EQ(fills.size(), 2U);
    EXPECT_EQ(fills[0].batch, id<Batch>(2));
    EXPECT_EQ(fills[0].count, 4);
}

TEST(OrderStates, AnOrderOfALineTakesNoOther) {
    QueenStock stock{1, {caughtQueens(1, 4, "2027-06-10"), caughtQueens(2, 9, "2027-06-10")}};
    stock.parts[0].line = id<Line>(7);
    auto order = orderFor(1, 5, "2027-06-12");
    order.line = id<Line>(7);
    EXPECT_EQ(filled(stock, {shared(order)})[0].lacking, 1);
    const auto any = shared(orderFor(2, 9, "2027-06-11"));
    order.count = 4;
    EXPECT_EQ(filled(stock, {any, shared(order)})[1].state, OrderState::Met);
    EXPECT_EQ(filled(stock, {any, shared(order)})[1].fills[0].count, 4);
    order.line = id<Line>(8);
    EXPECT_EQ(filled(stock, {shared(order)})[0].lacking, 4);
}

QueenStock someBatches(int grafts) {
    return {3,
            {queens(1, planned(grafts), "2027-06-05", {.9F, .2F, 1}),
             queens(2, planned(30), "2027-06-12", {.8F, .9F, .3F}),
             queens(3, planned(30), "2027-06-20", {1, .9F, .9F})}};
}
const std::vector<Ptr<Order>>& someOrders() {
    static const std::vector<Ptr<Order>> orders{
        shared(orderFor(1, 7, "2027-06-08")), shared(orderFor(2, 6, "2027-06-13")),
        shared(orderFor(3, 9, "2027-06-14", OrderKind::Proven)),
        shared(orderFor(4, 12, "2027-06-30"))};
    return orders;
}

TEST(OrderStates, MoreCellsNeverLowerAChance) {
    for (int grafts = 5; grafts < 60; grafts += 5) {
        const auto fewer = filled(someBatches(grafts), someOrders());
        const auto more = filled(someBatches(grafts + 5), someOrders());
        for (std::size_t i = 0; i < fewer.size(); ++i) {
            EXPECT_GE(more[i].chance, fewer[i].chance - 1e-11) << grafts << ' ' << i;
            EXPECT_LE(more[i].lacking, fewer[i].lacking);
        }
    }
}

TEST(OrderStates, AnOrderMoreNeverRaisesAnother) {
    const auto stock = someBatches(30);
    const auto before = filled(stock, someOrders());
    for (std::size_t at = 0; at <= someOrders().size(); ++at) {
        auto orders = someOrders();
        const std::string due = at == 0 ? "2027-06-01" : toText(orders[at - 1]->due);
        orders.insert(orders.begin() + static_cast<std::ptrdiff_t>(at),
                      shared(orderFor(9, 5, due)));
        auto after = filled(stock, orders);
        after.erase(after.begin() + static_cast<std::ptrdiff_t>(at));
        for (std::size_t i = 0; i < before.size(); ++i)
            EXPECT_LE(after[i].chance, before[i].chance + 1e-12) << at << ' ' << i;
    }
}

TEST(OrderStates, OrdersNeverTakeMoreThanIsExpected) {
    const auto stock = someBatches(30);
    std::map<Id<Batch>, double> taken;
    for (const auto& order : filled(stock, someOrders())) {
        double sum = 0;
        for (const auto& fill : order.fills) {
            EXPECT_GT(fill.count, 0);
            taken[fill.batch] += fill.count;
            sum += fill.count;
        }
        EXPECT_LE(sum, order.order->count + 1e-9);
    }
    EXPECT_EQ(taken.size(), 3U);
    for (const auto& part : stock.parts) {
        const double mean =
            std::accumulate(part.eggs->shares.begin(), part.eggs->shares.end(), 0.0);
        EXPECT_LE(taken[part.batch], part.meanCaught(mean / 3, kLastDay) + 1e-6);
    }
}

/// Seasons, batches and orders by lot; the orders are filled queen by queen.
TEST(OrderStates, ChancesAgreeWithDraws) {
    constexpr int kDraws = 40000;
    const auto stock = someBatches(30);
    std::vector<Ptr<Order>> orders{
        shared(orderFor(1, 7, "2027-06-08")), shared(orderFor(2, 6, "2027-06-13")),
        shared(orderFor(3, 9, "2027-06-14")), shared(orderFor(4, 8, "2027-06-30"))};
    std::mt19937_64 random(20270601);
    std::vector<int> whole(orders.size());
    for (int i = 0; i < kDraws; ++i) {
        const auto season = std::uniform_int_distribution<std::size_t>(0, 2)(random);
        std::vector<int> came;
        for (const auto& part : stock.parts) {
            std::discrete_distribution<> mated(part.mated.chances().begin(),
                                               part.mated.chances().end());
            const int fair = part.mated.first() + mated(random);
            came.push_back(std::binomial_distribution<>(
                fair, static_cast<double>(part.eggs->shares[season]))(random));
        }
        int owed = 0;
        for (std::size_t o = 0; o < orders.size(); ++o) {
            owed += orders[o]->count;
            int there = 0;
            for (std::size_t b = 0; b < came.size(); ++b)
                if (stock.parts[b].from <= orders[o]->due) there += came[b];
            whole[o] += there >= owed ? 1 : 0;
        }
    }
    const auto standings = filled(stock, orders);
    for (std::size_t o = 0; o < orders.size(); ++o) {
        const double chance = standings[o].chance;
        EXPECT_NEAR(static_cast<double>(whole[o]) / kDraws, chance,
                    5 * std::sqrt(chance * (1 - chance) / kDraws) + 1e-3)
            << o;
    }
}

TEST(OrdersOf, AreThoseOfTheSeasonByDueDayWeightAndLabel) {
    auto late = orderFor(1, 5, "2028-01-20");
    auto heavy = orderFor(10, 5, "2027-06-20");
    heavy.weight = 5;
    const auto snapshot = with(SeasonMaker().snapshot(), late, orderFor(3, 5, "2027-06-20"),
                               orderFor(2, 5, "2027-06-20"), heavy, orderFor(4, 5, "2026-12-31"),
                               orderFor(5, 5, "2027-05-01"), orderFor(6, 5, "2028-03-20"));
    std::vector<std::string> labels;
    for (const auto& order : ordersOf(snapshot)) labels.push_back(order->label);
    EXPECT_EQ(labels,
              (std::vector<std::string>{"Order 5", "Order 10", "Order 2", "Order 3", "Order 1"}));
}

TEST(OrdersOf, LeaveToAnotherSeasonWhatIsDueInIt) {
    Season next{id<Season>(77), 1, "2028", day("2028-01-01"), day("2028-12-31")};
    const auto snapshot = with(SeasonMaker().snapshot(), next, orderFor(1, 5, "2028-01-20"));
    EXPECT_TRUE(ordersOf(snapshot).empty());
}

}  // namespace
}  // namespace tenthday::test
