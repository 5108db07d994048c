#include <gtest/gtest.h>

#include <QAccessible>
#include <QSignalSpy>
#include <QTest>

#include "chart/chart_parts.h"
#include "chart/season_chart.h"
#include "screen_text/chart_hand_text.h"
#include "support/days.h"
#include "support/sample_orders.h"
#include "support/sample_outlook.h"

namespace tenthday::test {
namespace {

/// More presses than there are lanes lead nowhere.
constexpr int kLanes = 20;

/// The chart as a screen reader meets it, in this process.
class HeardChart : public ::testing::Test {
protected:
    HeardChart() {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        chart.resize(1366, 768);
        chart.setOutlook(sampleOutlook());
        chart.setChosenDay(day("2027-06-17"));
        chart.show();
        (void)QTest::qWaitForWindowExposed(&chart);
    }
    QAccessibleInterface* root() { return QAccessible::queryAccessibleInterface(&chart); }
    QAccessibleInterface* named(const QString& name) {
        for (int i = 0; i < root()->childCount(); ++i)
            if (root()->child(i)->text(QAccessible::Name) == name) return root()->child(i);
        return nullptr;
    }

    SeasonChart chart;
};

TEST_F(HeardChart, HasEachBatchLoadAndYardWithNameAndValue) {
    ASSERT_TRUE(root());
    EXPECT_EQ(root()->role(), QAccessible::List);
    std::size_t loads = 0;
    for (const auto& batch : chart.outlook()->batches) loads += batch->timeline.loads.size();
    EXPECT_EQ(static_cast<std::size_t>(root()->childCount()),
              chart.outlook()->batches.size() + loads + chart.outlook()->nucs.yards.size());
    for (int i = 0; i < root()->childCount(); ++i) {
        auto* part = root()->child(i);
        ASSERT_TRUE(part && part->isValid()) << i;
        EXPECT_FALSE(part->text(QAccessible::Name).isEmpty()) << i;
        EXPECT_FALSE(part->text(QAccessible::Value).isEmpty()) << i;
        EXPECT_FALSE(part->actionInterface()->actionNames().isEmpty()) << i;
        EXPECT_EQ(root()->indexOfChild(part), i);
        EXPECT_EQ(part->parent(), root());
    }
    auto* batch = named(QStringLiteral("Batch 18"));
    ASSERT_TRUE(batch);
    EXPECT_TRUE(batch->text(QAccessible::Value)
                    .startsWith(QStringLiteral("graft Mon 7 Jun, cells out Thu 17 Jun, catch ")))
        << batch->text(QAccessible::Value).toStdString();
    auto* yard = named(QStringLiteral("Yard Home on Thu 17 Jun"));
    ASSERT_TRUE(yard);
    EXPECT_TRUE(yard->text(QAccessible::Value).startsWith(QStringLiteral("ready ")));
}

TEST_F(HeardChart, ActionsChooseMoveAndChangeABatch) {
    auto* batch = named(QStringLiteral("Batch 18"));
    ASSERT_TRUE(batch);
    std::vector<ChartWish> wishes;
    QObject::connect(&chart, &SeasonChart::wished,
                     [&](const ChartWish& wish) { wishes.push_back(wish); });
    std::vector<Id<Batch>> edited;
    QObject::connect(&chart, &SeasonChart::editRequested,
                     [&](Id<Batch> id) { edited.push_back(id); });
    batch->actionInterface()->doAction(chart_hand_text::choose());
    EXPECT_EQ(chart.selectedBatch(), sampleBatch("18"));
    EXPECT_TRUE(batch->state().selected);
    batch->actionInterface()->doAction(chart_hand_text::later());
    ASSERT_EQ(wishes.size(), 1U);
    EXPECT_EQ(wishes[0].by, Days{1});
    batch->actionInterface()->doAction(chart_hand_text::change());
    EXPECT_EQ(edited, std::vector{sampleBatch("18")});
}

TEST_F(HeardChart, IsWhereItIsPainted) {
    auto* batch = named(QStringLiteral("Batch 18"));
    ASSERT_TRUE(batch);
    const auto rect = batch->rect();
    EXPECT_FALSE(rect.isEmpty());
    EXPECT_TRUE(QRect(chart.mapToGlobal(QPoint()), chart.size()).contains(rect));
    auto* hit = root()->childAt(rect.center().x(), rect.center().y());
    ASSERT_TRUE(hit);
    EXPECT_TRUE(hit->text(QAccessible::Name).contains(QStringLiteral("18")));
}

/// So low that lanes have to be scrolled.
class HeardLowChart : public HeardChart {
protected:
    HeardLowChart() {
        chart.openOrCloseYards();
        chart.resize(1366, 470);
    }
    QAccessibleInterface* below() { return named(QStringLiteral("Lanes below")); }
    QAccessibleInterface* above() { return named(QStringLiteral("Lanes above")); }
    static void press(QAccessibleInterface* sign) {
        sign->actionInterface()->doAction(sign->actionInterface()->actionNames().value(0));
    }
};

TEST_F(HeardLowChart, LanesOutOfSightAreSignsWithNameValueKeyAndAction) {
    EXPECT_FALSE(above());
    auto* sign = below();
    ASSERT_TRUE(sign);
    EXPECT_EQ(sign->role(), QAccessible::Button);
    const auto last = chart.outlook()->nucs.yards.back().yard->label;
    EXPECT_TRUE(sign->text(QAccessible::Value).contains(QString::fromStdString(last)))
        << sign->text(QAccessible::Value).toStdString();
    const auto action = sign->actionInterface()->actionNames().value(0);
    EXPECT_EQ(sign->actionInterface()->keyBindingsForAction(action),
              QStringList{QStringLiteral("B")});
    EXPECT_EQ(sign->text(QAccessible::Accelerator), QStringLiteral("B"));
    const auto rect = sign->rect();
    EXPECT_FALSE(sign->state().offscreen);
    EXPECT_EQ(root()->childAt(rect.center().x(), rect.center().y()), sign);
    press(sign);
    EXPECT_GT(chart.options().scrollY, 0);
    ASSERT_TRUE(above());
    EXPECT_TRUE(above()->text(QAccessible::Value).startsWith(QStringLiteral("Flying days")));
    EXPECT_EQ(above()->text(QAccessible::Accelerator), QStringLiteral("Shift+B"));
    for (int n = 0; n < kLanes && below(); ++n) press(below());
    EXPECT_FALSE(below());
    for (int n = 0; n < kLanes && above(); ++n) press(above());
    EXPECT_FALSE(above());
    EXPECT_EQ(chart.options().scrollY, 0);
}

TEST_F(HeardLowChart, ItIsDescribedByWhatIsOutOfSightToo) {
    const auto says = [&](const QString& words) {
        return chart.accessibleDescription().contains(words);
    };
    const auto comesToSay = [&](const QString& words) {  // once it is painted
        return QTest::qWaitFor([&] { return says(words); });
    };
    const auto belowWords = QStringLiteral("below: ");
    EXPECT_TRUE(comesToSay(belowWords));
    EXPECT_TRUE(says(QString::fromStdString(chart.outlook()->nucs.yards.back().yard->label)));
    EXPECT_FALSE(says(QStringLiteral("above: ")));
    press(below());
    EXPECT_TRUE(comesToSay(QStringLiteral("above: Flying days")));
    for (int n = 0; n < kLanes && below(); ++n) press(below());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !says(belowWords); })) << "all is above";
}

