/// Orders for ripe cells and virgins.
#include "supply/cell_orders.h"

#include <gtest/gtest.h>

#include "support/stock_maker.h"

namespace tenthday::test {
namespace {

class CellOrdersOf : public ::testing::Test {
protected:
    /// So many ripe cells of batch n on a day; the virgins come out two days later.
    RaisedPart& cells(int n, std::string_view on, CountSpread ripe) {
        auto& timeline = timelines_[parts_.size()];
        timeline.hold.transferDay = day(on);
        EventDates out;
        out.event = Event::Emergence;
        out.earliest = out.likely = out.latest = momentOf(day(on) + Days{2});
        timeline.events = {out};
        RaisedPart part;
        part.batch = id<Batch>(static_cast<std::uint64_t>(n));
        part.timeline = &timeline;
        part.ripe = std::move(ripe);
        part.room = 1000;
        parts_.push_back(std::move(part));
        return parts_.back();
    }
    [[nodiscard]] CellOrders filledBy(const std::vector<Order>& orders) const {
        std::vector<Ptr<Order>> shared;
        for (const auto& order : orders) shared.push_back(test::shared(order));
        return cellOrders(shared, parts_);
    }

    std::vector<RaisedPart> parts_;

private:
    std::array<BatchTimeline, 8> timelines_;
};

Order cellsFor(int n, int count, std::string_view due) {
    return orderFor(n, count, due, OrderKind::RipeCell);
}
Order virginsFor(int n, int count, std::string_view due) {
    return orderFor(n, count, due, OrderKind::Virgin);
}

TEST_F(CellOrdersOf, ARipeCellServesOnItsDayAlone) {
    cells(1, "2027-05-20", CountSpread(12));
    EXPECT_EQ(filledBy({cellsFor(1, 5, "2027-05-20")}).orders[0].state, OrderState::Met);
    EXPECT_EQ(filledBy({cellsFor(1, 5, "2027-05-21")}).orders[0].lacking, 5);
    EXPECT_EQ(filledBy({cellsFor(1, 5, "2027-05-19")}).orders[0].lacking, 5);
    auto week = cellsFor(1, 5, "2027-05-24");
    week.notBefore = day("2027-05-18");
    EXPECT_EQ(filledBy({week}).orders[0].state, OrderState::Met);
}

TEST_F(CellOrdersOf, OrdersOfADayShareItsCells) {
    cells(1, "2027-05-20", CountSpread(12));
    const auto made = filledBy({cellsFor(1, 8, "2027-05-20"), cellsFor(2, 6, "2027-05-20")});
    EXPECT_EQ(made.orders[0].state, OrderState::Met);
    EXPECT_EQ(made.orders[1].lacking, 2);
    EXPECT_EQ(made.orders[0].fills[0].count + made.orders[1].fills[0].count, 12);
    EXPECT_GE(made.taken[0].cells, 12);
}

TEST_F(CellOrdersOf, OnlyAnOrderInPartsIsGatheredOverDays) {
    cells(1, "2027-05-20", CountSpread(6));
    cells(2, "2027-05-24", CountSpread(7));
    auto order = cellsFor(1, 10, "2027-05-26");
    order.notBefore = day("2027-05-18");
    const auto together = filledBy({order}).orders[0];
    EXPECT_EQ(together.lacking, 3);
    ASSERT_EQ(together.fills.size(), 1U);
    EXPECT_EQ(together.fills[0].batch, id<Batch>(2));
    order.partOk = true;
    const auto inParts = filledBy({order}).orders[0];
    EXPECT_EQ(inParts.state, OrderState::Met);
    EXPECT_EQ(inParts.fills.size(), 2U);
}

TEST_F(CellOrdersOf, BatchesOfADayAddTheirChances) {
    const CountSpread coin(0, {.5, 0, 0, 0, .5});  // none, or four
    cells(1, "2027-05-20", coin);
    cells(2, "2027-05-20", coin);
    const auto made = filledBy({cellsFor(1, 4, "2027-05-20"), cellsFor(2, 4, "2027-05-20")});
    EXPECT_NEAR(made.orders[0].chance, .75, 1e-12);
    EXPECT_EQ(made.orders[0].state, OrderState::AtRisk);
    EXPECT_NEAR(made.orders[1].chance, .25, 1e-12);
    EXPECT_EQ(made.orders[1].state, OrderState::Short);
}

TEST_F(CellOrdersOf, CellsSoldAreMissingAmongVirginsAndQueens) {
    auto& part = cells(1, "2027-05-20", CountSpread(12));
    part.rates.values.fill({1, 0});
    const auto made = filledBy({cellsFor(1, 5, "2027-05-20"), virginsFor(2, 8, "2027-05-24")});
    EXPECT_EQ(made.orders[1].lacking, 1);
    EXPECT_EQ(matedOf(part, {5, 0}), CountSpread(7));
    EXPECT_EQ(matedOf(part, {5, 4}), CountSpread(3));
    EXPECT_EQ(matedOf(part, made.taken[0]), CountSpread(0));
}

TEST_F(CellOrdersOf, VirginsServeForAWeek) {
    auto& part = cells(1, "2027-05-20", CountSpread(12));
    part.rates.values.fill({1, 0});
    EXPECT_EQ(filledBy({virginsFor(1, 5, "2027-05-21")}).orders[0].lacking, 5);
    EXPECT_EQ(filledBy({virginsFor(1, 5, "2027-05-22")}).orders[0].lacking, 0);
    EXPECT_EQ(filledBy({virginsFor(1, 5, "2027-05-29")}).orders[0].lacking, 0);
    EXPECT_EQ(filledBy({virginsFor(1, 5, "2027-05-30")}).orders[0].lacking, 5);
}

TEST_F(CellOrdersOf, PlansForCellsCountBeforeOrders) {
    auto& part = cells(1, "2027-05-20", CountSpread(12));
    part.rates.values.fill({1, 0});
    part.elsewhere = {3, 2, 1};  // sold, caged, given away
    EXPECT_EQ(filledBy({cellsFor(1, 10, "2027-05-20")}).orders[0].lacking, 1);
    EXPECT_EQ(matedOf(part, {}), CountSpread(6));
    EXPECT_EQ(matedOf(part, {3, 2}), CountSpread(6));  // just those
    EXPECT_EQ(matedOf(part, {4, 3}), CountSpread(4));
    part.room = 5;
    EXPECT_EQ(matedOf(part, {}), CountSpread(5));
    part.isSettled = true;
    EXPECT_EQ(filledBy({cellsFor(1, 10, "2027-05-20")}).orders[0].lacking, 7);
}

TEST_F(CellOrdersOf, OpenCellsAreNoRipeOnes) {
    cells(1, "2027-05-13", CountSpread(12)).given = Given::Open;
    EXPECT_EQ(filledBy({cellsFor(1, 1, "2027-05-13")}).orders[0].lacking, 1);
}

TEST_F(CellOrdersOf, TakeTheirLineOnly) {
    cells(1, "2027-05-20", CountSpread(4)).line = id<Line>(3);
    cells(2, "2027-05-20", CountSpread(9));
    auto order = cellsFor(1, 6, "2027-05-20");
    order.line = id<Line>(3);
    EXPECT_EQ(filledBy({order}).orders[0].lacking, 2);
}

}  // namespace
}  // namespace tenthday::test
