/// @file own_task_dialog.h  Asks what a task of the user's own says.
#pragma once
#include <QDialog>
#include <functional>

#include "records/snapshot.h"
#include "tasks/own_task.h"

class QCheckBox;
class QComboBox;
class QDateEdit;
class QLabel;
class QLineEdit;

namespace tenthday {

/// Stays open, with one line that says why, while what was given is refused.
class OwnTaskDialog : public QDialog {
    Q_OBJECT

public:
    /// Empty when done, else why not.
    using Save = std::function<QString(const OwnTaskWords&)>;

    OwnTaskDialog(const QString& head, const Snapshot& snapshot, const OwnTaskWords& words,
                  Save save, QWidget* parent = nullptr);

    [[nodiscard]] QLineEdit& text() { return *text_; }
    [[nodiscard]] QDateEdit& day() { return *day_; }
    [[nodiscard]] QComboBox& yard() { return *yard_; }
    [[nodiscard]] QCheckBox& must() { return *must_; }
    [[nodiscard]] QString told() const;

    void accept() override;

private:
    [[nodiscard]] OwnTaskWords words() const;

    Save save_;
    std::vector<Id<Yard>> yards_;  ///< in the order of the list, after "none"
    QLineEdit* text_;
    QDateEdit* day_;
    QComboBox* yard_;
    QCheckBox* must_;
    QLabel* told_;
};

}  // namespace tenthday
