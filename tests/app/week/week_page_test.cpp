#include "week/week_page.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QSpinBox>
#include <QTableView>
#include <QTableWidget>
#include <QTest>
#include <QToolButton>

#include "app/book/example_page.h"
#include "reasons/reasons_view.h"
#include "screen_text/dates.h"
#include "screen_text/sheet_text.h"
#include "sheets/week_content.h"
#include "tasks/given.h"
#include "tasks/work_time.h"
#include "week/times_dialog.h"

namespace tenthday {
namespace {

using test::day;

class WeekPageTest : public test::ExamplePageTest<WeekPage> {
protected:
    QModelIndex index(int row, WeekModel::Column column) {
        return page_->model().index(row, column);
    }
    std::string text(int row, WeekModel::Column column) {
        return index(row, column).data().toString().toStdString();
    }
    /// The first row with a task of the rule that is not done; -1 when there is none.
    int rowOf(TaskRule rule) {
        for (int row = 0; row < page_->model().rowCount(); ++row) {
            const auto* task = page_->model().taskAt(row);
            if (task && task->key.rule == rule && !task->done) return row;
        }
        return -1;
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier) {
        QTest::keyClick(&page_->table(), key, with);
    }
    void choose(int row) {
        const auto rect = page_->table().visualRect(index(row, WeekModel::What));
        QTest::mouseClick(page_->table().viewport(), Qt::LeftButton, {}, rect.center());
    }
    void clickBox(int row) {
        page_->table().scrollTo(index(row, WeekModel::Done));
        const auto rect = page_->table().visualRect(index(row, WeekModel::Done));
        QTest::mouseClick(page_->table().viewport(), Qt::LeftButton, {}, rect.center());
    }
    void addTask(const QString& words, bool must) {
        key(Qt::Key_Insert);
        auto* dialog = page_->asking();
        ASSERT_NE(dialog, nullptr);
        QTest::keyClicks(&dialog->text(), words);
        dialog->must().setChecked(must);
        QTest::keyClick(&dialog->text(), Qt::Key_Return);
    }
};

TEST_F(WeekPageTest, ShowsTheRowsOfTheSheetWithItsNumbersDayByDay) {
    key(Qt::Key_PageDown);
    const auto content = weekContent(*desk_->outlook(), {2027, 23});
    int row = 0;
    for (const auto& is : content.days) {
        const auto head = text(row++, WeekModel::Number);
        EXPECT_EQ(head.find(longDay(is.day).toStdString()), 0U) << head;
        EXPECT_EQ(QString::fromStdString(head).contains(sheet_text::nothing()), is.blocks.empty());
        for (const auto& block : is.blocks)
            for (const auto& sheetRow : block.rows) {
                EXPECT_EQ(text(row, WeekModel::Number), std::to_string(sheetRow.number));
                EXPECT_EQ(text(row, WeekModel::Yard), block.yard.toStdString());
                EXPECT_EQ(!text(row, WeekModel::Must).empty(), sheetRow.must);
                EXPECT_TRUE(page_->reasons().toPlainText().size() > 0);
                ++row;
            }
    }
    EXPECT_EQ(row, page_->model().rowCount());
    EXPECT_EQ(text(2, WeekModel::What), "Cells out");
    EXPECT_EQ(text(2, WeekModel::About), "batch 705, West");
    EXPECT_EQ(text(2, WeekModel::Count), "22");
}

TEST_F(WeekPageTest, KeysStepTheWeekAndTheChosenDayFollows) {
    QSignalSpy spy(page_.get(), &WeekPage::dayChosen);
    EXPECT_EQ(page_->day(), day("2027-06-03"));
    key(Qt::Key_PageDown);
    EXPECT_EQ(page_->day(), day("2027-06-10"));
    key(Qt::Key_Right, Qt::AltModifier);
    EXPECT_EQ(page_->week(), (IsoWeek{2027, 24}));
    key(Qt::Key_Left, Qt::AltModifier);
    key(Qt::Key_PageUp);
    key(Qt::Key_PageUp);
    EXPECT_EQ(page_->week(), (IsoWeek{2027, 21}));
    key(Qt::Key_Home);
    EXPECT_EQ(page_->day(), day("2027-06-03"));
    EXPECT_EQ(spy.size(), 6);
    // A row of another day makes that day the chosen one.
    key(Qt::Key_PageDown);
    page_->setDay(day("2027-06-07"));
    while (page_->day() == day("2027-06-07")) key(Qt::Key_Down);
    EXPECT_EQ(page_->day(), day("2027-06-08"));
    EXPECT_EQ(spy.last().at(0).value<Day>(), day("2027-06-08"));
    ASSERT_NE(page_->chosen(), nullptr);
    EXPECT_EQ(page_->chosen()->key.rule, TaskRule::Graft);
}

TEST_F(WeekPageTest, SpaceAndAClickOnTheBoxTickAndTakeBack) {
    page_->setDay(day("2027-06-08"));
    const int row = rowOf(TaskRule::Graft);
    ASSERT_GE(row, 0);
    choose(row);
    key(Qt::Key_Space);
    EXPECT_EQ(desk_->snapshot().all<TaskDone>().size(), 1U);
    EXPECT_EQ(page_->chosen()->done, day("2027-06-03"));
    EXPECT_EQ(index(row, WeekModel::Done).data(Qt::CheckStateRole).toInt(), Qt::Checked);
    clickBox(row);
    EXPECT_EQ(desk_->snapshot().all<TaskDone>().size(), 0U);
    clickBox(row);
    EXPECT_EQ(desk_->snapshot().all<TaskDone>().size(), 1U);
    ASSERT_TRUE(desk_->undo().ok());
    EXPECT_FALSE(page_->chosen()->done);
    EXPECT_EQ(page_->chosen()->key.rule, TaskRule::Graft) << "the chosen task stays chosen";
}

TEST_F(WeekPageTest, WhatWasRecordedIsNotTakenBackByATickAndSaysSo) {
    page_->setDay(day("2027-06-01"));
    for (int row = 0; row < page_->model().rowCount(); ++row)
        if (const auto* task = page_->model().taskAt(row);
            task && task->key.rule == TaskRule::CellsOut)
            choose(row);
    ASSERT_TRUE(page_->chosen()->done);
    key(Qt::Key_Space);
    EXPECT_TRUE(page_->chosen()->done);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("recorded"))) << page_->told().toStdString();
    key(Qt::Key_Down);
    EXPECT_TRUE(page_->told().isEmpty());
}

