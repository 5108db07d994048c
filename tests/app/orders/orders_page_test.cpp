#include "orders/orders_page.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QLineEdit>
#include <QMessageBox>
#include <QPushButton>
#include <QScrollBar>

#include "app/orders/orders_fixture.h"
#include "look/airy_cells.h"
#include "look/glyph.h"
#include "look/glyph_delegate.h"
#include "orders/order_dialog.h"
#include "reasons/reasons_view.h"
#include "records/deliveries.h"

namespace tenthday::test {
namespace {

using OrdersPageTest = OrdersTest;

TEST_F(OrdersPageTest, ListsOpenOrdersInTheOrderOfFilling) {
    openExample();
    ASSERT_EQ(rows(), 2);
    EXPECT_EQ(text(0, OrdersModel::For), "K-03");
    EXPECT_EQ(text(0, OrdersModel::What), "mated queens");
    EXPECT_EQ(text(0, OrdersModel::Count), "2");
    EXPECT_EQ(text(0, OrdersModel::Due), "Fri 30 Jul");
    EXPECT_EQ(text(0, OrdersModel::Goes), "Fri 30 Jul");
    EXPECT_EQ(text(0, OrdersModel::Caged), "29 Jul");
    EXPECT_EQ(text(0, OrdersModel::Line), "any");
    EXPECT_EQ(text(0, OrdersModel::Sure), "90 %");
    EXPECT_NE(text(0, OrdersModel::FilledBy), "");
    EXPECT_EQ(text(1, OrdersModel::For), "K-07");
}

TEST_F(OrdersPageTest, WhatIsOrderedStandsWholeInASmallWindow) {
    const auto addLong = [&](std::uint64_t n, OrderKind kind, OrderPurpose purpose) {
        Order order;
        order.id = id<Order>(n);
        order.label = "Association of the valley " + std::to_string(n);
        order.kind = kind;
        order.count = 24;
        order.due = day("2027-07-28");
        rows_.add(order);
        rows_.add(OrderTerms{id<OrderTerms>(n), 1, order.id, OrderStanding::Open, purpose, {}});
    };
    addLong(61, OrderKind::Proven, OrderPurpose::None);
    addLong(62, OrderKind::Own, OrderPurpose::Requeen);
    for (std::uint64_t n = 63; n < 83; ++n)
        add(n, "K-" + std::to_string(n), 5, "2027-07-30", OrderStanding::Cancelled);
    openExample();
    page_->filter().setCurrentIndex(3);
    page_->resize(1280, 600);
    auto& table = page_->table();
    const auto* cells = dynamic_cast<const AiryCells*>(table.itemDelegate());
    ASSERT_NE(cells, nullptr);
    const auto isWhole = [&] {
        const int air = cells->widthOfLetters(0, table.fontMetrics());
        for (int row = 0; row < rows(); ++row) {
            const auto words = table.model()->index(row, OrdersModel::What).data().toString();
            if (table.fontMetrics().horizontalAdvance(words) + air >
                table.columnWidth(OrdersModel::What))
                return false;
        }
        return table.horizontalHeader()->length() <= table.viewport()->width();
    };
    EXPECT_EQ(rows(), 26);
    EXPECT_TRUE(QTest::qWaitFor(isWhole, kPatience))
        << table.columnWidth(OrdersModel::What) << " px; all " << table.horizontalHeader()->length()
        << " of " << table.viewport()->width();
    EXPECT_TRUE(table.verticalScrollBar()->isVisible()) << "which takes room, too";
}

TEST_F(OrdersPageTest, StatesAreToldByGlyphAndWord) {
    openExample();
    const auto glyph = [&](int row) {
        return static_cast<Glyph>(page_->table()
                                      .model()
                                      ->index(row, OrdersModel::State)
                                      .data(GlyphDelegate::kGlyphRole)
                                      .toInt());
    };
    EXPECT_EQ(text(0, OrdersModel::State), "met");
    EXPECT_EQ(glyph(0), Glyph::LookDone);
    EXPECT_NE(text(1, OrdersModel::State).find(" short"), std::string::npos);
    EXPECT_EQ(glyph(1), Glyph::Warning);
}

TEST_F(OrdersPageTest, TheFilterShowsTheWaitingListAndCancelledOnes) {
    openExample();
    page_->filter().setCurrentIndex(1);
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(text(0, OrdersModel::For), "K-11");
    EXPECT_EQ(text(0, OrdersModel::State).substr(0, 8), "waiting:");
    page_->filter().setCurrentIndex(2);
    ASSERT_EQ(rows(), 1);
    EXPECT_EQ(text(0, OrdersModel::State), "cancelled");
    page_->filter().setCurrentIndex(3);
    EXPECT_EQ(rows(), 4);
    page_->find().setText(QStringLiteral("k-07"));
    EXPECT_EQ(rows(), 1);
    page_->find().setText(QStringLiteral("nobody"));
    EXPECT_NE(page_->emptyText(), QString());
}

TEST_F(OrdersPageTest, ImportanceIsFoldedAwayUntilSomethingIsShort) {
    openExample();
    EXPECT_FALSE(page_->table().isColumnHidden(OrdersModel::Weight));
    page_->choose(id<Order>(2));
    key(Qt::Key_C);  // the short one is cancelled
    EXPECT_TRUE(page_->table().isColumnHidden(OrdersModel::Weight));
    ASSERT_TRUE(desk_->undo().ok());
    settle();
    EXPECT_FALSE(page_->table().isColumnHidden(OrdersModel::Weight));
}

TEST_F(OrdersPageTest, WithoutOrdersItSaysWhatToDo) {
    openExample(false);
    EXPECT_EQ(rows(), 0);
    EXPECT_TRUE(page_->emptyText().contains(QStringLiteral("Insert")));
    EXPECT_TRUE(page_->emptyText().contains(QStringLiteral("Ctrl+V")));
    EXPECT_EQ(page_->chosen(), nullptr);
    key(Qt::Key_D);  // nothing to deliver
    EXPECT_EQ(page_->dialog(), nullptr);
    key(Qt::Key_Insert);
    EXPECT_NE(page_->dialog(), nullptr);
}

TEST_F(OrdersPageTest, TotalsSayReadyOwedAndWhatCanBePromised) {
    openExample();
    const auto totals = page_->totals().toStdString();
    for (const auto* part : {"Ready by Sun 6 Jun: ", "90 % sure", "Owed by then: 0",
                             "Can promise: 0 this week, 0 the next"})
        EXPECT_NE(totals.find(part), std::string::npos) << part << " in " << totals;
}

TEST_F(OrdersPageTest, TheDetailsTellWhyAndWhatToMind) {
    openExample();
    const auto told = page_->reasons().toPlainText();
    for (const auto* part :
         {"Chance that it is whole", "Filled by", "Goes", "On the way", "15", "38", "S99", "S100",
          "Waiting in a bank", "S20", "S97", "ask the local bee inspector", "S102"})
        EXPECT_TRUE(told.contains(QLatin1String(part))) << part << " in\n" << told.toStdString();
}

TEST_F(OrdersPageTest, AnOrderIsDeliveredInOneStep) {
    openExample();
    key(Qt::Key_D);
    auto& form = dialog<FieldsDialog>();
    EXPECT_EQ(form.values()[0].toInt(), 2) << "all that is owed";
    form.enter(0, 1);
    form.enter(2, QString());
    form.accept();
    EXPECT_EQ(deliveredOf(desk_->snapshot(), id<Order>(1)).count, 1);
    EXPECT_EQ(text(0, OrdersModel::Delivered), "1");
    EXPECT_EQ(undoName(), "record_outcome delivery of 1 for K-03");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_EQ(deliveredOf(desk_->snapshot(), id<Order>(1)).count, 0);
}

TEST_F(OrdersPageTest, MoreThanIsOwedIsRefusedAndTold) {
    openExample();
    key(Qt::Key_D);
    auto& form = dialog<FieldsDialog>();
    form.enter(0, 3);
    form.accept();
    EXPECT_NE(form.under(0), QString());
    EXPECT_EQ(deliveredOf(desk_->snapshot(), id<Order>(1)).count, 0);
}

TEST_F(OrdersPageTest, AFailedQueenIsTracedToBatchAndYardAndOwedAgain) {
    openExample();
    const auto batch = findByLabel<Batch>(desk_->snapshot(), "701");
    const auto yard = findByLabel<Yard>(desk_->snapshot(), "Orchard");
    key(Qt::Key_D);
    auto& form = dialog<FieldsDialog>();
    form.enter(2, QString::fromStdString(toText(batch->id.uuid)));
    form.enter(3, QString::fromStdString(toText(yard->id.uuid)));
    form.accept();
    EXPECT_EQ(text(0, OrdersModel::State), "delivered");
    key(Qt::Key_R);
    auto& failed = dialog<FieldsDialog>();
    failed.enter(1, 1);
    failed.enter(2, static_cast<int>(DeliveryLoss::DroneLayer));
    failed.accept();
    const auto sum = deliveredOf(desk_->snapshot(), id<Order>(1));
    EXPECT_EQ(sum.count, 2);
    EXPECT_EQ(sum.failed, 1);
    EXPECT_EQ(undoName(), "record_outcome 1 to replace for K-03");
    EXPECT_NE(text(0, OrdersModel::State), "delivered");
    const auto told = page_->reasons().toPlainText();
    for (const auto* part : {"drone layer", "batch 701", "mated at Orchard"})
        EXPECT_TRUE(told.contains(QLatin1String(part))) << part << " in\n" << told.toStdString();
}

TEST_F(OrdersPageTest, WithoutADeliveryThereIsNothingToReplace) {
    openExample();
    key(Qt::Key_R);
    EXPECT_EQ(page_->dialog(), nullptr);
    EXPECT_NE(page_->told(), QString());
}

TEST_F(OrdersPageTest, QueensOfABatchAreMeantForAnOrderByHand) {
    openExample();
    key(Qt::Key_M);
    auto& form = dialog<FieldsDialog>();
    const auto batch = findByLabel<Batch>(desk_->snapshot(), "705");
    form.enter(0, QString::fromStdString(toText(batch->id.uuid)));
    form.enter(1, 2);
    form.accept();
    ASSERT_EQ(desk_->snapshot().all<Earmark>().of(id<Order>(1).uuid).size(), 1U);
    EXPECT_EQ(undoName(), "record_outcome 2 of batch 705 meant for K-03");
    EXPECT_EQ(text(0, OrdersModel::FilledBy).substr(0, 4), "705:");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_TRUE(desk_->snapshot().all<Earmark>().of(id<Order>(1).uuid).empty());
}

TEST_F(OrdersPageTest, KeysPutAnOrderOnTheWaitingListAndCancelIt) {
    openExample();
    key(Qt::Key_L);
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(undoName(), "record_outcome order K-03 on the waiting list");
    page_->choose(id<Order>(1));
    key(Qt::Key_L);
    EXPECT_EQ(undoName(), "record_outcome order K-03 as open");
    key(Qt::Key_C);
    EXPECT_EQ(undoName(), "record_outcome order K-03 as cancelled");
    key(Qt::Key_D);
    EXPECT_EQ(page_->dialog(), nullptr) << "a cancelled order is not delivered";
    EXPECT_NE(page_->told(), QString());
    key(Qt::Key_C);
    EXPECT_EQ(undoName(), "record_outcome order K-03 as open");
}

TEST_F(OrdersPageTest, QueensBoughtInCountAtOnce) {
    openExample();
    key(Qt::Key_B);
    auto& form = dialog<FieldsDialog>();
    form.enter(1, 600);
    form.accept();
    EXPECT_EQ(desk_->snapshot().all<QueenLot>().size(), 1U);
    EXPECT_EQ(undoName().find("add_row 600 queen"), 0U) << undoName();
    EXPECT_EQ(text(1, OrdersModel::State), "met");
    EXPECT_NE(text(1, OrdersModel::FilledBy).find("bought in:"), std::string::npos);
    key(Qt::Key_B);
    auto& again = dialog<FieldsDialog>();
    again.enter(
        0, QString::fromStdString(toText((*desk_->snapshot().all<QueenLot>().begin())->id.uuid)));
    EXPECT_EQ(again.values()[1], QVariant(600)) << "those that are there";
    again.enter(1, 0);
    again.accept();
    EXPECT_EQ(desk_->snapshot().all<QueenLot>().size(), 0U);
    EXPECT_EQ(undoName().find("delete_row 600 queen"), 0U) << undoName();
}

TEST_F(OrdersPageTest, DeletingAsksFirst) {
    openExample();
    key(Qt::Key_Delete);
    auto& sure = dialog<QMessageBox>();
    sure.button(QMessageBox::No)->click();
    EXPECT_NE(order(1), nullptr);
    key(Qt::Key_Delete);
    dialog<QMessageBox>().button(QMessageBox::Yes)->click();
    EXPECT_EQ(order(1), nullptr);
    EXPECT_EQ(undoName(), "delete_row order K-03");
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_NE(order(1), nullptr);
}

TEST_F(OrdersPageTest, WhatIsCopiedPastesAgain) {
    openExample();
    key(Qt::Key_C, Qt::ControlModifier);
    const auto copied = QGuiApplication::clipboard()->text();
    const auto lines = copied.split(u'\n', Qt::SkipEmptyParts);
    ASSERT_EQ(lines.size(), 3);
    EXPECT_EQ(lines[0].count(u'\t'), lines[1].count(u'\t'));
    EXPECT_TRUE(lines[1].startsWith(QStringLiteral("K-03\tmated queens\t2\t2027-07-30")));
}

TEST_F(OrdersPageTest, ABookForReadingTakesNothing) {
    openExample(true, Access::ReadOnly);
    for (const auto pressed : {Qt::Key_Insert, Qt::Key_F2, Qt::Key_D, Qt::Key_M, Qt::Key_L,
                               Qt::Key_C, Qt::Key_B, Qt::Key_Delete})
        key(pressed);
    EXPECT_EQ(page_->dialog(), nullptr);
    EXPECT_EQ(rows(), 2);
}

TEST_F(OrdersPageTest, WhatIsNotSeenIsNotReckoned) {
    openExample();
    page_->hide();
    ChangeSet gone;
    gone.erase(order(1));
    ASSERT_TRUE(desk_->apply(gone).ok());
    EXPECT_EQ(rows(), 2) << "still the list of before";
    page_->show();
    EXPECT_EQ(rows(), 1);
}

}  // namespace
}  // namespace tenthday::test