TEST_F(HeardLowChart, WhatIsScrolledBehindHeadOrFootIsOffscreen) {
    chart.resize(1366, 340);
    const auto plot = [&] {
        const auto rect = chart.layoutNow().plot.toRect();
        return QRect(chart.mapToGlobal(rect.topLeft()), rect.size());
    };
    auto* batch = named(QStringLiteral("Batch 18"));
    auto* yard =
        named(QStringLiteral("Yard %1 on Thu 17 Jun")
                  .arg(QString::fromStdString(chart.outlook()->nucs.yards.back().yard->label)));
    ASSERT_TRUE(batch && yard);
    EXPECT_FALSE(batch->state().offscreen);
    EXPECT_TRUE(yard->state().offscreen) << "under the foot";
    for (int n = 0; n < kLanes && below(); ++n) press(below());
    EXPECT_TRUE(batch->state().offscreen) << "behind the head";
    EXPECT_FALSE(yard->state().offscreen);
    EXPECT_TRUE(plot().contains(yard->rect()));
}

TEST(HeardOrders, HaveNameStateAndAWayToThem) {
    ChartOptions options;
    options.orders = sampleOrders();
    options.chosenDay = day("2027-06-17");
    std::vector<ChartPart> flags;
    for (const auto& part : chartParts(*sampleOutlook(), options))
        if (part.kind == ChartPart::Kind::Order) flags.push_back(part);
    ASSERT_EQ(flags.size(), options.orders->orders.size());
    for (std::size_t i = 0; i < flags.size(); ++i) {
        const auto& order = options.orders->orders[i];
        EXPECT_TRUE(flags[i].name.contains(QString::fromStdString(order.order->label)));
        EXPECT_FALSE(flags[i].value.isEmpty());
        EXPECT_EQ(flags[i].order, order.order->id);
        EXPECT_EQ(flags[i].key.hit, Hit::OrderFlag);
    }
    EXPECT_EQ(flags[4].value, QStringLiteral("21 short"));
}

TEST_F(HeardChart, YardsAreTheChosenDays) {
    chart.setChosenDay(day("2027-06-20"));
    EXPECT_TRUE(named(QStringLiteral("Yard Home on Sun 20 Jun")));
    EXPECT_FALSE(named(QStringLiteral("Yard Home on Thu 17 Jun")));
}

}  // namespace
}  // namespace tenthday::test