TEST_F(WeekPageTest, WhatIsOverdueStandsOnTopUntilItIsTicked) {
    page_->setDay(day("2027-06-02"));
    addTask(QStringLiteral("fetch feed"), false);
    ASSERT_TRUE(page_->model().isStillOpen(0));
    EXPECT_EQ(text(0, WeekModel::Number), "Still open: 1 task from before today");
    EXPECT_EQ(text(1, WeekModel::What), "fetch feed");
    EXPECT_EQ(text(1, WeekModel::When), "Wed 2 Jun");
    key(Qt::Key_PageDown);
    EXPECT_EQ(text(1, WeekModel::What), "fetch feed") << "still to be done next week";
    EXPECT_EQ(text(1, WeekModel::Number), "") << "its number is another week's";
    key(Qt::Key_PageUp);
    key(Qt::Key_PageUp);
    EXPECT_FALSE(page_->model().isStillOpen(0)) << "a week that is over shows its own only";
    key(Qt::Key_Home);
    choose(1);
    key(Qt::Key_Space);
    EXPECT_FALSE(page_->model().isStillOpen(0));
    EXPECT_EQ(page_->chosen()->subjectLabel, "fetch feed");
}

TEST_F(WeekPageTest, OwnTasksAreAddedChangedDeletedAndUndone) {
    page_->setDay(day("2027-06-12"));
    addTask(QStringLiteral("clean cages & cups"), true);
    ASSERT_EQ(desk_->snapshot().all<OwnTask>().size(), 1U);
    auto row = *desk_->snapshot().all<OwnTask>().begin();
    EXPECT_EQ(row->text, "clean cages & cups");
    EXPECT_EQ(row->day, day("2027-06-12"));
    EXPECT_TRUE(row->must);
    choose(rowOf(TaskRule::Own));
    EXPECT_TRUE(page_->deleteButton().isEnabled());
    key(Qt::Key_F2);
    auto* dialog = page_->asking();
    ASSERT_NE(dialog, nullptr);
    dialog->day().setDate(toQDate(day("2027-06-13")));
    dialog->yard().setCurrentIndex(1);
    dialog->text().clear();
    QTest::keyClick(&dialog->text(), Qt::Key_Return);
    EXPECT_TRUE(dialog->isVisible());
    EXPECT_FALSE(dialog->told().isEmpty()) << "a task says what is to be done";
    QTest::keyClicks(&dialog->text(), QStringLiteral("clean cups"));
    QTest::keyClick(&dialog->text(), Qt::Key_Return);
    row = *desk_->snapshot().all<OwnTask>().begin();
    EXPECT_EQ(row->text, "clean cups");
    EXPECT_EQ(row->day, day("2027-06-13"));
    EXPECT_TRUE(row->yard);
    ASSERT_NE(page_->chosen(), nullptr);
    EXPECT_EQ(page_->chosen()->subjectLabel, "clean cups");
    key(Qt::Key_Delete);
    EXPECT_EQ(desk_->snapshot().all<OwnTask>().size(), 0U);
    for (int i = 0; i < 3; ++i) ASSERT_TRUE(desk_->undo().ok());
    EXPECT_FALSE(desk_->canUndo());
    // Nothing of the rules is deleted or changed.
    choose(rowOf(TaskRule::FirstWildLook));
    EXPECT_FALSE(page_->deleteButton().isEnabled());
    key(Qt::Key_Delete);
    EXPECT_FALSE(desk_->canUndo());
}

