#include <gtest/gtest.h>

#include <QLocale>
#include <QSignalSpy>
#include <QTest>

#include "app/chart/layout_text.h"
#include "chart/card_for.h"
#include "chart/chart_orders.h"
#include "chart/hit_test.h"
#include "chart/season_chart.h"
#include "screen_text/chart_text.h"
#include "screen_text/order_text.h"
#include "support/days.h"
#include "support/sample_orders.h"
#include "support/sample_outlook.h"
#include "support/season_maker.h"
#include "support/with_rows.h"

namespace tenthday::test {
namespace {

constexpr int kPatience = 10'000;  // ms

class QueensLaneTest : public ::testing::Test {
protected:
    QueensLaneTest() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        options.size = {1720, 930};
        options.orders = sampleOrders();
    }
    Layout lay(DayWindow days) const {
        const auto span = plotSpan(*outlook, options, ruler);
        return layOut(*outlook, DayAxis(days, span.left, span.width), options, ruler);
    }
    Layout lay() const { return lay({day("2027-06-10"), day("2027-07-31")}); }
    static bool has(const Layout& layout, const std::string& text) {
        return std::any_of(layout.texts.begin(), layout.texts.end(),
                           [&](const TextRun& run) { return run.text.toStdString() == text; });
    }
    /// A number in soft ink between the lane's name and that of the lane below.
    static bool onTheScale(const Layout& layout, const QString& number) {
        const auto topOf = [&](const QString& name) {
            for (const auto& item : layout.items)
                if (item.shape == Shape::Text && item.layer == Layer::Names &&
                    layout.texts[static_cast<std::size_t>(item.detail)].text == name)
                    return item.rect.top();
            ADD_FAILURE() << name.toStdString();
            return 0.0;
        };
        const qreal top = topOf(order_text::queensLane());
        const qreal bottom = topOf(order_text::promiseLane());
        return std::any_of(layout.items.begin(), layout.items.end(), [&](const Item& item) {
            return item.shape == Shape::Text && item.role == Role::InkSoft &&
                   layout.texts[static_cast<std::size_t>(item.detail)].text == number &&
                   item.rect.top() >= top && item.rect.bottom() <= bottom;
        });
    }
    /// Items that belong to the flag of an order.
    static std::vector<Item> itemsOf(const Layout& layout, int order) {
        std::vector<Item> items;
        for (const auto& item : layout.items)
            if (item.target >= 0) {
                const auto& key = layout.targets[static_cast<std::size_t>(item.target)].key;
                if (key.hit == Hit::OrderFlag && key.index == order) items.push_back(item);
            }
        return items;
    }
    /// Texts of flags that several orders share.
    static std::vector<std::string> joinedFlags(const Layout& layout) {
        std::vector<std::string> texts;
        for (const auto& run : layout.texts)
            if (run.text.contains(QStringLiteral(" orders, ")) ||
                run.text.contains(QStringLiteral(" more order")))
                texts.push_back(run.text.toStdString());
        return texts;
    }
    std::string card(const TargetKey& key) const {
        return chart_cards::asPlainText(cardFor(*outlook, key, options.orders.get())).toStdString();
    }

