/// From a book's terms, deliveries, earmarks and lots to what its orders want.
#include "supply/order_needs.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "supply/promise.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

OrderTerms termsFor(int n, OrderStanding standing, const std::string& shipDays = {}) {
    const auto number = static_cast<std::uint64_t>(n);
    return {id<OrderTerms>(number), 1, id<Order>(number), standing, OrderPurpose::None, shipDays};
}
Delivery delivery(int n, int order, std::string_view on, int count, std::optional<Id<Batch>> batch,
                  int failed = 0) {
    return {id<Delivery>(static_cast<std::uint64_t>(n)),
            1,
            id<Order>(static_cast<std::uint64_t>(order)),
            day(on),
            count,
            batch,
            {},
            failed,
            failed > 0 ? DeliveryLoss::NotAccepted : DeliveryLoss::None,
            {}};
}
QueenLot lot(int n, std::string_view on, int count, bool proven = false) {
    return {id<QueenLot>(static_cast<std::uint64_t>(n)), 1, day(on), count, {}, proven, {}};
}

/// Ten queens of batch 1 caught on 18 June, in ten nucs; today is 25 June.
SeasonMaker tenQueens(std::string_view today = "2027-06-25") {
    SeasonMaker maker(today);
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 12, "B1");
    for (int i = 1; i <= 10; ++i) {
        const auto box = std::to_string(i);
        maker.box(box, "Mill", "7", "2027-04-01")
            .stock(box + "/-", "2027-05-15")
            .place("1", box + "/-", "2027-05-20", true)
            .outcome("1", OutcomeKind::Catch, "2027-06-18", {}, box + "/-");
    }
    return maker;
}
std::vector<OrderOutlook> ordersIn(const Snapshot& snapshot) {
    const auto outlook = freshOutlook(snapshot);
    return supplyOf(*outlook).orders();
}

TEST(OrderTerms, WaitingAndCancelledOrdersTakeNothing) {
    const auto snapshot =
        with(tenQueens().snapshot(), orderFor(1, 8, "2027-06-26"), orderFor(2, 8, "2027-06-27"),
             orderFor(3, 8, "2027-06-28"), termsFor(1, OrderStanding::Waiting),
             termsFor(2, OrderStanding::Cancelled));
    const auto orders = ordersIn(snapshot);
    ASSERT_EQ(orders.size(), 1U);
    EXPECT_EQ(orders[0].chance, 1);
    ASSERT_EQ(waitingOrdersOf(snapshot).size(), 1U);
    EXPECT_EQ(waitingOrdersOf(snapshot)[0]->label, "Order 1");
}

TEST(WaitingOrders, TellTheFirstDayOnWhichEachCouldBePromised) {
    const auto snapshot =
        with(tenQueens().snapshot(), orderFor(1, 4, "2027-06-20"), orderFor(2, 7, "2027-06-20"),
             orderFor(3, 6, "2027-07-20"), termsFor(1, OrderStanding::Waiting),
             termsFor(2, OrderStanding::Waiting, "1"));
    const auto outlook = freshOutlook(snapshot);
    auto supply = supplyOf(*outlook);
    const auto waiting = waitingOrders(supply);
    ASSERT_EQ(waiting.size(), 2U);
    EXPECT_EQ(waiting[0].earliest, day("2027-06-25"));
    EXPECT_EQ(waiting[1].earliest, std::nullopt);  // ten queens, six of them owed
    auto fewer = orderFor(2, 3, "2027-06-20");
    const auto tried = firstPromise(supply, {fewer.kind, 3, {}, "1", .9});
    EXPECT_EQ(tried, day("2027-06-28"));  // the first Monday
}

TEST(ShipDays, AnOrderHasToBeWholeOnTheDayItIsCaged) {
    const auto maker = tenQueens("2027-06-10");
    const auto chanceOf = [&](std::string_view due, const std::string& shipDays) {
        const auto orders = ordersIn(with(maker.snapshot(), orderFor(1, 10, due),
                                          termsFor(1, OrderStanding::Open, shipDays)));
        return orders.at(0).chance;
    };
    // 18 June 2027 is a Friday: caged that day they can go on Saturday, not on Thursday.
    EXPECT_EQ(chanceOf("2027-06-19", "6"), 1);
    EXPECT_EQ(chanceOf("2027-06-19", "4"), 0);
    EXPECT_EQ(chanceOf("2027-06-18", ""), 1);
    EXPECT_EQ(chanceOf("2027-06-18", "5"), 0);
}

