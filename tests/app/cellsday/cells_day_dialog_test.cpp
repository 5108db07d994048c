#include "cellsday/cells_day_dialog.h"

#include <QComboBox>
#include <QPushButton>
#include <QSettings>
#include <QSpinBox>
#include <QTest>

#include "app/book/book_fixture.h"
#include "exchange/example.h"

namespace tenthday {
namespace {

using test::day;

/// The example's next cells day.
class CellsDayDialogTest : public test::BookTest {
protected:
    CellsDayDialogTest()
        : settings_(std::make_unique<QSettings>(at(QStringLiteral("settings.ini")),
                                                QSettings::IniFormat)) {}
    void SetUp() override {
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
        path_ = at(QStringLiteral("example.tenthday"));
        ASSERT_TRUE(createBook(path_, exampleContent(), test::fixedOptions()).ok());
        openDialog({});
    }
    void openDialog(const OpenOptions& options) {
        dialog_.reset();
        desk_.reset();
        desk_ = Desk::open(path_, options).value();
        dialog_ = std::make_unique<CellsDayDialog>(
            *desk_, settings_, cellsDayNear(*desk_->outlook(), desk_->snapshot().today()));
        dialog_->setAsk([this](const QString& question) {
            asked_.push_back(question.toStdString());
            return answer_;
        });
        dialog_->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(dialog_.get()));
    }
    void TearDown() override {
        dialog_.reset();
        QLocale::setDefault(QLocale::c());
    }
    NucsTicks& ticks() { return dialog_->ticks(); }
    NucsTicksModel& rows() { return dialog_->ticks().rows(); }
    int ticked() {
        int count = 0;
        for (int row = 0; row < rows().rowCount(); ++row) count += rows().isTicked(row) ? 1 : 0;
        return count;
    }
    QPoint tickAt(int row) {
        return ticks().visualRect(rows().index(row, NucsTicksModel::Cell)).center();
    }
    std::size_t placements() { return desk_->snapshot().all<Placement>().size(); }
    std::size_t planned() {
        std::size_t count = 0;
        for (const auto& row : desk_->snapshot().all<Placement>())
            count += !row->done && row->day == dialog_->day() ? 1 : 0;
        return count;
    }

