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
#include "screen_text/evening_text.h"
#include "screen_text/paste_text.h"
#include "screen_text/week_text.h"
#include "support/ids.h"
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
    /// Rows of tasks with this text, from the top.
    std::vector<int> rowsOf(const QString& text) {
        std::vector<int> rows;
        for (int row = 0; row < page_->model().rowCount(); ++row)
            if (page_->model().taskAt(row) != nullptr &&
                page_->model().index(row, WeekModel::What).data().toString() == text)
                rows.push_back(row);
        return rows;
    }
    TaskKey keyOf(int row) { return page_->model().taskAt(row)->key; }
    void choose(int row) { table().setCurrentIndex(page_->model().index(row, WeekModel::What)); }
    void addOwn(std::initializer_list<const char*> texts, std::string_view on) {
        ChangeSet changes;
        for (const char* text : texts) {
            OwnTask task;
            task.id = test::id<OwnTask>(++count_);
            task.day = day(on);
            task.text = text;
            changes.add(task);
        }
        ASSERT_TRUE(desk_->apply(changes));
    }
    /// Pastes and takes in; the dialog's summary where that cannot be.
    std::string taken(const QString& text) {
        auto* dialog = paste(table(), text);
        if (dialog == nullptr) return "no dialog";
        const auto why = dialog->takeButton().isEnabled() ? "" : dialog->summary().toStdString();
        dialog->accept();
        if (!why.empty()) dialog->reject();
        return why;
    }
    std::optional<Day> doneOn(const TaskKey& key) {
        const auto row = rowOfTask<TaskDone>(desk_->snapshot(), key);
        return row ? std::optional(row->day) : std::nullopt;
    }
    std::uint64_t count_ = 900;
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
    EXPECT_EQ(doneOn(key), day("2027-06-02"));
    text = withCell(copied(table()), {name}, DoneCell, {});
    dialog = paste(table(), text);
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->summary().contains(QStringLiteral("Taken back: 1")))
        << dialog->summary().toStdString();
    dialog->accept();
    EXPECT_EQ(doneOn(key), std::nullopt);
    // A day that is still to come cannot be.
    dialog = paste(table(), withCell(text, {name}, DoneCell, QStringLiteral("2027-07-01")));
    ASSERT_NE(dialog, nullptr);
    EXPECT_FALSE(dialog->takeButton().isEnabled());
    const auto why =
        evening_text::refusal({Impossible::AfterToday, 0, desk_->snapshot().today(), {}});
    EXPECT_TRUE(dialog->summary().endsWith(why)) << dialog->summary().toStdString();
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

TEST_F(WeekPaste, TasksForOrdersAreToldApartByTheirOrder) {
    ChangeSet changes;
    for (const std::uint64_t n : {91U, 92U}) {
        Order order;
        order.id = test::id<Order>(n);
        order.label = "Y-" + std::to_string(n);
        order.count = 2;
        order.due = day("2027-07-16");
        changes.add(order);
    }
    ASSERT_TRUE(desk_->apply(changes));
    page_->setDay(day("2027-07-14"));
    const auto rows = rowsOf(week_text::kind(TaskRule::Deliver));
    ASSERT_EQ(rows.size(), 2U);
    EXPECT_EQ(page_->model().index(rows[1], WeekModel::About).data().toString(),
              QStringLiteral("order Y-92"));
    const auto first = keyOf(rows[0]);
    const auto second = keyOf(rows[1]);
    auto lines = copied(table()).split(u'\n');
    lines = QStringList(lines.front()) +
            lines.filter(QStringLiteral("Y-92")).filter(week_text::kind(TaskRule::Deliver));
    ASSERT_EQ(lines.size(), 2);
    EXPECT_EQ(taken(withCell(lines.join(u'\n'), {QStringLiteral("Y-92")}, GivenCell,
                             QStringLiteral("AK"))),
              "");
    EXPECT_EQ(givenTo(desk_->snapshot(), first), "");
    EXPECT_EQ(givenTo(desk_->snapshot(), second), "AK");
}

TEST_F(WeekPaste, OfTasksThatAreNamedAlikeTheChosenOneIsMeant) {
    addOwn({"clean cages", "clean cages"}, "2027-06-10");
    page_->setDay(day("2027-06-10"));
    const auto rows = rowsOf(QStringLiteral("clean cages"));
    ASSERT_EQ(rows.size(), 2U);
    const auto first = keyOf(rows[0]);
    const auto second = keyOf(rows[1]);
    choose(rows[1]);
    EXPECT_EQ(taken(QStringLiteral("AK\n")), "");
    EXPECT_EQ(givenTo(desk_->snapshot(), first), "");
    EXPECT_EQ(givenTo(desk_->snapshot(), second), "AK");
    // By its name alone nobody knows which one is meant.
    const auto line = QStringLiteral("2027-06-10\tclean cages\tML\n");
    const auto heads = QStringLiteral("Day\tTask\tGiven to\n");
    EXPECT_NE(taken(heads + line).find(paste_text::severalRows().toStdString()), std::string::npos);
    EXPECT_EQ(taken(heads + line + line), "") << "a line for each";
    EXPECT_EQ(givenTo(desk_->snapshot(), first), "ML");
    EXPECT_EQ(givenTo(desk_->snapshot(), second), "ML");
}

