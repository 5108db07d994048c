/// @file week_page.h  The week's tasks: what is to be done, ticked off, and why it is that day.
#pragma once
#include <QPointer>
#include <QWidget>

#include "desk/desk.h"
#include "desk/while_seen.h"
#include "reasons/why_dialog.h"
#include "week/own_task_dialog.h"
#include "week/week_model.h"

class QLabel;
class QPushButton;
class QTableView;

namespace tenthday {

class ReasonsView;

class WeekPage : public QWidget {
    Q_OBJECT

public:
    /// @param desk  must outlive the page
    explicit WeekPage(Desk& desk, QWidget* parent = nullptr);

    [[nodiscard]] Day day() const { return day_; }
    [[nodiscard]] IsoWeek week() const { return isoWeekOf(day_); }
    /// Shows the day's week and goes to the day's first task.
    void setDay(Day day);

    /// The chosen row's task, or null.
    [[nodiscard]] const Task* chosen() const;
    /// The date behind the chosen task; no batch where there is none.
    [[nodiscard]] DateOfBatch chosenDate() const;
    /// Gives the chosen task to somebody, by initials; empty takes it back.
    void giveTo(const QString& who);
    /// Asks for a task of the user's own, on the chosen day.
    void addTask();

    [[nodiscard]] QTableView& table() { return *table_; }
    [[nodiscard]] WeekModel& model() { return *model_; }
    [[nodiscard]] ReasonsView& reasons() { return *reasons_; }
    [[nodiscard]] QPushButton& deleteButton() { return *delete_; }
    [[nodiscard]] QPushButton& changeButton() { return *change_; }
    [[nodiscard]] QPushButton& newButton() { return *new_; }
    [[nodiscard]] QPushButton& giveButton() { return *give_; }
    /// The dialog that is open now, or null.
    [[nodiscard]] OwnTaskDialog* asking() const { return asking_; }
    [[nodiscard]] QString told() const;

Q_SIGNALS:
    void dayChosen(tenthday::Day day);
    void printWished();
    void whyWished();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    [[nodiscard]] QWidget* makeTop();
    [[nodiscard]] QWidget* makeFoot();
    void follow();
    void fill();
    void stepWeek(int by);
    [[nodiscard]] int rowFor(Day day) const;
    void goToDay();
    void chose();
    void tellChosen();
    void tickRow(int row);
    void changeTask();
    void deleteTask();
    void askWho();
    void ask(const QString& head, const OwnTaskWords& words, OwnTaskDialog::Save save);
    [[nodiscard]] bool key(int key, Qt::KeyboardModifiers with);
    [[nodiscard]] QString save(const Result<ChangeSet>& changes);
    [[nodiscard]] Ptr<OwnTask> own() const;

    Desk& desk_;
    Day day_;
    bool filling_ = false;
    WhileSeen seen_{this, [this] { follow(); }};
    WeekModel* model_;
    QTableView* table_;
    ReasonsView* reasons_;
    QLabel* head_;
    QLabel* summary_;
    QLabel* told_;
    QPushButton* new_;
    QPushButton* change_;
    QPushButton* delete_;
    QPushButton* give_;
    QPushButton* why_;
    QPointer<OwnTaskDialog> asking_;
};

}  // namespace tenthday
