/// Orders kept, delivered, replaced, earmarked; each edit can be taken back.
#include "records/order_verbs.h"

#include <gtest/gtest.h>

#include "records/deliveries.h"
#include "records/order_days.h"
#include "support/draft_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

Snapshot after(const Snapshot& snapshot, const Result<ChangeSet>& changes) {
    if (!changes) throw std::invalid_argument(changes.error().text);
    auto next = applied(snapshot, changes.value());
    if (!next) throw std::invalid_argument(next.error().text);
    const auto back = applied(next.value(), changes.value().inverse());
    EXPECT_TRUE(back && back.value().sameContent(snapshot));
    return std::move(next).value();
}
std::string refusal(const Result<ChangeSet>& changes) {
    return changes ? "not refused" : changes.error().text;
}

/// An order of ten due on 28 June, and two batches; today is 20 June.
class OrderVerbs : public ::testing::Test {
protected:
    OrderVerbs() {
        SeasonMaker maker("2027-06-20");
        maker.yard("Mill").builder("B1", "Mill");
        maker.batch("1", "2027-05-10", 14, 20, "B1").batch("2", "2027-05-14", 14, 20, "B1");
        first = maker.batchId("1");
        second = maker.batchId("2");
        mill = maker.yardId("Mill");
        now = with(maker.snapshot(), orderFor(1, 10, "2027-06-28"));
    }
    void deliverSome(int count, std::optional<Id<Batch>> batch = {}) {
        const Id<Delivery> fresh{newId()};
        now = after(now, deliver(now, {order, day("2027-06-20"), count, batch, mill, {}}, fresh));
        last = fresh;
    }
    void mean(Id<Batch> batch, int count) {
        now = after(now, earmark(now, order, batch, count, Id<Earmark>{newId()}));
    }
    void stand(OrderStanding standing) {
        now = after(now, setStanding(now, order, standing, Id<OrderTerms>{newId()}));
    }
    [[nodiscard]] int rest() const { return deliveredOf(now, order).restOf(*now.find(order)); }

    IdSource newId = freshIds();
    Id<Order> order = id<Order>(1);
    Id<Batch> first;
    Id<Batch> second;
    Id<Yard> mill;
    Id<Delivery> last;
    Snapshot now;
};

TEST_F(OrderVerbs, ANewOrderComesWithItsTermsAndLineInOneEdit) {
    OrderWords words;
    words.order = orderFor(2, 5, "2027-07-05", OrderKind::Own);
    words.line = "Amber";
    words.purpose = OrderPurpose::Reserve;
    words.shipDays = "123";
    now = after(now, keepOrder(now, words, newId));
    const auto kept = wordsOf(now, words.order.id);
    EXPECT_EQ(kept.line, "Amber");
    EXPECT_EQ(kept.purpose, OrderPurpose::Reserve);
    EXPECT_EQ(kept.shipDays, "123");
    EXPECT_TRUE(keepOrder(now, kept, newId).value().isEmpty());
}

TEST_F(OrderVerbs, TermsThatSayNothingLeaveNoRow) {
    auto words = wordsOf(now, order);
    words.shipDays = "12";
    now = after(now, keepOrder(now, words, newId));
    EXPECT_EQ(now.all<OrderTerms>().size(), 1U);
    words.shipDays = "";
    now = after(now, keepOrder(now, words, newId));
    EXPECT_TRUE(now.all<OrderTerms>().empty());
}

TEST_F(OrderVerbs, ADueDayThatMovesIsRememberedWithItsReason) {
    auto words = wordsOf(now, order);
    words.order.due = day("2027-07-05");
    words.moveReason = " cold week ";
    now = after(now, keepOrder(now, words, newId));
    ASSERT_EQ(now.all<PromiseMove>().size(), 1U);
    const auto& move = **now.all<PromiseMove>().begin();
    EXPECT_EQ(move.day, day("2027-06-20"));
    EXPECT_EQ(move.dueBefore, day("2027-06-28"));
    EXPECT_EQ(move.dueAfter, day("2027-07-05"));
    EXPECT_EQ(move.reason, "cold week");
    words.order.count = 12;  // the day stays
    now = after(now, keepOrder(now, words, newId));
    EXPECT_EQ(now.all<PromiseMove>().size(), 1U);
}

TEST_F(OrderVerbs, OnTheWaitingListNothingWasPromisedYet) {
    stand(OrderStanding::Waiting);
    auto words = wordsOf(now, order);
    words.order.due = day("2027-07-05");
    now = after(now, keepOrder(now, words, newId));
    EXPECT_TRUE(now.all<PromiseMove>().empty());
}