TEST_F(WeekPaste, ATaskThatStandsTwiceIsMeantInBothPlaces) {
    openPage(Access::ReadWrite, "2027-06-10");
    addOwn({"clean cages", "mend frames"}, "2027-06-08");
    page_->setDay(day("2027-06-10"));
    const auto rows = rowsOf(QStringLiteral("clean cages"));
    ASSERT_EQ(rows.size(), 2U) << "still open, and on its day";
    const auto key = keyOf(rows[1]);
    const auto next = keyOf(rowsOf(QStringLiteral("mend frames")).at(1));
    choose(rows[1]);
    EXPECT_EQ(taken(QStringLiteral("AK\nML\n")), "");
    EXPECT_EQ(givenTo(desk_->snapshot(), key), "AK");
    EXPECT_EQ(givenTo(desk_->snapshot(), next), "ML") << "the row below it";
}

TEST_F(WeekPaste, AColumnOfDaysOrTicksIsNoInitials) {
    openPage(Access::ReadWrite, "2027-06-10");
    addOwn({"clean cages", "mend frames"}, "2027-06-09");
    page_->setDay(day("2027-06-10"));
    const auto rows = rowsOf(QStringLiteral("clean cages"));
    ASSERT_FALSE(rows.empty());
    const auto key = keyOf(rows.back());
    const auto next = keyOf(rowsOf(QStringLiteral("mend frames")).back());
    choose(rows.back());
    EXPECT_EQ(taken(QStringLiteral("09/06/2027\nx\n")), "");
    EXPECT_EQ(doneOn(key), day("2027-06-09"));
    EXPECT_EQ(doneOn(next), day("2027-06-10"));
    EXPECT_TRUE(everybody(desk_->snapshot()).empty());
    for (const auto& column : {WeekModel::Yard, WeekModel::Number, WeekModel::When})
        EXPECT_NE(taken(week_text::columnHead(column) + QStringLiteral("\nHeath\n")), "")
            << "another column of the table";
    EXPECT_TRUE(everybody(desk_->snapshot()).empty());
}

TEST_F(WeekPaste, DaysAreShownAsTheyWereUnderstood) {
    addOwn({"clean cages"}, "2027-06-03");
    page_->setDay(day("2027-06-03"));
    auto* dialog = paste(table(), QStringLiteral("Day\tTask\tDone\n"
                                                 "3 Jun 2027\tclean cages\t02/06/2027\n"));
    ASSERT_NE(dialog, nullptr);
    EXPECT_TRUE(dialog->takeButton().isEnabled()) << dialog->summary().toStdString();
    EXPECT_EQ(dialog->preview().item(0, 2)->text(), QStringLiteral("2027-06-03"));
    EXPECT_EQ(dialog->preview().item(0, 4)->text(), QStringLiteral("2027-06-02"));
    dialog->reject();
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

TEST_F(WeekPaste, AColumnOfTimesThatIsNotThereErasesNothing) {
    TimesDialog dialog(*desk_);
    dialog.show();
    const auto graft = week_text::kind(TaskRule::Graft);
    dialog.once(TaskRule::Graft).setValue(33);
    dialog.each(TaskRule::Graft).setValue(1.5);
    const auto refused = [&](const QString& text) {
        auto* pasting = paste(dialog.works(), text);
        const bool isRefused = !pasting->takeButton().isEnabled();
        if (!isRefused) pasting->accept();
        if (isRefused) pasting->reject();
        return isRefused;
    };
    EXPECT_TRUE(refused(QStringLiteral("Task\tOnce\n%1\t\n").arg(graft)));
    EXPECT_TRUE(refused(QStringLiteral("Task\tAnd for each\n%1\t\n").arg(graft)));
    EXPECT_TRUE(refused(QStringLiteral("Task\n%1\n").arg(graft)));
    EXPECT_FALSE(refused(QStringLiteral("Task\tOnce\n%1\t34\n").arg(graft)));
    EXPECT_EQ(dialog.once(TaskRule::Graft).value(), 34);
    EXPECT_EQ(dialog.each(TaskRule::Graft).value(), 1.5);
    for (const char* wrong : {"nan", "inf", "1.25"})
        EXPECT_TRUE(refused(
            QStringLiteral("Task\tAnd for each\n%1\t%2\n").arg(graft, QString::fromLatin1(wrong))))
            << wrong;
}

}  // namespace
}  // namespace tenthday