    OutlookPtr outlook = sampleOutlook();
    ChartOptions options;
    FixedRuler ruler;
};

TEST_F(QueensLaneTest, OrdersSayInWordsHowTheyStand) {
    const auto layout = lay();
    for (const auto* text : {"24 Splits", "met", "12 cells K-09", "30 K-03", "71 % sure", "8 K-07",
                             "delivered", "60 Requeen", "21 short"})
        EXPECT_TRUE(has(layout, text)) << text;
}

TEST_F(QueensLaneTest, EachStateHasAShapeOfItsOwn) {
    const auto layout = lay();
    const auto shapes = [&](int order) {
        std::set<std::pair<Shape, Role>> found;
        for (const auto& item : itemsOf(layout, order))
            if (item.shape != Shape::Text) found.insert({item.shape, item.role});
        return found;
    };
    EXPECT_EQ(shapes(0).count({Shape::Fill, Role::JudgedGood}), 1U);
    EXPECT_EQ(shapes(2).count({Shape::Fill, Role::JudgedGood}), 0U);
    EXPECT_EQ(shapes(4).count({Shape::Path, Role::DangerGround}), 1U) << "cut, and filled";
}

TEST_F(QueensLaneTest, AMastStandsAtTheDueDayAndAMarkAtTheDayItGoes) {
    const auto layout = lay();
    bool mast = false;
    bool mark = false;
    for (const auto& item : itemsOf(layout, 2)) {  // due on 2 July, goes on 30 June
        if (item.layer != Layer::Marks) continue;
        const Day on = layout.axis.dayAt(item.rect.center().x());
        mast = mast || (item.shape == Shape::Fill && on == day("2027-07-02"));
        mark = mark || (item.shape == Shape::Path && on == day("2027-06-30"));
    }
    EXPECT_TRUE(mast);
    EXPECT_TRUE(mark);
}

TEST_F(QueensLaneTest, WithoutRoomTheMastCanStillBeAsked) {
    auto crowd = std::make_shared<SeasonOrders>(*options.orders);
    for (int i = 0; i < 12; ++i) crowd->orders.push_back(crowd->orders[2]);
    options.orders = crowd;
    options.size = {700, 620};
    const auto layout = lay();
    for (int i = 0; i < 17; ++i) {
        const auto found =
            std::count_if(layout.targets.begin(), layout.targets.end(), [&](const Target& target) {
                return target.key.hit == Hit::OrderFlag && target.key.index == i;
            });
        EXPECT_GE(found, 1) << i;
    }
}

TEST_F(QueensLaneTest, OrdersDueCloseTogetherShareAFlag) {
    auto orders = std::make_shared<SeasonOrders>(*sampleOrders());
    orders->orders.resize(1);
    for (std::uint64_t n = 2; n <= 5; ++n) {
        auto row = *orders->orders[0].order;
        row.id = id<Order>(n);
        row.label = "K-" + std::to_string(n);
        row.due += Days{static_cast<int>(n) / 3};
        orders->orders.push_back(orders->orders[0]);
        orders->orders.back().order = std::make_shared<const Order>(row);
    }
    orders->orders[3].state = OrderState::Short;
    orders->orders[3].lacking = 4;
    options.orders = orders;
    const auto layout = lay({day("2027-04-19"), day("2027-08-29")});
    // The one that is not met is named first, with what it lacks.
    EXPECT_TRUE(std::any_of(layout.texts.begin(), layout.texts.end(), [](const TextRun& run) {
        return run.text.contains(QStringLiteral("K-4 4 short, "));
    }));
    // Every order can still be asked: the worst by the flag, each other by its mast.
    for (int order = 0; order < 5; ++order) EXPECT_FALSE(itemsOf(layout, order).empty()) << order;
    // At the flag's place the card tells of all that share it, the worst first.
    const auto* worst = findTarget(
        layout, {.hit = Hit::OrderFlag, .day = orders->orders[3].order->due, .index = 3});
    ASSERT_NE(worst, nullptr);
    const auto* front = targetAt(layout, worst->rect.bottomRight() - QPointF(1, 1));
    ASSERT_NE(front, nullptr);
    EXPECT_EQ(front->key.index, 3);
    // It hangs on the mast of the one it names, not of the first one due.
    const qreal mast = layout.axis.middleOf(orders->orders[3].order->due);
    EXPECT_LT(std::min(std::abs(front->rect.left() - mast), std::abs(front->rect.right() - mast)),
              2);
    const auto told =
        chart_cards::asPlainText(cardFor(*outlook, layout, *front, orders.get())).toStdString();
    EXPECT_NE(told.find("4 short"), std::string::npos) << told;
    int others = 0;
    for (const auto& target : layout.targets)
        if (target.key.hit == Hit::OrderFlag && target.rect == front->rect) {
            const auto& is = *orders->orders[static_cast<std::size_t>(target.key.index)].order;
            EXPECT_NE(told.find("for " + is.label), std::string::npos) << told;
            ++others;
        }
    EXPECT_GE(others, 2) << told;
}

TEST_F(QueensLaneTest, ASharedFlagWithoutRoomForANameCountsWhatIsNotMet) {
    auto orders = std::make_shared<SeasonOrders>(*sampleOrders());
    orders->orders.resize(1);
    for (std::uint64_t n = 1; n <= 6; ++n) {
        auto row = *orders->orders[0].order;
        row.id = id<Order>(n + 1);
        row.label = n == 3 ? "The upper valley, splits and requeening" : "K-" + std::to_string(n);
        row.due = day("2027-06-20");
        orders->orders.push_back(orders->orders[0]);
        orders->orders.back().order = std::make_shared<const Order>(row);
    }
    orders->orders.erase(orders->orders.begin());
    for (auto& order : orders->orders) order.state = OrderState::Met;
    orders->orders[2].state = OrderState::Short;
    orders->orders[2].lacking = 4;
    options.orders = orders;
    options.size = {430, 620};
    const DayWindow week{day("2027-06-18"), day("2027-06-24")};
    const auto one = joinedFlags(lay(week));
    ASSERT_EQ(one.size(), 1U);
    EXPECT_TRUE(one[0].ends_with(" orders, 1 not met")) << one[0];
    // Two that are not met are never named as if they were one.
    orders->orders[0].state = OrderState::Short;
    orders->orders[0].lacking = 1;
    const auto two = joinedFlags(lay(week));
    ASSERT_EQ(two.size(), 1U);
    EXPECT_TRUE(two[0].ends_with(" not met") && two[0].find("K-") == std::string::npos) << two[0];
}

TEST_F(QueensLaneTest, TheScaleHasItsNumbersHoweverLowTheLane) {
    for (const std::int32_t times : {1, 100}) {
        auto orders = std::make_shared<SeasonOrders>(*sampleOrders());
        for (auto& queens : orders->inHand)
            for (auto* count : {&queens.low, &queens.likely, &queens.high}) *count *= times;
        orders->orders.clear();
        options.orders = orders;
        const QString wanted = chart_text::number(50 * times);
        for (const qreal height : {420.0, 620.0, 930.0, 1400.0}) {
            options.size.setHeight(height);
            const auto layout = lay();
            EXPECT_TRUE(onTheScale(layout, wanted)) << height << " px, " << wanted.toStdString();
        }
    }
}

TEST_F(QueensLaneTest, LongNamesAreCutAndNothingLeavesThePlot) {
    auto orders = std::make_shared<SeasonOrders>(*options.orders);
    auto row = *orders->orders[4].order;
    row.label = "The association of breeders of the upper valley, spring splits and requeening";
    row.due = day("2027-07-31");
    orders->orders[4].order = std::make_shared<const Order>(row);
    options.orders = orders;
    const auto layout = lay();
    for (const auto& item : itemsOf(layout, 4)) {
        if (item.layer != Layer::Words) continue;
        EXPECT_GE(item.rect.left(), layout.plot.left());
        EXPECT_LE(item.rect.right(), layout.plot.right() + 1);
    }
}

TEST_F(QueensLaneTest, TheCurveIsAsHighAsTheQueens) {
    const auto layout = lay();
    QRectF before;
    QRectF after;
    for (const auto& item : layout.items) {
        if (item.role != Role::Laying || item.layer != Layer::Body) continue;
        if (item.target >= 0) continue;  // a yard's nucs
        const Day on = layout.axis.dayAt(item.rect.center().x());
        if (on == day("2027-06-17")) before = item.rect;
        if (on == day("2027-06-18")) after = item.rect;
    }
    ASSERT_FALSE(before.isNull());
    EXPECT_LT(before.top(), after.top() + 1) << "24 go out on the 18th";
}

TEST_F(QueensLaneTest, WhatCanBePromisedStandsInItsWeek) {
    const auto layout = lay();
    const auto* week = findTarget(layout, {.hit = Hit::PromiseWeek, .day = day("2027-07-19")});
    ASSERT_NE(week, nullptr);
    EXPECT_EQ(targetAt(layout, week->rect.center()), week);
    bool number = false;
    for (const auto& item : layout.items)
        number = number ||
                 (item.shape == Shape::Text && week->rect.contains(item.rect) &&
                  layout.texts[static_cast<std::size_t>(item.detail)].text == QStringLiteral("13"));
    EXPECT_TRUE(number);
}

TEST_F(QueensLaneTest, CardsTellHowEachNumberCame) {
    const auto order = card({.hit = Hit::OrderFlag, .day = day("2027-07-02"), .index = 2});
    for (const auto* part : {"30 mated queens for K-03", "due", "Fri 2 Jul", "goes Wed 30 Jun",
                             "71 %", "short by", "from batch 16", "21.3"})
        EXPECT_NE(order.find(part), std::string::npos) << part << " in\n" << order;
    const auto day17 = card({.hit = Hit::QueensDay, .day = day("2027-06-17")});
    for (const auto* part : {"Queens in hand, Thu 17 Jun", "21", "16 to 25"})
        EXPECT_NE(day17.find(part), std::string::npos) << part << " in\n" << day17;
    const auto week = card({.hit = Hit::PromiseWeek, .day = day("2027-07-19")});
    for (const auto* part : {"until Sun 25 Jul", "13", "24"})
        EXPECT_NE(week.find(part), std::string::npos) << part << " in\n" << week;
}

TEST_F(QueensLaneTest, BeforeAnythingIsReckonedItSaysSo) {
    options.orders = nullptr;
    EXPECT_TRUE(has(lay(), "being reckoned"));
    options.orders = sampleOrders();
    options.ordersAreOld = true;
    EXPECT_TRUE(has(lay(), "in hand, about"));
}

OutlookPtr outlookWithOrder(int count) {
    SeasonMaker maker("2027-05-01");
    maker.yard("Mill").builder("B1", "Mill").batch("1", "2027-05-10", 14, 40, "B1");
    return freshOutlook(with(maker.snapshot(), orderFor(1, count, "2027-07-20")));
}

TEST(ChartOrdersTest, ReckonsBesideAndKeepsTheLastUntilThen) {
    ChartOrders orders;
    QSignalSpy reckoned(&orders, &ChartOrders::reckoned);
    const auto saved = outlookWithOrder(5);
    orders.show(saved, false);
    EXPECT_EQ(orders.orders(), nullptr);
    EXPECT_TRUE(orders.areOld());
    ASSERT_TRUE(reckoned.wait(kPatience));
    const auto first = orders.orders();
    ASSERT_NE(first, nullptr);
    EXPECT_FALSE(orders.areOld());
    EXPECT_EQ(first->orders.at(0).order->count, 5);

    orders.show(outlookWithOrder(6), true);
    orders.show(outlookWithOrder(7), true);  // a drag goes on
    EXPECT_EQ(orders.orders(), first);
    EXPECT_TRUE(orders.areOld());
    ASSERT_TRUE(reckoned.wait(kPatience));
    EXPECT_EQ(orders.orders()->orders.at(0).order->count, 7);
    EXPECT_EQ(reckoned.size(), 2);

    orders.show(saved, false);  // the move is dropped
    EXPECT_EQ(orders.orders(), first);
    EXPECT_FALSE(orders.areOld());
}

TEST(ChartOrdersTest, TheChartShowsThemAndAFlagLeadsToItsOrder) {
    SeasonChart chart;
    chart.resize(1366, 768);
    chart.setOutlook(outlookWithOrder(5));
    chart.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&chart));
    ASSERT_TRUE(QTest::qWaitFor([&] { return chart.orders() != nullptr; }, kPatience));
    std::optional<Id<Order>> wished;
    QObject::connect(&chart, &SeasonChart::orderRequested, [&](Id<Order> id) { wished = id; });
    const auto* flag = findTarget(chart.layoutNow(),
                                  {.hit = Hit::OrderFlag, .day = day("2027-07-20"), .index = 0});
    ASSERT_NE(flag, nullptr);
    QTest::mouseDClick(&chart, Qt::LeftButton, {}, flag->rect.center().toPoint());
    EXPECT_EQ(wished, id<Order>(1));
}

}  // namespace
}  // namespace tenthday::test