TEST_F(OrderVerbs, WhatIsDeliveredIsNoLongerOwedAndWhatFailedIsOwedAgain) {
    deliverSome(6, first);
    EXPECT_EQ(rest(), 4);
    now = after(now, replaceQueens(now, last, 2, DeliveryLoss::DeadOnArrival));
    EXPECT_EQ(rest(), 6);
    deliverSome(6);
    EXPECT_EQ(rest(), 0);
    const auto all = deliveredOf(now, order);
    EXPECT_EQ(all.count, 12);
    EXPECT_EQ(all.good(), 10);
    now = after(now, replaceQueens(now, deliveriesOf(now, order)[0]->id, 0, DeliveryLoss::None));
    EXPECT_EQ(rest(), 0);
    now = after(now, deleteDelivery(now, last));
    EXPECT_EQ(rest(), 4);
}

TEST_F(OrderVerbs, ADeliveryThatCannotBeIsRefused) {
    const auto say = [&](std::string_view on, int count) {
        return refusal(deliver(now, {order, day(on), count, {}, {}, {}}, Id<Delivery>{newId()}));
    };
    EXPECT_EQ(say("2027-06-21", 1), "Order 1: 2027-06-21 is ahead of today");
    EXPECT_EQ(say("2027-06-20", 11), "Order 1: only 10 are owed");
    deliverSome(10);
    EXPECT_EQ(say("2027-06-20", 1), "Order 1: nothing is owed any more");
    EXPECT_EQ(refusal(replaceQueens(now, last, 11, DeliveryLoss::Other)),
              "Order 1: 10 went out that day");
    EXPECT_EQ(refusal(replaceQueens(now, last, 1, DeliveryLoss::None)),
              "Order 1: why they have to be replaced is needed");
    now = after(now, deleteDelivery(now, last));
    stand(OrderStanding::Cancelled);
    EXPECT_EQ(say("2027-06-20", 1), "Order 1: is cancelled; open it first");
}

TEST_F(OrderVerbs, AnOrderKeepsToWhatWasDeliveredOfIt) {
    deliverSome(6);
    auto words = wordsOf(now, order);
    words.order.count = 5;
    EXPECT_EQ(refusal(keepOrder(now, words, newId)), "Order 1: 6 are delivered already");
    words.order.count = 6;
    now = after(now, keepOrder(now, words, newId));
    EXPECT_EQ(rest(), 0);
}

TEST_F(OrderVerbs, APurposeIsForQueensOfOnesOwn) {
    auto words = wordsOf(now, order);
    words.purpose = OrderPurpose::Winter;
    EXPECT_EQ(refusal(keepOrder(now, words, newId)),
              "Order 1: only queens for oneself have a purpose");
}

TEST_F(OrderVerbs, EarmarksAreSetChangedAndTakenAway) {
    mean(first, 4);
    mean(first, 6);
    mean(second, 4);
    EXPECT_EQ(now.all<Earmark>().size(), 2U);
    EXPECT_EQ(refusal(earmark(now, order, second, 5, Id<Earmark>{newId()})),
              "Order 1: of 10 owed 6 are earmarked elsewhere");
    mean(first, 0);
    EXPECT_EQ(now.all<Earmark>().size(), 1U);
    EXPECT_TRUE(earmark(now, order, first, 0, Id<Earmark>{newId()}).value().isEmpty());
}

TEST_F(OrderVerbs, ABatchIsNotEarmarkedBeyondItsGrafts) {
    now = with(now, orderFor(2, 30, "2027-07-10"), orderFor(3, 5, "2027-07-01", OrderKind::Virgin));
    mean(first, 8);
    EXPECT_EQ(refusal(earmark(now, id<Order>(2), first, 13, Id<Earmark>{newId()})),
              "Order 2: batch 1 has only 12 grafts that are not earmarked");
    EXPECT_EQ(refusal(earmark(now, id<Order>(3), first, 1, Id<Earmark>{newId()})),
              "Order 3: cells and virgins are of the batch of their day");
}

TEST_F(OrderVerbs, AnEarmarkOfAnotherLineIsRefused) {
    auto words = wordsOf(now, order);
    words.line = "Amber";
    now = after(now, keepOrder(now, words, newId));
    EXPECT_EQ(refusal(earmark(now, order, first, 1, Id<Earmark>{newId()})),
              "Order 1: batch 1 has no bar of the line Amber");
}

TEST_F(OrderVerbs, ADeliveryUsesUpTheEarmark) {
    mean(first, 6);
    mean(second, 2);
    deliverSome(4, first);
    ASSERT_EQ(now.all<Earmark>().size(), 2U);
    for (const auto& mark : now.all<Earmark>()) EXPECT_EQ(mark->count, 2);
    deliverSome(6);
    EXPECT_TRUE(now.all<Earmark>().empty());
}

