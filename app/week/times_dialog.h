/// @file times_dialog.h  Minutes of kinds of tasks and of the ways between yards.
#pragma once
#include <QDialog>
#include <vector>

#include "desk/desk.h"
#include "tasks/learned_times.h"
#include "tasks/work_time.h"

class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTableWidget;
class QToolButton;

namespace tenthday {

/// The ticks the book's log of changes knows, in order. Empty where it cannot be read.
[[nodiscard]] std::vector<TickTime> tickTimes(Desk& desk);

/// What is saved is one edit. Times that are not touched stay those of common practice, and those
/// that are cleared become so again.
class TimesDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk  must outlive the dialog
    explicit TimesDialog(Desk& desk, QWidget* parent = nullptr);

    /// Of the kind in the order of TaskRule.
    [[nodiscard]] QSpinBox& once(TaskRule rule) { return *works_[at(rule)].once; }
    [[nodiscard]] QDoubleSpinBox& each(TaskRule rule) { return *works_[at(rule)].each; }
    /// Takes a time of the user's own back.
    [[nodiscard]] QToolButton& clearButton(TaskRule rule) { return *works_[at(rule)].clear; }
    /// Where the times of a kind come from.
    [[nodiscard]] QString from(TaskRule rule) const;
    [[nodiscard]] QTableWidget& works() { return *workTable_; }
    [[nodiscard]] QTableWidget& ways() { return *wayTable_; }
    /// Takes in what a spreadsheet copied, into the table whose heads it has.
    [[nodiscard]] QPushButton& pasteButton() { return *paste_; }
    [[nodiscard]] QPushButton& learnButton() { return *learn_; }
    [[nodiscard]] QString told() const;
    void takeLearned();
    void accept() override;

private:
    struct Work {
        QSpinBox* once;
        QDoubleSpinBox* each;
        QToolButton* clear;
        bool own;  ///< set by the user, else of common practice
    };
    struct WayRow {
        DrivenWay way;
        QSpinBox* minutes;
        QToolButton* clear;
    };
    static std::size_t at(TaskRule rule) { return static_cast<std::size_t>(rule); }
    void addWork(TaskRule rule);
    void setOwn(TaskRule rule, bool own);
    void clearWork(TaskRule rule);
    void fillWays();
    [[nodiscard]] Snapshot asTyped() const;
    void makePastable();
    void fill(const ChangeSet& changes);
    void addWay(const DrivenWay& way, const QString& from, const QString& to);
    [[nodiscard]] Result<ChangeSet> changes() const;

    Desk& desk_;
    std::vector<LearnedTime> learned_;
    std::vector<Work> works_;  ///< in the order of TaskRule
    std::vector<WayRow> ways_;
    QTableWidget* workTable_;
    QTableWidget* wayTable_;
    QLabel* told_;
    QPushButton* learn_;
    QPushButton* paste_;
    QPushButton* save_;
};

}  // namespace tenthday