TEST_F(WeekPageTest, TheChosenRowTellsItsRuleItsInputsAndItsSources) {
    page_->setDay(day("2027-06-11"));
    choose(rowOf(TaskRule::FirstLook));
    const auto told = page_->reasons().toPlainText();
    EXPECT_TRUE(told.contains(QStringLiteral("this is later than 14 days after they came out")));
    EXPECT_TRUE(told.contains(QStringLiteral("S49 "))) << told.toStdString();
    EXPECT_TRUE(told.contains(QStringLiteral("O10 A B"))) << "the nucs it is about";
    EXPECT_EQ(page_->chosenDate().event, Event::FirstLook);
}

TEST_F(WeekPageTest, ABookForReadingIsOnlyRead) {
    OpenOptions options;
    options.access = Access::ReadOnly;
    openPage(options);
    page_->setDay(day("2027-06-08"));
    choose(rowOf(TaskRule::Graft));
    key(Qt::Key_Space);
    EXPECT_TRUE(page_->told().contains(QStringLiteral("reading only"))) << "it says why";
    clickBox(rowOf(TaskRule::Graft));
    key(Qt::Key_Insert);
    EXPECT_EQ(page_->asking(), nullptr);
    EXPECT_FALSE(page_->newButton().isEnabled());
    EXPECT_FALSE(page_->chosen()->done);
}

TEST_F(WeekPageTest, ATaskIsGivenToSomebodyAndTakenBack) {
    const int row = rowOf(TaskRule::FirstLook);
    ASSERT_GE(row, 0);
    page_->table().setCurrentIndex(index(row, WeekModel::What));
    page_->giveTo(QStringLiteral(" AK "));
    EXPECT_EQ(givenTo(desk_->snapshot(), page_->chosen()->key), "AK");
    EXPECT_NE(text(rowOf(TaskRule::FirstLook), WeekModel::About).find("for AK"), std::string::npos);
    page_->giveTo(QString());
    EXPECT_TRUE(desk_->snapshot().all<TaskGiven>().empty());
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(desk_->snapshot().all<TaskGiven>().size(), 1U) << "one step each";
}

TEST_F(WeekPageTest, TimesOfWorkAreSetInOneStepAndTheRestStaysUsual) {
    TimesDialog dialog(*desk_);
    EXPECT_FALSE(dialog.learnButton().isEnabled()) << "nothing was ticked at work";
    dialog.once(TaskRule::Graft).setValue(33);
    dialog.accept();
    ASSERT_EQ(desk_->snapshot().all<WorkTime>().size(), 1U);
    EXPECT_EQ(taskMinutes(desk_->snapshot(), TaskRule::Graft).once, 33);
    EXPECT_FALSE(taskMinutes(desk_->snapshot(), TaskRule::Feed).own);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().all<WorkTime>().empty());
}

TEST_F(WeekPageTest, TimesThatAreClearedAreThoseOfCommonPracticeAgain) {
    const auto usual = taskMinutes(desk_->snapshot(), TaskRule::Graft);
    const auto setTo = [](QTableWidget& ways, int minutes) {
        qobject_cast<QSpinBox*>(ways.cellWidget(0, 2))->setValue(minutes);
    };
    {
        TimesDialog dialog(*desk_);
        EXPECT_FALSE(dialog.clearButton(TaskRule::Graft).isEnabled());
        dialog.once(TaskRule::Graft).setValue(33);
        dialog.each(TaskRule::Graft).setValue(1.5);
        EXPECT_EQ(dialog.from(TaskRule::Graft), QStringLiteral("your own"));
        setTo(dialog.ways(), 25);
        dialog.accept();
    }
    ASSERT_EQ(desk_->snapshot().all<WorkTime>().size(), 1U);
    ASSERT_EQ(desk_->snapshot().all<DriveTime>().size(), 1U);
    TimesDialog dialog(*desk_);
    dialog.clearButton(TaskRule::Graft).click();
    EXPECT_EQ(dialog.once(TaskRule::Graft).value(), usual.once);
    EXPECT_EQ(dialog.from(TaskRule::Graft), QStringLiteral("common practice"));
    qobject_cast<QToolButton*>(dialog.ways().cellWidget(0, 3))->click();
    dialog.accept();
    EXPECT_TRUE(desk_->snapshot().all<WorkTime>().empty());
    EXPECT_TRUE(desk_->snapshot().all<DriveTime>().empty());
    EXPECT_FALSE(taskMinutes(desk_->snapshot(), TaskRule::Graft).own);
    ASSERT_TRUE(desk_->undo());
    EXPECT_EQ(taskMinutes(desk_->snapshot(), TaskRule::Graft).once, 33) << "one step";
    EXPECT_EQ(desk_->snapshot().all<DriveTime>().size(), 1U);
}

TEST_F(WeekPageTest, TheLogOfChangesKnowsWhenATickWasMade) {
    const int row = rowOf(TaskRule::Confine);
    page_->table().setCurrentIndex(index(row, WeekModel::What));
    key(Qt::Key_Space);
    const auto ticks = tickTimes(*desk_);
    ASSERT_EQ(ticks.size(), 1U);
    EXPECT_EQ(ticks[0].rule, TaskRule::Confine);
    EXPECT_EQ(ticks[0].day, desk_->snapshot().today());
    EXPECT_GT(ticks[0].second, 0);
}

}  // namespace
}  // namespace tenthday
