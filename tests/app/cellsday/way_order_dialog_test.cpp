#include "cellsday/way_order_dialog.h"

#include <gtest/gtest.h>

#include <QSpinBox>
#include <QTableWidget>
#include <QTest>

namespace tenthday {
namespace {

TEST(WayOrderDialog, ListsTheUsersWaysFirstAndAllOthersUnticked) {
    const WayOrder order{{Way::Caged, 20}, {Way::Sold, {}}};
    WayOrderDialog dialog(order);
    EXPECT_EQ(dialog.table().rowCount(), static_cast<int>(kTokenCount<Way>));
    EXPECT_EQ(dialog.order(), order);
}

TEST(WayOrderDialog, MovesTicksAndLimitsMakeTheOrder) {
    WayOrderDialog dialog({{Way::Caged, 20}, {Way::Sold, {}}});
    dialog.move(1);
    EXPECT_EQ(dialog.order(), (WayOrder{{Way::Sold, {}}, {Way::Caged, 20}}));
    dialog.move(-1);
    dialog.move(-1);
    EXPECT_EQ(dialog.order(), (WayOrder{{Way::Caged, 20}, {Way::Sold, {}}})) << "first stays first";
    dialog.table().item(0, 0)->setCheckState(Qt::Unchecked);
    dialog.table().item(2, 0)->setCheckState(Qt::Checked);
    qobject_cast<QSpinBox*>(dialog.table().cellWidget(1, 2))->setValue(3);
    EXPECT_EQ(dialog.order(), (WayOrder{{Way::Sold, 3}, {Way::OtherYards, {}}}));
}

TEST(WayOrderDialog, SpaceTicksTheCurrentWay) {
    WayOrderDialog dialog({{Way::Caged, 20}, {Way::Sold, {}}});
    QTest::keyClick(&dialog.table(), Qt::Key_Space);
    EXPECT_EQ(dialog.order(), (WayOrder{{Way::Sold, {}}}));
    QTest::keyClick(&dialog.table(), Qt::Key_Space);
    EXPECT_EQ(dialog.order(), (WayOrder{{Way::Caged, 20}, {Way::Sold, {}}}));
}

}  // namespace
}  // namespace tenthday
