/// @file times_dialog.h  Minutes of kinds of tasks and of the ways between yards.
#pragma once
#include <QDialog>
#include <vector>

#include "desk/desk.h"
#include "tasks/learned_times.h"

class QDoubleSpinBox;
class QLabel;
class QPushButton;
class QSpinBox;
class QTableWidget;

namespace tenthday {

/// The ticks the book's log of changes knows, in order. Empty where it cannot be read.
[[nodiscard]] std::vector<TickTime> tickTimes(Desk& desk);

/// What is saved is one edit. Times that are not touched stay those of common practice.
class TimesDialog : public QDialog {
    Q_OBJECT

public:
    /// @param desk  must outlive the dialog
    explicit TimesDialog(Desk& desk, QWidget* parent = nullptr);

    /// Of the kind in the order of TaskRule.
    [[nodiscard]] QSpinBox& once(TaskRule rule) { return *once_[static_cast<std::size_t>(rule)]; }
    [[nodiscard]] QTableWidget& ways() { return *ways_; }
    [[nodiscard]] QPushButton& learnButton() { return *learn_; }
    [[nodiscard]] QString told() const;
    void takeLearned();
    void accept() override;

private:
    struct Way {
        std::optional<Id<Yard>> from;
        Id<Yard> to;
        QSpinBox* minutes;
    };
    void fillWorks();
    void fillWays();
    void addWay(std::optional<Id<Yard>> from, const Ptr<Yard>& to, const QString& name);

    Desk& desk_;
    std::vector<LearnedTime> learned_;
    std::vector<QSpinBox*> once_;
    std::vector<QDoubleSpinBox*> each_;
    std::vector<Way> wayRows_;
    QTableWidget* works_;
    QTableWidget* ways_;
    QLabel* told_;
    QPushButton* learn_;
    QPushButton* save_;
};

}  // namespace tenthday
