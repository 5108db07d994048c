/// What went out of a batch as ripe cells or virgins never comes back, whatever becomes of the
/// order.
#include "supply/cells_gone.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Twelve ripe cells of batch 1 and fourteen of batch 2 on one day, counted; today is that day.
class CellsGoneTest : public ::testing::Test {
protected:
    CellsGoneTest() {
        maker.yard("Mill").builder("B1", "Mill").builder("B2", "Mill");
        maker.batch("1", "2027-05-10", 14, 20, "B1").batch("2", "2027-05-10", 14, 20, "B2");
        maker.outcome("1", OutcomeKind::Ripe, "2027-05-20", 12, {}, 1);
        maker.outcome("2", OutcomeKind::Ripe, "2027-05-20", 14, {}, 1);
    }
    [[nodiscard]] static Delivery sent(int n, int order, std::string_view on, int count,
                                       std::optional<Id<Batch>> batch) {
        Delivery row;
        row.id = id<Delivery>(static_cast<std::uint64_t>(n));
        row.order = id<Order>(static_cast<std::uint64_t>(order));
        row.day = day(on);
        row.count = count;
        row.fromBatch = batch;
        return row;
    }
    [[nodiscard]] static OrderTerms standsAs(int order, OrderStanding standing) {
        const auto n = static_cast<std::uint64_t>(order);
        return {id<OrderTerms>(n), 1, id<Order>(n), standing, OrderPurpose::None, {}};
    }
    [[nodiscard]] static std::vector<OrderOutlook> ordersIn(const Snapshot& snapshot) {
        const auto outlook = freshOutlook(snapshot);
        return supplyOf(*outlook).orders();
    }
    /// How many of `count` another order for cells that day lacks.
    [[nodiscard]] static int lacks(const Snapshot& snapshot, int count) {
        const auto asked = orderFor(9, count, "2027-05-20", OrderKind::RipeCell);
        for (const auto& order : ordersIn(with(snapshot, asked)))
            if (order.order->id == asked.id) return order.lacking;
        return -1;
    }

    SeasonMaker maker{"2027-05-20"};
};

TEST_F(CellsGoneTest, AreMissingWhetherTheirOrderIsOpenOrCancelled) {
    const auto book = with(maker.snapshot(), orderFor(1, 10, "2027-05-20", OrderKind::RipeCell),
                           sent(1, 1, "2027-05-20", 10, maker.batchId("1")));
    EXPECT_EQ(lacks(maker.snapshot(), 26), 0);
    EXPECT_EQ(lacks(book, 16), 0);
    EXPECT_EQ(lacks(book, 17), 1);
    for (const auto standing : {OrderStanding::Cancelled, OrderStanding::Waiting}) {
        EXPECT_EQ(lacks(with(book, standsAs(1, standing)), 16), 0);
        EXPECT_EQ(lacks(with(book, standsAs(1, standing)), 17), 1);
    }
}

TEST_F(CellsGoneTest, ComeOutOfTheBatchThatIsNamed) {
    const auto book = with(maker.snapshot(), orderFor(1, 10, "2027-05-20", OrderKind::RipeCell),
                           orderFor(2, 26, "2027-05-20", OrderKind::RipeCell),
                           sent(1, 1, "2027-05-20", 10, maker.batchId("2")));
    const auto orders = ordersIn(book);
    EXPECT_EQ(orders[0].chance, 1);  // delivered
    ASSERT_EQ(orders[1].fills.size(), 2U);
    for (const auto& fill : orders[1].fills)
        EXPECT_EQ(fill.count, fill.batch == maker.batchId("1") ? 12 : 4);
    EXPECT_EQ(orders[1].lacking, 10);
}

TEST_F(CellsGoneTest, WithoutABatchAreOfTheCellsOfTheirDay) {
    const auto book = with(maker.snapshot(), orderFor(1, 10, "2027-05-20", OrderKind::RipeCell),
                           sent(1, 1, "2027-05-20", 10, {}), standsAs(1, OrderStanding::Cancelled));
    EXPECT_EQ(lacks(book, 16), 0);
    EXPECT_EQ(lacks(book, 17), 1);
}

TEST_F(CellsGoneTest, OfAnotherYearsBatchLeaveThisSeasonAlone) {
    auto book = with(maker.snapshot(), orderFor(1, 10, "2027-05-20", OrderKind::RipeCell));
    const auto old = sent(1, 1, "2027-05-20", 10, id<Batch>(999'999));
    book.setAll(Table<Delivery>::from({std::make_shared<const Delivery>(old)}));
    EXPECT_EQ(lacks(book, 26), 0);
}

TEST_F(CellsGoneTest, AreMissingAmongVirginsAndQueens) {
    const auto asks = with(maker.snapshot(), orderFor(1, 10, "2027-05-20", OrderKind::RipeCell),
                           orderFor(2, 5, "2027-07-20"));
    const auto expected = [](const Snapshot& snapshot) {
        const auto outlook = freshOutlook(snapshot);
        return supplyOf(*outlook).expectedBy(day("2027-07-20"));
    };
    const auto cancelled = with(asks, standsAs(1, OrderStanding::Cancelled));
    const auto gone = with(cancelled, sent(1, 1, "2027-05-20", 10, maker.batchId("1")));
    EXPECT_NEAR(expected(gone) / expected(cancelled), 16.0 / 26.0, .01);
}

/// What went out never comes back: with each more that was delivered, named or not, every other
/// order has at the most the same chance, and it is the same whatever becomes of the order.
TEST_F(CellsGoneTest, NeverComeBack) {
    std::uint64_t state = 7;
    const auto upTo = [&](int most) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<int>((state >> 33) % static_cast<std::uint64_t>(most + 1));
    };
    for (int round = 0; round < 12; ++round) {
        const bool areCells = upTo(2) > 0;
        const auto kind = areCells ? OrderKind::RipeCell : OrderKind::Virgin;
        const auto* const on = areCells ? "2027-05-20" : "2027-05-26";
        const auto base =
            with(maker.snapshot(), orderFor(1, 12, on, kind), orderFor(2, 4 + upTo(16), on, kind),
                 orderFor(3, 1 + upTo(8), "2027-05-27", OrderKind::Virgin),
                 orderFor(4, 1 + upTo(8), "2027-07-20"));
        std::optional<Id<Batch>> batch;
        if (upTo(2) > 0) batch = maker.batchId(upTo(1) > 0 ? "1" : "2");
        std::vector<double> before;
        for (int count = 0; count <= 12; count += 3) {
            const auto gone = count == 0 ? base : with(base, sent(1, 1, on, count, batch));
            std::vector<double> chances;
            const auto cancelled = with(gone, standsAs(1, OrderStanding::Cancelled));
            for (const auto& order : ordersIn(cancelled)) chances.push_back(order.chance);
            ASSERT_EQ(chances.size(), 3U);
            for (std::size_t i = 0; i < before.size(); ++i)
                EXPECT_LE(chances[i], before[i] + 1e-9) << round << ' ' << count << ' ' << i;
            // Delivered wholly, the order takes no more, whether it is open or not.
            if (count == 12) {
                const auto open = ordersIn(gone);
                for (std::size_t i = 0; i < chances.size(); ++i)
                    EXPECT_EQ(open[i + 1].chance, chances[i]) << round << ' ' << i;
            }
            before = chances;
        }
    }
}

}  // namespace
}  // namespace tenthday::test