    Settings settings_;
    QString path_;
    bool answer_ = true;
    std::vector<std::string> asked_;
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<CellsDayDialog> dialog_;
};

TEST_F(CellsDayDialogTest, OpensOnTheNextCellsDayWithItsRipeCells) {
    EXPECT_GE(dialog_->day(), desk_->snapshot().today());
    ASSERT_FALSE(dialog_->draft().batches.empty());
    EXPECT_GT(dialog_->draft().ripe(), 0);
    EXPECT_GT(rows().rowCount(), 0);
    EXPECT_NE(dialog_->sumText().indexOf(QStringLiteral("ripe")), -1);
}

TEST_F(CellsDayDialogTest, AProposalAddsUpIsPlannedAndTakenBack) {
    const auto before = desk_->snapshot();
    dialog_->propose();
    ASSERT_EQ(dialog_->draft().left(), 0) << dialog_->sumText().toStdString();
    EXPECT_EQ(dialog_->ways().leftText(0).toStdString(), "adds up");
    EXPECT_EQ(placements(), before.all<Placement>().size()) << "nothing is kept yet";
    const auto ripe = dialog_->draft().ripe();
    dialog_->planButton().click();
    EXPECT_EQ(planned(), static_cast<std::size_t>(ripe)) << dialog_->told().toStdString();
    EXPECT_NE(dialog_->told().indexOf(QStringLiteral("Planned")), -1);
    EXPECT_FALSE(dialog_->planButton().isEnabled()) << "it is kept";
    QTest::keyClick(dialog_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
    EXPECT_EQ(dialog_->draft().toNucs(), 0);
    // What was done before this page opened is not taken back here.
    QTest::keyClick(dialog_.get(), Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(CellsDayDialogTest, NumbersMoveTheSum) {
    const int left = dialog_->draft().batches[0].left();
    auto* culled = dialog_->ways().way(0, CellTarget::Culled);
    ASSERT_NE(culled, nullptr);
    culled->setValue(2);
    EXPECT_EQ(dialog_->draft().batches[0].left(), left - 2);
    EXPECT_NE(dialog_->sumText().indexOf(QStringLiteral("2 culled")), -1);
    culled->setValue(left + 1);
    EXPECT_EQ(dialog_->ways().leftText(0).toStdString(), "1 cell too many");
    EXPECT_FALSE(dialog_->planButton().isEnabled());
    EXPECT_FALSE(dialog_->doneButton().isEnabled());
    const auto yard = rows().at(0).yard;
    auto* cells = dialog_->ways().nucsAt(0, yard);
    ASSERT_NE(cells, nullptr);
    culled->setValue(0);
    cells->setValue(2);
    EXPECT_EQ(ticked(), 2);
}

TEST_F(CellsDayDialogTest, SpaceTicksTheChosenNucs) {
    ticks().setFocus();
    ticks().setCurrentIndex(rows().index(0, 0));
    QTest::keyClick(&ticks(), Qt::Key_Space);
    EXPECT_TRUE(rows().isTicked(0));
    QTest::keyClick(&ticks(), Qt::Key_Down, Qt::ShiftModifier);
    QTest::keyClick(&ticks(), Qt::Key_Down, Qt::ShiftModifier);
    QTest::keyClick(&ticks(), Qt::Key_Space);
    EXPECT_EQ(ticked(), 3) << "the current one was not ticked: all three are";
    QTest::keyClick(&ticks(), Qt::Key_Space);
    EXPECT_EQ(ticked(), 0);
}

TEST_F(CellsDayDialogTest, DrawingOverTicksTicksThemAll) {
    ASSERT_GE(rows().rowCount(), 4);
    auto* view = ticks().viewport();
    QTest::mousePress(view, Qt::LeftButton, {}, tickAt(0));
    EXPECT_EQ(ticked(), 1);
    QTest::mouseMove(view, tickAt(3));
    QTest::mouseRelease(view, Qt::LeftButton, {}, tickAt(3));
    EXPECT_EQ(ticked(), 4) << "a quick hand leaves none out";
    QTest::mousePress(view, Qt::LeftButton, {}, tickAt(1));
    QTest::mouseMove(view, tickAt(2));
    QTest::mouseRelease(view, Qt::LeftButton, {}, tickAt(2));
    EXPECT_EQ(ticked(), 2);
}

TEST_F(CellsDayDialogTest, TheListShowsWhatWasChosen) {
    dialog_->propose();
    const int nucs = dialog_->draft().toNucs();
    dialog_->listed().setCurrentIndex(1);
    EXPECT_EQ(rows().rowCount(), nucs);
    dialog_->listed().setCurrentIndex(2);
    EXPECT_GT(rows().rowCount(), nucs);
    const auto sheet = dialog_->sheet();
    int printed = 0;
    for (const auto& group : sheet.groups) printed += static_cast<int>(group.rows.size());
    EXPECT_EQ(printed, nucs);
}

TEST_F(CellsDayDialogTest, WhatIsNotKeptIsAskedFor) {
    answer_ = false;
    dialog_->reject();
    EXPECT_TRUE(asked_.empty()) << "nothing was drafted";
    openDialog({});
    dialog_->propose();
    dialog_->reject();
    EXPECT_EQ(asked_.size(), 1U);
    EXPECT_TRUE(dialog_->isVisible());
    answer_ = true;
    dialog_->reject();
    EXPECT_FALSE(dialog_->isVisible());
}

TEST_F(CellsDayDialogTest, ADayToComeIsPlannedAndNotRecorded) {
    dialog_->step(1);
    ASSERT_GT(dialog_->day(), desk_->snapshot().today());
    dialog_->propose();
    EXPECT_FALSE(dialog_->doneButton().isEnabled());
    EXPECT_TRUE(dialog_->planButton().isEnabled());
    EXPECT_NE(dialog_->told().indexOf(QStringLiteral("still to come")), -1);
    EXPECT_FALSE(dialog_->ways().ripe(0)->isEnabled()) << "nobody can have counted them";
}

TEST_F(CellsDayDialogTest, ABookOpenForReadingTakesNothing) {
    OpenOptions options;
    options.access = Access::ReadOnly;
    openDialog(options);
    EXPECT_FALSE(dialog_->planButton().isEnabled());
    ticks().setCurrentIndex(rows().index(0, 0));
    QTest::keyClick(&ticks(), Qt::Key_Space);
    EXPECT_EQ(ticked(), 0);
    EXPECT_NE(dialog_->told().indexOf(QStringLiteral("reading only")), -1);
}

}  // namespace
}  // namespace tenthday