TEST_F(OrderVerbs, OffTheListOfOpenOrdersNothingIsKeptForIt) {
    mean(first, 6);
    stand(OrderStanding::Waiting);
    EXPECT_TRUE(now.all<Earmark>().empty());
    EXPECT_EQ(refusal(earmark(now, order, first, 1, Id<Earmark>{newId()})),
              "Order 1: is on the waiting list");
    stand(OrderStanding::Open);
    EXPECT_TRUE(now.all<OrderTerms>().empty());
}

TEST_F(OrderVerbs, AnOrderIsDeletedWithAllThatHangsOnIt) {
    auto words = wordsOf(now, order);
    words.shipDays = "1";
    words.order.due = day("2027-07-05");
    now = after(now, keepOrder(now, words, newId));
    mean(first, 3);
    deliverSome(2);
    now = with(
        now,
        TaskDone{
            id<TaskDone>(1), 1, TaskRule::Deliver, toText(order.uuid), {}, 0, day("2027-06-20")});
    now = after(now, deleteOrder(now, order));
    EXPECT_TRUE(now.all<Order>().empty() && now.all<OrderTerms>().empty());
    EXPECT_TRUE(now.all<Earmark>().empty() && now.all<Delivery>().empty());
    EXPECT_TRUE(now.all<PromiseMove>().empty() && now.all<TaskDone>().empty());
}

TEST_F(OrderVerbs, ADeliveryOfAnotherSeasonsBatchCanStillFail) {
    // Its batch is not read with this season.
    const Delivery old{id<Delivery>(7), 1,  order, day("2027-06-01"),  3,
                       id<Batch>(999),  {}, 0,     DeliveryLoss::None, {}};
    now.setAll(Table<Delivery>::from({std::make_shared<const Delivery>(old)}));
    now = after(now, replaceQueens(now, old.id, 1, DeliveryLoss::DroneLayer));
    EXPECT_EQ(deliveredOf(now, order).failed, 1);
    // Deleted with its order, it comes back by undo.
    const auto gone = deleteOrder(now, order);
    ASSERT_TRUE(gone.ok());
    const auto without = applied(now, gone.value()).value();
    EXPECT_TRUE(applied(without, gone.value().inverse()).ok());
}

TEST_F(OrderVerbs, AnOrderThatNoSeasonWouldShowIsRefused) {
    auto words = wordsOf(now, order);
    words.order.due = day("2035-06-01");
    auto bare = now;
    bare.setAll(Table<Season>());
    EXPECT_TRUE(keepOrder(bare, words, newId).ok()) << "without a season all are shown";
    ChangeSet season;
    season.add(Season{id<Season>(1), 1, "2027", day("2027-04-01"), day("2027-09-30")});
    const auto book = after(bare, season);
    const auto refused = keepOrder(book, words, newId);
    ASSERT_FALSE(refused.ok());
    EXPECT_NE(refused.error().text.find("2035-06-01 is in no season"), std::string::npos);
    words.order.due = day("2027-10-20");  // with its last queens
    EXPECT_TRUE(keepOrder(book, words, newId).ok());
}

TEST_F(OrderVerbs, QueensBoughtInAreKeptChangedAndDeleted) {
    QueenLot lot{Id<QueenLot>{newId()}, 1, day("2027-05-01"), 5, {}, true, {}};
    now = after(now, keepBought(now, lot, "Amber", newId));
    lot.count = 6;
    now = after(now, keepBought(now, lot, "Amber", newId));
    ASSERT_EQ(now.all<QueenLot>().size(), 1U);
    EXPECT_EQ((*now.all<QueenLot>().begin())->count, 6);
    EXPECT_EQ(now.all<Line>().size(), 1U);
    lot.count = 0;
    EXPECT_EQ(refusal(keepBought(now, lot, "", newId)), "queen_lot.count: 1 to 9999 is needed");
    now = after(now, deleteBought(now, lot.id));
    EXPECT_TRUE(now.all<QueenLot>().empty());
}

TEST_F(OrderVerbs, AnOddBatchIsLeftOutForAReason) {
    EXPECT_EQ(refusal(leaveOut(now, first, "  ", Id<LeftOut>{newId()})),
              "batch 1: why it is left out is needed");
    now = after(now, leaveOut(now, first, "chilled", Id<LeftOut>{newId()}));
    now = after(now, leaveOut(now, first, "chilled on the road", Id<LeftOut>{newId()}));
    ASSERT_EQ(now.all<LeftOut>().size(), 1U);
    EXPECT_EQ((*now.all<LeftOut>().begin())->reason, "chilled on the road");
    now = after(now, takeIn(now, first));
    EXPECT_TRUE(now.all<LeftOut>().empty());
    EXPECT_TRUE(takeIn(now, first).value().isEmpty());
}

}  // namespace
}  // namespace tenthday::test
