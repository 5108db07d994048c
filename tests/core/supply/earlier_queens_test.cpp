/// Queens of an earlier season that are still in hand: they fill orders, and are ready to promise.
#include "supply/earlier_queens.h"

#include <gtest/gtest.h>

#include "outlook/supply_of.h"
#include "supply/promise.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

/// Batch 9 of 2027 with queens 1 to 4, numbers 27-001 ...: 1 left in her nuc N1 on 10 August, 2 and
/// 3 in the bank since their catch, 4 sold in autumn. Read with the season 2028, on 2 May.
class EarlierQueensTest : public ::testing::Test {
protected:
    EarlierQueensTest() {
        SeasonMaker maker("2027-08-20");
        maker.yard("Mill", 1).yard("Home", 2).builder("Box", "Home");
        maker.box("N1", "Mill", "7", "2027-04-01").stock("N1/-", "2027-06-18");
        maker.batch("9", "2027-06-11", 15, 12, "Box").place("9", "N1/-", "2027-06-21", true);
        batch_ = maker.batchId("9");
        Line hill{id<Line>(5), 1, "Hill"};
        Season next{id<Season>(2028), 1, "2028", day("2028-01-01"), day("2028-12-31")};
        book_ = with(maker.snapshot(), hill, next);
        for (std::uint64_t n = 1; n <= 4; ++n) {
            Queen queen;
            queen.id = id<Queen>(n);
            queen.label = "27-00" + std::to_string(n);
            queen.line = hill.id;
            CaughtQueen raised;
            raised.id = id<CaughtQueen>(n);
            raised.queen = queen.id;
            raised.batch = batch_;
            if (n == 1) raised.side = maker.sideId("N1/-");
            raised.day = day("2027-08-10");
            book_ = with(book_, queen, raised);
            stay(n, n == 1 ? QueenPlace::Nuc : QueenPlace::Bank, "2027-08-10");
        }
        stay(4, QueenPlace::Sold, "2027-09-01");
    }
    void stay(std::uint64_t queen, QueenPlace place, const char* from) {
        QueenStay row;
        row.id = id<QueenStay>(++next_);
        row.queen = id<Queen>(queen);
        row.place = place;
        row.from = day(from);
        book_ = with(book_, row);
    }
    void order(int n, int count, const char* due, OrderKind kind = OrderKind::Mated) {
        book_ = with(book_, orderFor(n, count, due, kind));
    }
    void deliver(int order, const char* on, int count, std::optional<Id<Batch>> batch = {}) {
        Delivery row;
        row.id = id<Delivery>(++next_);
        row.order = id<Order>(static_cast<std::uint64_t>(order));
        row.day = day(on);
        row.count = count;
        row.fromBatch = batch;
        book_ = with(book_, row);
    }
    /// As the book is read with the next season.
    [[nodiscard]] Snapshot inSpring() const {
        auto spring = book_;
        spring.setAll(Table<Batch>());
        spring.setAll(Table<BatchBar>());
        spring.setAll(Table<BatchLoad>());
        spring.setAll(Table<Placement>());
        spring.setAll(Table<Outcome>());
        spring.setSeason(id<Season>(2028));
        spring.setToday(day("2028-05-02"));
        return spring;
    }
    [[nodiscard]] int inHand(const char* on = "2028-05-02") const {
        int queens = 0;
        for (const auto& part : earlierQueens(inSpring())) queens += part.knownOn(day(on)).certain;
        return queens;
    }
    [[nodiscard]] OrderOutlook standing(int n) const {
        const auto outlook = freshOutlook(inSpring());
        auto supply = supplyOf(*outlook);
        for (const auto& order : supply.orders())
            if (order.order->id == id<Order>(static_cast<std::uint64_t>(n))) return order;
        throw std::invalid_argument("no such order");
    }

    Snapshot book_;
    Id<Batch> batch_;
    std::uint64_t next_ = 100;
};

TEST_F(EarlierQueensTest, ThoseInNucsAndBanksFillAnOrder) {
    EXPECT_EQ(inHand(), 3) << "the fourth is sold";
    EXPECT_EQ(inHand("2028-05-01"), 2) << "the one in her nuc can be caught from today on";
    order(1, 3, "2028-05-20");
    const auto all = standing(1);
    EXPECT_EQ(all.state, OrderState::Met);
    EXPECT_EQ(all.chance, 1);
    ASSERT_EQ(all.fills.size(), 1U);
    EXPECT_EQ(all.fills[0].batch, batch_);
    EXPECT_EQ(all.fills[0].count, 3);
    order(2, 1, "2028-05-21");
    EXPECT_EQ(standing(2).state, OrderState::Short);
}

