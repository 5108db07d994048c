// The week's tasks and the times of work copied into a spreadsheet and pasted back.
#include "week/week_paste.h"

#include <QDoubleSpinBox>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTableWidget>
#include <set>

#include "app/book/example_page.h"
#include "app/paste/pasting.h"
#include "screen_text/paste_text.h"
#include "screen_text/week_text.h"
#include "tasks/given.h"
#include "tasks/task_row.h"
#include "tasks/work_time.h"
#include "week/times_dialog.h"
#include "week/week_page.h"

namespace tenthday {
namespace {

using test::copied;
using test::day;
using test::paste;
using test::withCell;

enum Copied { DayCell, TaskCell, AboutCell, YardCell, DoneCell = 8, GivenCell };

class WeekPaste : public test::ExamplePageTest<WeekPage> {
protected:
    const Task* taskOf(TaskRule rule) {
        for (int row = 0; row < page_->model().rowCount(); ++row)
            if (const auto* task = page_->model().taskAt(row);
                task != nullptr && task->key.rule == rule)
                return task;
        return nullptr;
    }
};

TEST_F(WeekPaste, EveryTaskIsCopiedOnceAndSaysNothingNew) {
    const auto text = copied(table());
    std::set<TaskKey> tasks;
    for (int row = 0; row < page_->model().rowCount(); ++row)
        if (const auto* task = page_->model().taskAt(row)) tasks.insert(task->key);
    EXPECT_EQ(text.count(u'\n') - 1, static_cast<int>(tasks.size()));
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->preview().item(0, 1)->text(), QStringLiteral("as it is already"));
    dialog->accept();
    EXPECT_EQ(dialog->told(), paste_text::nothingNew());
}

TEST_F(WeekPaste, TicksAndInitialsComeBackAsOneEdit) {
    page_->setDay(day("2027-06-10"));
    const auto* cells = taskOf(TaskRule::CellsOut);
    const auto* graft = taskOf(TaskRule::Graft);
    ASSERT_TRUE(cells != nullptr && graft != nullptr);
    const auto cellsKey = cells->key;
    const auto graftKey = graft->key;
    auto text = copied(table());
    text = withCell(text, {u'\t' + week_text::kind(TaskRule::CellsOut) + u'\t'}, GivenCell,
                    QStringLiteral("AK"));
    text = withCell(text, {u'\t' + week_text::kind(TaskRule::Graft) + u'\t'}, GivenCell,
                    QStringLiteral("ML"));
    const auto before = desk_->snapshot();
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(givenTo(desk_->snapshot(), cellsKey), "AK");
    EXPECT_EQ(givenTo(desk_->snapshot(), graftKey), "ML");
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().sameContent(before));
}

TEST_F(WeekPaste, ATickComesWithItsDayAndGoesWithAnEmptyCell) {
    const auto* task = taskOf(TaskRule::Confine);
    ASSERT_NE(task, nullptr);
    const auto key = task->key;
    const auto name = week_text::kind(TaskRule::Confine);
    auto text = withCell(copied(table()), {name}, DoneCell, QStringLiteral("02/06/2027"));
    auto* dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    const auto done = [&] {
        const auto row = rowOfTask<TaskDone>(desk_->snapshot(), key);
        return row ? std::optional(row->day) : std::nullopt;
    };
    EXPECT_EQ(done(), day("2027-06-02"));
    text = withCell(copied(table()), {name}, DoneCell, {});
    dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    dialog->accept();
    EXPECT_EQ(done(), std::nullopt);
    // A day that is still to come cannot be.
    dialog = paste(table(), withCell(text, {name}, DoneCell, QStringLiteral("2027-07-01")));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled());
    dialog->reject();
}

TEST_F(WeekPaste, AColumnOfInitialsStandsBesideTheTasksFromTheChosenOneOn) {
    page_->setDay(day("2027-06-10"));
    auto* dialog = paste(table(), QStringLiteral("AK\n\nML\n"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_EQ(dialog->preview().rowCount(), 2);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(everybody(desk_->snapshot()), (std::vector<std::string>{"AK", "ML"}));
}

TEST_F(WeekPaste, TimesComeBackIntoTheFieldsAndAreOneEditOnceSaved) {
    TimesDialog dialog(*desk_);
    dialog.show();
    dialog.once(TaskRule::Feed).setValue(17);
    auto text = copied(dialog.works());
    const auto graft = week_text::kind(TaskRule::Graft);
    text = withCell(text, {graft + u'\t'}, 1, QStringLiteral("33"));
    text = withCell(text, {graft + u'\t'}, 2, QStringLiteral("1.5 min"));
    auto* pasting = paste(dialog.works(), text);
    ASSERT_NE(pasting, nullptr);
    EXPECT_TRUE(pasting->takeButton().isEnabled()) << pasting->summary().toStdString();
    EXPECT_TRUE(pasting->summary().contains(QStringLiteral("1 new")))
        << pasting->summary().toStdString();
    pasting->accept();
    EXPECT_EQ(dialog.once(TaskRule::Graft).value(), 33);
    EXPECT_EQ(dialog.each(TaskRule::Graft).value(), 1.5);
    EXPECT_EQ(dialog.once(TaskRule::Feed).value(), 17) << "what was typed stays";
    EXPECT_EQ(dialog.from(TaskRule::TakeCount), QStringLiteral("common practice"));
    EXPECT_TRUE(desk_->snapshot().all<WorkTime>().empty()) << "not saved yet";
    auto ways = copied(dialog.ways());
    const auto first = ways.split(u'\n')[1];
    ways.replace(first, first + QStringLiteral("25"));
    QApplication::clipboard()->setText(ways);
    dialog.pasteButton().click();  // finds the table by the heads
    pasting = test::pasteDialog(dialog.ways());
    ASSERT_NE(pasting, nullptr);
    pasting->accept();
    dialog.accept();
    EXPECT_EQ(desk_->snapshot().all<WorkTime>().size(), 2U);
    ASSERT_EQ(desk_->snapshot().all<DriveTime>().size(), 1U);
    EXPECT_EQ((*desk_->snapshot().all<DriveTime>().begin())->minutes, 25);
    ASSERT_TRUE(desk_->undo());
    EXPECT_TRUE(desk_->snapshot().all<WorkTime>().empty()) << "one step";
    EXPECT_TRUE(desk_->snapshot().all<DriveTime>().empty());
}

TEST_F(WeekPaste, TimesOutOfRangeAreRefusedAndEmptyOnesAreTakenBack) {
    TimesDialog dialog(*desk_);
    dialog.show();
    const auto graft = week_text::kind(TaskRule::Graft);
    for (const char* wrong : {"1441", "-1", "soon"}) {
        auto* pasting =
            paste(dialog.works(),
                  QStringLiteral("Task\tOnce\n%1\t%2\n").arg(graft, QString::fromLatin1(wrong)));
        ASSERT_NE(pasting, nullptr);
        EXPECT_FALSE(pasting->takeButton().isEnabled()) << wrong;
        pasting->reject();
    }
    dialog.once(TaskRule::Graft).setValue(33);
    auto* pasting =
        paste(dialog.works(), QStringLiteral("Task\tOnce\tAnd for each\n%1\t\t\n").arg(graft));
    ASSERT_NE(pasting, nullptr);
    pasting->accept();
    EXPECT_EQ(dialog.from(TaskRule::Graft), QStringLiteral("common practice"));
}

}  // namespace
}  // namespace tenthday
