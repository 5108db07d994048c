#include "orders/losses_dialog.h"

#include <QPushButton>
#include <QTableWidget>

#include "app/orders/orders_fixture.h"
#include "setup/fields_dialog.h"

namespace tenthday::test {
namespace {

class LossesDialogTest : public OrdersTest {
protected:
    LossesDialog& losses() {
        openExample();
        key(Qt::Key_S);
        form_ = &dialog<LossesDialog>();
        reckoned();
        return *form_;
    }
    /// Until the rates are fitted, beside the window's own work.
    void reckoned() {
        ASSERT_TRUE(QTest::qWaitFor([&] { return !form_->isReckoning(); }, kPatience));
    }
    static std::string cell(QTableWidget& table, int row, int column) {
        return table.item(row, column)->text().toStdString();
    }

private:
    LossesDialog* form_ = nullptr;
};

TEST_F(LossesDialogTest, TheWindowDoesNotWaitForTheRates) {
    openExample();
    key(Qt::Key_S);
    auto& form = dialog<LossesDialog>();
    EXPECT_TRUE(form.isReckoning());
    EXPECT_EQ(form.stages().rowCount(), 0);
    EXPECT_FALSE(form.leaveOutButton().isEnabled());
    ASSERT_TRUE(QTest::qWaitFor([&] { return !form.isReckoning(); }, kPatience));
    EXPECT_EQ(form.stages().rowCount(), 5);
}

TEST_F(LossesDialogTest, StagesStandWithPriorOwnRecordAndResult) {
    auto& form = losses();
    ASSERT_EQ(form.stages().rowCount(), 5);
    EXPECT_EQ(cell(form.stages(), 0, 0), "grafts that are started");
    EXPECT_EQ(cell(form.stages(), 0, 1).substr(0, 6), "75 % (") << "published, S19, S82, S83";
    EXPECT_NE(cell(form.stages(), 0, 2), "none yet");
    for (int row = 0; row < 5; ++row)
        for (const int column : {1, 3})
            EXPECT_NE(cell(form.stages(), row, column).find(" to "), std::string::npos) << row;
    EXPECT_GT(form.batches().rowCount(), 1);
}

TEST_F(LossesDialogTest, AnOddBatchIsLeftOutForAReasonAndTakenInAgain) {
    auto& form = losses();
    const auto before = cell(form.stages(), 0, 3) + cell(form.stages(), 0, 2);
    const auto label = cell(form.batches(), 0, 0);
    form.batches().setCurrentCell(0, 0);
    form.leaveOutButton().click();
    ASSERT_NE(form.question(), nullptr);
    form.question()->accept();
    EXPECT_NE(form.question()->under(0), QString()) << "a reason is needed";
    form.question()->enter(0, QStringLiteral("Builder was robbed."));
    form.question()->accept();
    ASSERT_EQ(desk_->snapshot().all<LeftOut>().size(), 1U);
    reckoned();
    EXPECT_EQ(undoName(), "record_outcome batch " + label + " left out of the rates");
    EXPECT_EQ(cell(form.batches(), 0, 5), "left out: Builder was robbed.");
    EXPECT_NE(cell(form.stages(), 0, 3) + cell(form.stages(), 0, 2), before);
    EXPECT_NE(cell(form.stages(), 0, 5).find("1 left out"), std::string::npos);
    ASSERT_TRUE(desk_->undo().ok());
    reckoned();
    EXPECT_EQ(cell(form.stages(), 0, 3) + cell(form.stages(), 0, 2), before);
    ASSERT_TRUE(desk_->redo().ok());
    reckoned();
    form.takeInButton().click();
    reckoned();
    EXPECT_EQ(desk_->snapshot().all<LeftOut>().size(), 0U);
    EXPECT_EQ(undoName(), "record_outcome batch " + label + " counted in the rates");
    EXPECT_EQ(cell(form.stages(), 0, 3) + cell(form.stages(), 0, 2), before);
}

TEST_F(LossesDialogTest, AnotherStageShowsItsOwnBatches) {
    auto& form = losses();
    const auto first = cell(form.batches(), 0, 2);
    form.stages().setCurrentCell(1, 0);
    ASSERT_GT(form.batches().rowCount(), 0);
    EXPECT_NE(cell(form.batches(), 0, 2), first) << "started cells, not grafts";
}

}  // namespace
}  // namespace tenthday::test