TEST(Deliveries, MakeAnOrderMetAndLeaveTheRestOfTheStock) {
    const auto maker = tenQueens();
    const auto snapshot =
        with(maker.snapshot(), orderFor(1, 6, "2027-06-20"), orderFor(2, 4, "2027-06-28"),
             orderFor(3, 1, "2027-06-29"), delivery(1, 1, "2027-06-24", 6, maker.batchId("1")));
    const auto orders = ordersIn(snapshot);
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[0].delivered, 6);
    EXPECT_EQ(orders[0].rest, 0);
    EXPECT_EQ(orders[1].chance, 1);
    EXPECT_EQ(orders[2].chance, 0);
}

TEST(Deliveries, ThoseOfACancelledOrderAreGoneAllTheSame) {
    const auto snapshot =
        with(tenQueens().snapshot(), orderFor(1, 6, "2027-06-20"), orderFor(2, 5, "2027-06-28"),
             delivery(1, 1, "2027-06-24", 6, {}), termsFor(1, OrderStanding::Cancelled));
    EXPECT_EQ(ordersIn(snapshot).at(0).lacking, 1);
}

TEST(Deliveries, OfAnotherYearsBatchTakeNothingFromThisStock) {
    auto snapshot =
        with(tenQueens().snapshot(), orderFor(1, 6, "2027-06-26"), orderFor(2, 10, "2027-06-28"));
    const auto old = delivery(1, 1, "2027-06-24", 6, id<Batch>(999'999));
    snapshot.setAll(Table<Delivery>::from({std::make_shared<const Delivery>(old)}));
    for (const auto& order : ordersIn(snapshot)) EXPECT_EQ(order.chance, 1);
}

/// Raised and bought = delivered and in hand, whatever went out, came back or was bought.
TEST(Deliveries, ConserveQueens) {
    const auto maker = tenQueens();
    for (int went = 0; went <= 6; ++went)
        for (int failed = 0; failed <= went; failed += 2)
            for (int bought = 1; bought <= 7; bought += 3) {
                auto snapshot = with(maker.snapshot(), orderFor(1, 6, "2027-06-26"),
                                     lot(1, "2027-06-01", bought));
                if (went > 0)
                    snapshot = with(snapshot, delivery(1, 1, "2027-06-24", went, {}, failed));
                const auto outlook = freshOutlook(snapshot);
                auto supply = supplyOf(*outlook);
                const Day on = day("2027-06-27");
                const auto raised = supply.queensBy(on).mean();
                EXPECT_EQ(raised, 10 + bought);
                const auto& need = supply.book().needs.at(0);
                EXPECT_EQ(need.rest, 6 - (went - failed));
                const auto inHand = raised - need.went;
                // All that is in hand and not owed can be promised, and no more.
                const auto spare = static_cast<std::int32_t>(inHand) - need.rest;
                EXPECT_EQ(supply.queensBy(on).reachedWith(.9) - supply.owedBy(on), spare);
                EXPECT_EQ(firstPromise(supply, spare, .9).has_value(), true);
                EXPECT_EQ(firstPromise(supply, spare + 1, .9).has_value(), false);
            }
}

TEST(QueensBoughtIn, AreSureFromTheirDayOnOfTheirLineAndKind) {
    SeasonMaker maker("2027-05-01");
    const auto chanceOf = [&](const Order& order) {
        return ordersIn(with(maker.snapshot(), order, lot(1, "2027-05-10", 5),
                             lot(2, "2027-05-12", 3, true), lot(3, "2025-05-12", 50)))
            .at(0)
            .chance;
    };
    EXPECT_EQ(chanceOf(orderFor(1, 5, "2027-05-10")), 1);
    EXPECT_EQ(chanceOf(orderFor(1, 5, "2027-05-09")), 0);
    EXPECT_EQ(chanceOf(orderFor(1, 8, "2027-05-12")), 1);
    EXPECT_EQ(chanceOf(orderFor(1, 9, "2027-05-20")), 0);  // those of 2025 are of their season
    EXPECT_EQ(chanceOf(orderFor(1, 3, "2027-05-12", OrderKind::Proven)), 1);
    EXPECT_EQ(chanceOf(orderFor(1, 4, "2027-05-12", OrderKind::Proven)), 0);
}

TEST(QueensBoughtIn, FillOrdersAsSuch) {
    SeasonMaker maker("2027-05-01");
    const auto orders =
        ordersIn(with(maker.snapshot(), orderFor(1, 4, "2027-05-20"), lot(1, "2027-05-10", 5)));
    ASSERT_EQ(orders.at(0).fills.size(), 1U);
    EXPECT_TRUE(orders[0].fills[0].batch.isNone());
    EXPECT_EQ(orders[0].fills[0].count, 4);
}

TEST(ReserveOfOnesOwn, StandsAmongTheOrders) {
    OrderTerms reserve = termsFor(1, OrderStanding::Open);
    reserve.purpose = OrderPurpose::Reserve;
    const auto orders =
        ordersIn(with(tenQueens().snapshot(), orderFor(1, 4, "2027-06-26", OrderKind::Own), reserve,
                      orderFor(2, 7, "2027-06-28")));
    EXPECT_EQ(orders[0].chance, 1);
    EXPECT_EQ(orders[1].lacking, 1);
}

TEST(PromiseBesideEarmarks, TakesNoneOfThem) {
    const auto maker = tenQueens();
    const Earmark mark{id<Earmark>(1), 1, id<Order>(1), maker.batchId("1"), 8};
    const auto snapshot =
        with(maker.snapshot(), orderFor(1, 8, "2027-08-20"), mark, lot(1, "2027-08-01", 20));
    const auto outlook = freshOutlook(snapshot);
    auto supply = supplyOf(*outlook);
    EXPECT_EQ(firstPromise(supply, 2, .9), day("2027-06-25"));
    EXPECT_EQ(firstPromise(supply, 3, .9), day("2027-08-01"));
    EXPECT_EQ(firstPromise(supply, 22, .9), day("2027-08-01"));
    EXPECT_FALSE(firstPromise(supply, 23, .9).has_value());
}

TEST(FirstPromiseOfALine, NeedsQueensOfIt) {
    const Line amber{id<Line>(1), 1, "Amber"};
    auto some = lot(1, "2027-07-01", 6);
    some.line = amber.id;
    const auto outlook = freshOutlook(with(tenQueens().snapshot(), amber, some));
    auto supply = supplyOf(*outlook);
    EXPECT_EQ(firstPromise(supply, {OrderKind::Mated, 6, amber.id, "", .9}), day("2027-07-01"));
    EXPECT_EQ(firstPromise(supply, {OrderKind::Mated, 6, {}, "", .9}), day("2027-06-25"));
    EXPECT_FALSE(firstPromise(supply, {OrderKind::Mated, 7, amber.id, "", .9}).has_value());
    EXPECT_EQ(firstPromise(supply, {OrderKind::Proven, 10, {}, "", .9}), day("2027-06-25"));
}

TEST(FirstPromiseOfCells, IsADayOnWhichTheyAreRipe) {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 30, "B1");
    const auto outlook = maker.outlook();
    auto supply = supplyOf(*outlook);
    const auto ripe = outlook->batches[0]->timeline.hold.transferDay;
    EXPECT_EQ(firstPromise(supply, {OrderKind::RipeCell, 10, {}, "", .9}), ripe);
    EXPECT_FALSE(firstPromise(supply, {OrderKind::RipeCell, 31, {}, "", .9}).has_value());
    const auto virgins = firstPromise(supply, {OrderKind::Virgin, 10, {}, "", .9});
    ASSERT_TRUE(virgins.has_value());
    EXPECT_GT(*virgins, ripe);
}

TEST(CellOrdersWithShipDays, AreServedByCellsOfThoseDaysOnly) {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 30, "B1");
    const Day ripe = maker.outlook()->batches[0]->timeline.hold.transferDay;
    const auto weekday = static_cast<char>('0' + date::weekday(ripe).iso_encoding());
    auto order = orderFor(1, 5, toText(ripe + Days{3}), OrderKind::RipeCell);
    order.notBefore = ripe - Days{2};
    const auto chanceOf = [&](const std::string& shipDays) {
        return ordersIn(with(maker.snapshot(), order, termsFor(1, OrderStanding::Open, shipDays)))
            .at(0)
            .chance;
    };
    EXPECT_GT(chanceOf(std::string(1, weekday)), .9);
    EXPECT_EQ(chanceOf(std::string(1, weekday == '7' ? '1' : static_cast<char>(weekday + 1))), 0);
}

}  // namespace
}  // namespace tenthday::test
