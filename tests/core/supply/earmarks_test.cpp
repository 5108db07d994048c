/// Queens of a batch that are meant for an order go to it first.
#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "losses/batch_losses.h"
#include "support/stock_maker.h"

namespace tenthday::test {
namespace {

Id<Batch> batch(int n) { return id<Batch>(static_cast<std::uint64_t>(n)); }

OrderNeed need(int n, int count, std::string_view due, std::vector<Earmarked> marks = {},
               OrderKind kind = OrderKind::Mated) {
    auto made = bareNeed(shared(orderFor(n, count, due, kind)));
    made.earmarks = std::move(marks);
    return made;
}
std::vector<OrderOutlook> filled(const QueenStock& stock, std::vector<OrderNeed> needs,
                                 std::vector<QueensGone> gone = {}) {
    QueenSums sums(stock);
    return queenOrders(OrderBook{std::move(needs), std::move(gone), {}}, stock, sums);
}

TEST(Earmarks, GoBeforeTheDueDay) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders =
        filled(stock, {need(1, 6, "2027-06-12"), need(2, 6, "2027-06-20", {{batch(1), 6}})});
    EXPECT_EQ(orders[0].state, OrderState::Short);
    EXPECT_EQ(orders[0].lacking, 2);
    EXPECT_EQ(orders[0].fills[0].count, 4);
    EXPECT_EQ(orders[1].chance, 1);
    EXPECT_EQ(orders[1].fills[0].count, 6);
    EXPECT_EQ(orders[1].earmarked, 6);
}

TEST(Earmarks, OfOneBatchGoByTheOrderOfFilling) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders = filled(stock, {need(1, 6, "2027-06-12", {{batch(1), 6}}),
                                       need(2, 6, "2027-06-20", {{batch(1), 6}})});
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[1].lacking, 2);
}

TEST(Earmarks, APartThatIsMeantIsSureWhoeverElseIsShort) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    const auto orders =
        filled(stock, {need(1, 20, "2027-06-12"), need(2, 8, "2027-06-20", {{batch(1), 5}})});
    EXPECT_EQ(orders[0].lacking, 15);
    EXPECT_EQ(orders[1].chance, 0);
    EXPECT_EQ(orders[1].lacking, 3);
}

TEST(Earmarks, OfABatchThatGivesLessAreNoMoreThanItGives) {
    const QueenStock stock{1, {caughtQueens(1, 4, "2027-06-10"), caughtQueens(2, 9, "2027-06-10")}};
    const auto orders =
        filled(stock, {need(1, 9, "2027-06-12"), need(2, 6, "2027-06-20", {{batch(1), 6}})});
    EXPECT_EQ(orders[0].chance, 1);  // of the batch nobody named
    EXPECT_EQ(orders[0].fills[0].batch, batch(2));
    EXPECT_EQ(orders[1].lacking, 2);
    EXPECT_EQ(orders[1].fills[0].count, 4);
}

TEST(Earmarks, OfALineLeaveOtherLinesAlone) {
    QueenStock stock{1, {caughtQueens(1, 6, "2027-06-10"), caughtQueens(2, 6, "2027-06-10")}};
    stock.parts[0].line = id<Line>(7);
    auto amber = need(1, 6, "2027-06-12");
    auto order = *amber.order;
    order.line = id<Line>(7);
    amber.order = shared(order);
    auto all = filled(stock, {amber, need(2, 6, "2027-06-20", {{batch(2), 6}})});
    EXPECT_EQ(all[0].chance, 1);
    EXPECT_EQ(all[1].chance, 1);
    all = filled(stock, {amber, need(2, 6, "2027-06-20", {{batch(1), 6}})});
    EXPECT_EQ(all[0].lacking, 6);
    EXPECT_EQ(all[1].chance, 1);
}

CountSpread planned(int grafts) {
    return matedInFairWeather(standing(grafts), chainRates(Facts()));
}
QueenStock someBatches() {
    return {3,
            {queens(1, planned(24), "2027-06-05", {.9F, .2F, 1}),
             queens(2, planned(30), "2027-06-12", {.8F, .9F, .3F}),
             queens(3, planned(30), "2027-06-20", {1, .9F, .9F})}};
}
std::vector<OrderNeed> someNeeds() {
    return {need(1, 5, "2027-06-08"), need(2, 6, "2027-06-13", {{batch(2), 3}}),
            need(3, 7, "2027-06-22", {{batch(1), 4}, {batch(2), 3}}),
            need(4, 8, "2027-06-30", {{batch(3), 8}})};
}

/// How often each order is whole on its day, filled queen by queen: of earmarks by the order of
/// filling, then of what is free, what an order lacks going before all later ones.
std::vector<double> drawn(const QueenStock& stock, const std::vector<OrderNeed>& needs, int draws) {
    std::mt19937_64 random(20270601);
    std::vector<int> whole(needs.size());
    for (int i = 0; i < draws; ++i) {
        const auto season = std::uniform_int_distribution<std::size_t>(0, 2)(random);
        std::vector<int> came;
        for (const auto& part : stock.parts) {
            std::discrete_distribution<> mated(part.mated.chances().begin(),
                                               part.mated.chances().end());
            const int fair = part.mated.first() + mated(random);
            came.push_back(std::binomial_distribution<>(
                fair, static_cast<double>(part.eggs->shares[season]))(random));
        }
        for (std::size_t o = 0; o < needs.size(); ++o) {
            const Day on = needs[o].wholeOn;
            std::vector<int> left;
            for (std::size_t b = 0; b < came.size(); ++b)
                left.push_back(stock.parts[b].from <= on ? came[b] : 0);
            std::vector<int> lacks;
            for (const auto& other : needs) {
                lacks.push_back(other.rest);
                for (const auto& mark : other.earmarks)
                    for (std::size_t b = 0; b < left.size(); ++b) {
                        if (stock.parts[b].batch != mark.batch) continue;
                        const int gets = std::min(left[b], mark.count);
                        left[b] -= gets;
                        lacks.back() -= gets;
                    }
            }
            int free = 0;
            for (const int queens : left) free += queens;
            int before = 0;
            for (std::size_t other = 0; other < o; ++other) before += lacks[other];
            whole[o] += lacks[o] == 0 || free - before >= lacks[o] ? 1 : 0;
        }
    }
    std::vector<double> shares;
    for (const int count : whole) shares.push_back(static_cast<double>(count) / draws);
    return shares;
}

