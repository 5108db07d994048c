/// Caging and delivering stand among the season's tasks.
#include <gtest/gtest.h>

#include <algorithm>

#include "support/season_maker.h"
#include "support/with_rows.h"
#include "tasks/tick.h"
#include "tasks/week.h"

namespace tenthday::test {
namespace {

Snapshot season(const Order& order, OrderStanding standing = OrderStanding::Open,
                const std::string& shipDays = "1234") {
    return with(SeasonMaker("2027-06-01").snapshot(), order,
                OrderTerms{id<OrderTerms>(1), 1, order.id, standing, OrderPurpose::None, shipDays});
}
std::string tasksIn(const Snapshot& snapshot) {
    std::string all;
    for (const auto& task : tasksOf(*freshOutlook(snapshot)))
        all += toText(task.day) + " " + std::string(token(task.key.rule)) + " " +
               task.subjectLabel + " " + std::to_string(task.count) + " by " +
               toText(task.window.last) + (task.done ? " done" : "") + "\n";
    return all;
}
Delivery delivery(int n, int count, int failed = 0) {
    return {id<Delivery>(static_cast<std::uint64_t>(n)),
            1,
            id<Order>(1),
            day("2027-06-01"),
            count,
            {},
            {},
            failed,
            failed > 0 ? DeliveryLoss::DeadOnArrival : DeliveryLoss::None,
            {}};
}

// 27 June 2027 is a Sunday: the last day to go of these weekdays is Thursday.
TEST(OrderTasks, AreCagingTheDayBeforeAndDeliveringOnTheLastDayToGo) {
    EXPECT_EQ(tasksIn(season(orderFor(1, 5, "2027-06-27"))),
              "2027-06-23 cage_queens Order 1 5 by 2027-06-27\n"
              "2027-06-24 deliver Order 1 5 by 2027-06-27\n");
}

TEST(OrderTasks, CellsAndQueensForOneselfAreNotCaged) {
    for (const auto kind : {OrderKind::RipeCell, OrderKind::Virgin, OrderKind::Own})
        EXPECT_EQ(tasksIn(season(orderFor(1, 5, "2027-06-24", kind))),
                  "2027-06-24 deliver Order 1 5 by 2027-06-24\n");
}

TEST(OrderTasks, WaitingAndCancelledOrdersHaveNone) {
    for (const auto standing : {OrderStanding::Waiting, OrderStanding::Cancelled})
        EXPECT_EQ(tasksIn(season(orderFor(1, 5, "2027-06-27"), standing)), "");
}

TEST(OrderTasks, CountWhatIsOwedAndAreDoneOnceItIsDelivered) {
    const auto open = season(orderFor(1, 5, "2027-06-27"));
    EXPECT_EQ(tasksIn(with(open, delivery(1, 3))),
              "2027-06-23 cage_queens Order 1 2 by 2027-06-27\n"
              "2027-06-24 deliver Order 1 2 by 2027-06-27\n");
    EXPECT_EQ(tasksIn(with(open, delivery(1, 3), delivery(2, 2))),
              "2027-06-23 cage_queens Order 1 5 by 2027-06-27 done\n"
              "2027-06-24 deliver Order 1 5 by 2027-06-27 done\n");
    EXPECT_EQ(tasksIn(with(open, delivery(1, 3, 1), delivery(2, 2))),
              "2027-06-23 cage_queens Order 1 1 by 2027-06-27\n"
              "2027-06-24 deliver Order 1 1 by 2027-06-27\n");
}

TEST(OrderTasks, ATickSurvivesWhenTheDayMoves) {
    const auto order = orderFor(1, 5, "2027-06-27");
    auto snapshot = season(order);
    const auto outlook = freshOutlook(snapshot);
    const auto tasks = tasksOf(*outlook);
    const auto ticked = tick(snapshot, tasks.at(0), day("2027-06-22"), id<TaskDone>(1));
    snapshot = applied(snapshot, ticked).value();
    ChangeSet moved;
    auto later = order;
    later.due = day("2027-07-04");
    moved.edit(snapshot.find(order.id), later);
    snapshot = applied(snapshot, moved).value();
    EXPECT_EQ(tasksIn(snapshot),
              "2027-06-30 cage_queens Order 1 5 by 2027-07-04 done\n"
              "2027-07-01 deliver Order 1 5 by 2027-07-04\n");
}

TEST(OrderTasks, WhatWasNotDoneYesterdayIsForToday) {
    auto snapshot = season(orderFor(1, 5, "2027-06-27"));
    snapshot.setToday(day("2027-06-26"));
    EXPECT_EQ(tasksIn(snapshot),
              "2027-06-26 cage_queens Order 1 5 by 2027-06-27\n"
              "2027-06-26 deliver Order 1 5 by 2027-06-27\n");
}

/// An order past its due day is one late row; none when it is delivered, ticked, waits or is
/// cancelled.
TEST(OrderTasks, AnOrderPastItsDueDayIsOneLateRowUntilItIsClosed) {
    const auto lateRows = [](Snapshot snapshot) {
        snapshot.setToday(day("2027-07-20"));
        std::string rows;
        for (const auto& late : stillOpen(tasksOf(*freshOutlook(snapshot)), snapshot.today()))
            rows += std::string(token(late.task.key.rule)) + " " + std::to_string(late.task.count) +
                    "; ";
        return rows;
    };
    const auto open = season(orderFor(1, 5, "2027-06-27"));
    EXPECT_EQ(lateRows(open), "deliver 5; ");
    EXPECT_EQ(lateRows(with(open, delivery(1, 3))), "deliver 2; ");
    EXPECT_EQ(lateRows(with(open, delivery(1, 5, 1))), "deliver 1; ");
    EXPECT_EQ(lateRows(with(open, delivery(1, 3), delivery(2, 2))), "");
    for (const auto standing : {OrderStanding::Waiting, OrderStanding::Cancelled})
        EXPECT_EQ(lateRows(season(orderFor(1, 5, "2027-06-27"), standing)), "");
    auto later = open;
    later.setToday(day("2027-07-20"));
    const auto tasks = tasksOf(*freshOutlook(later));
    const auto ticked = tick(later, tasks.at(0), day("2027-07-20"), id<TaskDone>(1));
    EXPECT_EQ(lateRows(applied(later, ticked).value()), "");
}

}  // namespace
}  // namespace tenthday::test
