/// @file in_use_dialog.h  What is in use is not deleted: says what hangs on it, offers to retire
/// it.
#pragma once
#include <QDialog>
#include <functional>

#include "setup/setup_kind.h"

class QLabel;
class QVBoxLayout;

namespace tenthday {

class DayEdit;

class InUseDialog : public QDialog {
    Q_OBJECT

public:
    /// Retires from a day on; gives why not, or nothing when done.
    using Retire = std::function<QString(Day from)>;

    /// @param retire  without one, it says what must move first
    InUseDialog(setup_text::Kind kind, const QString& thing, const std::vector<Use>& uses,
                Day today, Retire retire, QWidget* parent);

private:
    void addRetiring(QVBoxLayout& column, Day today);
    void tryRetiring();

    Retire retire_;
    DayEdit* from_ = nullptr;
    QLabel* refusal_ = nullptr;
};

}  // namespace tenthday
