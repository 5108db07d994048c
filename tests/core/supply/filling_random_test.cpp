/// What must hold of any stock and any orders: seeded random ones.
#include <gtest/gtest.h>

#include <map>
#include <numeric>
#include <random>

#include "losses/batch_losses.h"
#include "support/stock_maker.h"

namespace tenthday::test {
namespace {

constexpr int kBatches = 5;
constexpr std::size_t kSeasons = 4;

/// Makes stocks and orders by lot, the same for one seed.
class Maker {
public:
    explicit Maker(std::uint64_t seed) : random_(seed) {}

    int upTo(int most) { return std::uniform_int_distribution<>(0, most)(random_); }

    QueenStock stock() {
        QueenStock made{kSeasons, {}};
        for (int b = 1; b <= kBatches; ++b) {
            const Day from = day("2027-06-01") + Days{upTo(30)};
            if (upTo(3) == 0) {
                made.parts.push_back(caughtQueens(b, upTo(15), toText(from), upTo(1) == 0));
                continue;
            }
            std::vector<float> shares;
            for (std::size_t s = 0; s < kSeasons; ++s)
                shares.push_back(static_cast<float>(upTo(10)) / 10);
            const auto mated = matedInFairWeather(standing(10 + upTo(30)), chainRates(Facts()));
            made.parts.push_back(queens(b, mated, toText(from), shares, upTo(1) == 0));
        }
        return made;
    }

    OrderBook book() {
        OrderBook made;
        Day due = day("2027-06-01");
        for (int o = 1; o <= 6; ++o) {
            due += Days{upTo(8)};
            const auto kind = upTo(3) == 0 ? OrderKind::Proven : OrderKind::Mated;
            auto need = bareNeed(shared(orderFor(o, 1 + upTo(10), toText(due), kind)));
            std::int32_t left = need.rest;
            for (int marks = upTo(2); marks > 0 && left > 0; --marks) {
                const auto count = 1 + upTo(left - 1);
                need.earmarks.push_back(
                    {id<Batch>(static_cast<std::uint64_t>(1 + upTo(kBatches - 1))), count});
                left -= count;
            }
            made.needs.push_back(std::move(need));
        }
        if (upTo(1) == 0)
            made.gone.push_back({id<Order>(9),
                                 day("2027-06-02"),
                                 1 + upTo(5),
                                 id<Batch>(static_cast<std::uint64_t>(1 + upTo(kBatches - 1))),
                                 {},
                                 false});
        return made;
    }

private:
    std::mt19937_64 random_;
};

std::vector<OrderOutlook> filledBy(const QueenStock& stock, const OrderBook& book) {
    QueenSums sums(stock);
    return queenOrders(book, stock, sums);
}

class AnyFilling : public ::testing::TestWithParam<std::uint64_t> {};
INSTANTIATE_TEST_SUITE_P(OfSeeds, AnyFilling, ::testing::Range<std::uint64_t>(1, 41));

TEST_P(AnyFilling, HasChancesThatAreChances) {
    Maker make(GetParam());
    const auto stock = make.stock();
    const auto book = make.book();
    for (const auto& order : filledBy(stock, book)) {
        EXPECT_GE(order.chance, 0);
        EXPECT_LE(order.chance, 1);
        EXPECT_GE(order.lacking, 0);
        EXPECT_LE(order.lacking, order.rest);
        EXPECT_EQ(order.state == OrderState::Met, order.lacking == 0) << order.chance;
    }
}

TEST_P(AnyFilling, NeverGivesMoreOfABatchThanItGives) {
    Maker make(GetParam());
    const auto stock = make.stock();
    const auto book = make.book();
    std::map<Id<Batch>, double> given;
    for (const auto& gone : book.gone) given[*gone.batch] += 0;
    for (const auto& order : filledBy(stock, book)) {
        double sum = 0;
        for (const auto& fill : order.fills) {
            given[fill.batch] += fill.count;
            sum += fill.count;
        }
        EXPECT_LE(sum, order.rest + 1e-6);
    }
    for (const auto& part : stock.parts) {
        const double mean =
            std::accumulate(part.eggs->shares.begin(), part.eggs->shares.end(), 0.0) /
            static_cast<double>(part.eggs->shares.size());
        EXPECT_LE(given[part.batch], part.meanCaught(mean, kLastDay) + 1e-6);
    }
}

TEST_P(AnyFilling, MoreQueensOrALaterDayNeverLowerAChance) {
    Maker make(GetParam());
    const auto stock = make.stock();
    const auto book = make.book();
    const auto before = filledBy(stock, book);
    auto richer = stock;
    auto& more = richer.parts[static_cast<std::size_t>(make.upTo(kBatches - 1))];
    more.mated = more.mated.shifted(3);
    auto later = book;
    auto& last = later.needs.back();  // no other goes before it then
    last.wholeOn += Days{7};
    const auto withMore = filledBy(richer, book);
    const auto withTime = filledBy(stock, later);
    for (std::size_t o = 0; o < before.size(); ++o)
        EXPECT_GE(withMore[o].chance, before[o].chance - 1e-9) << o;
    EXPECT_GE(withTime.back().chance, before.back().chance - 1e-9);
}

TEST_P(AnyFilling, WhatIsEarmarkedIsAtLeastWhatItsBatchesGive) {
    Maker make(GetParam());
    const auto stock = make.stock();
    auto book = make.book();
    // One order alone on its batch: its chance cannot be below that of the batch giving so many.
    auto& need = book.needs.back();
    const auto& part = stock.parts.front();
    for (auto& other : book.needs)
        std::erase_if(other.earmarks, [&](const auto& mark) { return mark.batch == part.batch; });
    std::erase_if(book.gone, [&](const auto& gone) { return gone.batch == part.batch; });
    need.earmarks = {{part.batch, need.rest}};
    if (!wantOf(*need.order).takes(part)) return;
    QueenStock alone{kSeasons, {part}};
    QueenSums sums(alone);
    const double gives = sums.overall({}, need.wholeOn).atLeast(need.rest);
    EXPECT_GE(filledBy(stock, book).back().chance, gives - 1e-9);
}

TEST_P(AnyFilling, EarmarksThatAreNotThereAreAsIfNone) {
    Maker make(GetParam());
    const auto stock = make.stock();
    auto book = make.book();
    for (auto& need : book.needs) need.earmarks.clear();
    const auto bare = filledBy(stock, book);
    for (auto& need : book.needs)
        need.earmarks = {{id<Batch>(77), 1}};  // of a batch without queens
    const auto marked = filledBy(stock, book);
    for (std::size_t o = 0; o < bare.size(); ++o) {
        EXPECT_NEAR(marked[o].chance, bare[o].chance, 1e-9) << o;
        EXPECT_EQ(marked[o].lacking, bare[o].lacking) << o;
    }
}

}  // namespace
}  // namespace tenthday::test