TEST_F(EarlierQueensTest, OneThatWasLeftInHerNucIsProvenAndOthersAreNot) {
    order(1, 1, "2028-05-20", OrderKind::Proven);
    EXPECT_EQ(standing(1).state, OrderState::Met);
    order(2, 1, "2028-05-21", OrderKind::Proven);
    EXPECT_EQ(standing(2).state, OrderState::Short);
    stay(1, QueenPlace::Bank, "2028-05-01");
    EXPECT_EQ(standing(1).state, OrderState::Met) << "caught in spring";
}

TEST_F(EarlierQueensTest, TheyAreReadyToPromise) {
    const auto outlook = freshOutlook(inSpring());
    auto supply = supplyOf(*outlook);
    for (const auto& week : promiseByWeek(supply, kPromiseLevel)) {
        const bool isOver = daysOf(week.week).last < day("2028-05-02");
        EXPECT_EQ(week.ready, isOver ? 2 : 3) << toText(week.week);
        EXPECT_EQ(week.canPromise, isOver ? 0 : 3) << toText(week.week);
    }
}

TEST_F(EarlierQueensTest, LostOnesAndBreederQueensFillNone) {
    stay(1, QueenPlace::Lost, "2028-03-01");
    EXPECT_EQ(inHand(), 2);
    const auto queen = book_.find(id<Queen>(2));
    auto breeder = *queen;
    breeder.breederFrom = day("2028-04-01");
    ChangeSet changes;
    changes.edit(queen, breeder);
    book_ = applied(book_, changes).value();
    EXPECT_EQ(inHand(), 1);
}

TEST_F(EarlierQueensTest, WhatWasDeliveredOfTheirBatchIsGoneWhetherTheirStaysSayItOrNot) {
    order(1, 5, "2027-08-30");
    deliver(1, "2027-09-01", 1, batch_);
    EXPECT_EQ(inHand(), 3) << "that was the fourth";
    deliver(1, "2027-09-02", 1, batch_);
    EXPECT_EQ(inHand(), 2);
    deliver(1, "2027-09-03", 1);
    EXPECT_EQ(inHand(), 1) << "of some batch: a queen nobody said anything of since her catch";
}

TEST_F(EarlierQueensTest, OneDeliveredThisSeasonLeavesOnceOnly) {
    order(1, 1, "2028-05-01");
    order(2, 2, "2028-05-20");
    stay(2, QueenPlace::Bank, "2028-04-20");
    stay(3, QueenPlace::Bank, "2028-04-20");
    deliver(1, "2028-05-01", 1);
    EXPECT_EQ(standing(2).state, OrderState::Met) << "two of three are left";
    stay(2, QueenPlace::Sold, "2028-05-01");
    EXPECT_EQ(standing(2).state, OrderState::Met) << "that was she";
    stay(3, QueenPlace::Sold, "2028-05-01");
    EXPECT_EQ(standing(2).state, OrderState::Short) << "another one, without a delivery";
}

TEST_F(EarlierQueensTest, OnesInOwnColoniesAnswerForOwnNeedsOnly) {
    order(1, 5, "2027-08-30");
    deliver(1, "2027-09-03", 1);
    EXPECT_EQ(inHand(), 3) << "that was the fourth, who was sold";
    stay(2, QueenPlace::Colony, "2027-09-04");
    EXPECT_EQ(inHand(), 2);
    deliver(1, "2027-09-05", 1);
    EXPECT_EQ(inHand(), 1) << "sold from the bank: not the one in the colony";
    order(2, 1, "2027-09-10", OrderKind::Own);
    deliver(2, "2027-09-04", 1);
    EXPECT_EQ(inHand(), 1) << "that was the one in the colony";
}

TEST_F(EarlierQueensTest, OnePutIntoAColonyThisSeasonIsGoneWhateverIsSold) {
    order(1, 1, "2028-05-01");
    order(2, 2, "2028-05-20");
    stay(2, QueenPlace::Colony, "2028-04-20");
    EXPECT_EQ(inHand(), 2);
    deliver(1, "2028-05-01", 1);
    EXPECT_EQ(standing(2).state, OrderState::Short) << "one of three is left";
}

}  // namespace
}  // namespace tenthday::test