TEST(Earmarks, ChancesAgreeWithDraws) {
    constexpr int kDraws = 40000;
    const auto stock = someBatches();
    const auto needs = someNeeds();
    const auto shares = drawn(stock, needs, kDraws);
    const auto orders = filled(stock, needs);
    for (std::size_t o = 0; o < needs.size(); ++o) {
        const double chance = orders[o].chance;
        EXPECT_GT(chance, .05) << o;
        EXPECT_LT(chance, .98) << o;
        EXPECT_NEAR(shares[o], chance, 5 * std::sqrt(chance * (1 - chance) / kDraws)) << o;
    }
}

TEST(Earmarks, NeverLowerTheChanceOfTheirOrderNorRaiseThatOfOthersBefore) {
    const auto stock = someBatches();
    for (int count = 1; count <= 8; ++count) {
        const auto with = [&](int marked) {
            auto needs = someNeeds();
            needs[3].earmarks = {{batch(1), marked}};
            return filled(stock, needs);
        };
        const auto fewer = with(count - 1);
        const auto more = with(count);
        EXPECT_GE(more[3].chance, fewer[3].chance - 1e-12) << count;
        for (std::size_t o = 0; o < 3; ++o)
            EXPECT_LE(more[o].chance, fewer[o].chance + 1e-12) << count << ' ' << o;
    }
}

TEST(QueensGone, AreMissingAndThoseThatFailedAreOwedAgain) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    // Six went out for the first order, two of them failed: it wants two more.
    auto first = need(1, 6, "2027-06-12");
    first.went = 6;
    first.delivered = 4;
    first.rest = 2;
    const QueensGone gone{first.order->id, day("2027-06-11"), 6, batch(1), {}, false};
    const auto orders =
        filled(stock, {first, need(2, 2, "2027-06-20"), need(3, 1, "2027-06-21")}, {gone});
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[0].fills[0].count, 2);
    EXPECT_EQ(orders[1].chance, 1);
    EXPECT_EQ(orders[2].lacking, 1);  // ten came: six and two went to the first, two to the second
    EXPECT_TRUE(orders[2].fills.empty());
}

TEST(QueensGone, ThoseOfALaterOrderAreGoneToo) {
    const QueenStock stock{1, {caughtQueens(1, 10, "2027-06-10")}};
    auto later = need(2, 7, "2027-07-20");
    later.went = later.delivered = 7;
    later.rest = 0;
    const QueensGone gone{later.order->id, day("2027-06-11"), 7, {}, {}, false};
    const auto orders = filled(stock, {need(1, 4, "2027-06-20"), later}, {gone});
    EXPECT_EQ(orders[0].lacking, 1);
    EXPECT_EQ(orders[1].chance, 1);
    EXPECT_EQ(orders[1].state, OrderState::Met);
    EXPECT_TRUE(orders[1].fills.empty());
}

TEST(QueensGone, OfABatchLeaveLessForWhomItIsMeant) {
    const QueenStock stock{1,
                           {caughtQueens(1, 10, "2027-06-10"), caughtQueens(2, 9, "2027-06-10")}};
    const QueensGone gone{id<Order>(9), day("2027-06-11"), 6, batch(1), {}, false};
    const auto orders = filled(
        stock, {need(1, 5, "2027-06-20"), need(2, 6, "2027-06-22", {{batch(1), 6}})}, {gone});
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[1].chance, 1);  // four of its batch, two of the other
    const auto tight = filled(
        stock, {need(1, 8, "2027-06-20"), need(2, 6, "2027-06-22", {{batch(1), 6}})}, {gone});
    EXPECT_EQ(tight[1].lacking, 1);
}

// 36 cells, 24 wanted, 75 % mated: .91 were batches independent, .80 where one season in five gives
// 35 % and the others 85 % (derived: binomial tails).
TEST(OrderUnderOneSeason, IsLessSureThanItsBatchesAlone) {
    const auto order = need(1, 24, "2027-06-30");
    const QueenStock alone{1, {queens(1, CountSpread(36), "2027-06-10", {.75F})}};
    EXPECT_NEAR(filled(alone, {order})[0].chance, .91, .005);
    const std::vector<float> seasons{.35F, .85F, .85F, .85F, .85F};
    const QueenStock shares{5,
                            {queens(1, CountSpread(12), "2027-06-10", seasons),
                             queens(2, CountSpread(24), "2027-06-10", seasons)}};
    EXPECT_NEAR(filled(shares, {order})[0].chance, .80, .005);
}

}  // namespace
}  // namespace tenthday::test
